import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { onTestFinished } from 'vitest'
import { openWritingThread } from '../../../src/files/thread/open-writing-thread.js'
import type { WritingThread } from '../../../src/files/thread/writing-thread.js'

/** A thread for the disk, ready, that does what the program says in place of its work; with room for two parts. */
export async function threadThat(program: string): Promise<WritingThread> {
  const folder = mkdtempSync(join(tmpdir(), 'oaktag-thread-that-'))
  const module = join(folder, 'thread.mjs')
  writeFileSync(
    module,
    `import { parentPort } from 'node:worker_threads'
    parentPort.on('message', () => {})
    ${program}
    parentPort.postMessage('ready')`,
  )
  const thread = openWritingThread({ module, partCount: 2 })
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }))
  thread.start()
  while (!thread.isReady()) await new Promise(done => setTimeout(done, 1))
  return thread
}
