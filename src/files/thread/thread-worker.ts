/** What runs in the thread that draws and writes files: `thread-channel.ts` starts it. */
import { parentPort, workerData } from 'node:worker_threads'
import { stepTaker, type WritingSteps } from './writing-steps.js'

const take = stepTaker(workerData)
let before = Promise.resolve()

parentPort?.on('message', (steps: WritingSteps) => {
  before = before.then(async () => parentPort?.postMessage(await take(steps)))
})
parentPort?.postMessage('ready')
