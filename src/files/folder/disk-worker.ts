/** What runs in the thread that does a disk's work: `disk-channel.ts` starts it. */
import { parentPort, workerData } from 'node:worker_threads'
import { type DiskSteps, stepTaker } from './disk-steps.js'

const take = stepTaker(workerData)
let before = Promise.resolve()

parentPort?.on('message', (steps: DiskSteps) => {
  before = before.then(async () => parentPort?.postMessage(await take(steps)))
})
parentPort?.postMessage('ready')
