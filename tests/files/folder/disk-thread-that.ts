import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { onTestFinished } from 'vitest'
import type { DiskThread } from '../../../src/files/folder/disk-thread.js'
import { openDiskThread } from '../../../src/files/folder/open-disk-thread.js'

/** A thread for the disk, ready, that does what the program says in place of its work; with room for two parts. */
export async function threadThat(program: string): Promise<DiskThread> {
  const folder = mkdtempSync(join(tmpdir(), 'oaktag-thread-that-'))
  const module = join(folder, 'thread.mjs')
  writeFileSync(
    module,
    `import { parentPort } from 'node:worker_threads'
    parentPort.on('message', () => {})
    ${program}
    parentPort.postMessage('ready')`,
  )
  const thread = openDiskThread({ module, partCount: 2 })
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }))
  thread.start()
  while (!thread.isReady()) await new Promise(done => setTimeout(done, 1))
  return thread
}
