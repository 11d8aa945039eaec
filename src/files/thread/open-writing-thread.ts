import { join } from 'node:path'
import { buildFolder } from '../../installation.js'
import { pagePacking } from '../page/packed-page.js'
import { filesByThread } from './files-by-thread.js'
import { PART_BYTES } from './shared-parts.js'
import { threadChannel } from './thread-channel.js'
import type { StepResult, WritingStep } from './writing-steps.js'
import type { WritingThread } from './writing-thread.js'

export interface WritingThreadRequest {
  /** The module that runs in it: the compiled one, which stands beside the bundled command too. */
  readonly module?: string
  /** So many parts of files may wait for the disk; more do not come to be before. */
  readonly partCount?: number
}

const usualModule = join(buildFolder, 'src/files/thread/thread-worker.js')

/** 8 MB, of which no more is taken than ever waits at once: the parts used last are used next. */
const PARTS = 64

export function openWritingThread({
  module = usualModule,
  partCount = PARTS,
}: WritingThreadRequest = {}): WritingThread {
  const memory = new SharedArrayBuffer(partCount * PART_BYTES)
  const freeParts = Array.from({ length: partCount }, (_, part) => partCount - 1 - part)
  const channel = threadChannel(module, memory)
  const packing = pagePacking()
  let runs = 0

  async function taken(step: WritingStep): Promise<StepResult> {
    let given: StepResult = {}
    await channel.post({ run: ++runs, steps: [step] }, result => {
      given = result
    })
    return given
  }

  return {
    start: channel.start,
    isReady: channel.isReady,
    setFiles: () => filesByThread({ channel, run: ++runs, memory, freeParts, packing }),
    letGo: () => {
      // Where the thread has ended nothing is held in it.
      taken({ kind: 'let go', shapes: packing.letGo() }).catch(() => undefined)
    },
    setAside: async discarding => (await taken({ kind: 'set aside', discarding })).moved ?? [],
    removeFolder: async path => void (await taken({ kind: 'remove folder', path })),
    end: channel.end,
  }
}
