import { join } from 'node:path'
import { buildFolder } from '../../installation.js'
import type { PictureToDraw } from '../folder/set-files.js'
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

/** So many pages may wait to be drawn ahead. */
const MOST_AHEAD = 64

export function openWritingThread({
  module = usualModule,
  partCount = PARTS,
}: WritingThreadRequest = {}): WritingThread {
  const memory = new SharedArrayBuffer(partCount * PART_BYTES)
  const freeParts = Array.from({ length: partCount }, (_, part) => partCount - 1 - part)
  const channel = threadChannel(module, memory)
  const packing = pagePacking()
  /** Pages drawn ahead for the run that goes on, by what was asked. */
  const ahead = new Set<string>()
  const isAhead = (dpi: number, look: string): boolean => ahead.has(`${dpi} ${look}`)
  let [runs, waiting] = [0, 0]

  async function taken(step: WritingStep): Promise<StepResult> {
    let given: StepResult = {}
    await channel.post({ run: ++runs, steps: [step] }, result => {
      given = result
    })
    return given
  }

  function drawAhead(pictures: readonly PictureToDraw[]): void {
    if (!channel.isReady()) return
    const steps: WritingStep[] = []
    for (const { dpi, look, page } of pictures) {
      if (waiting + steps.length === MOST_AHEAD) break
      if (isAhead(dpi, look)) continue
      ahead.add(`${dpi} ${look}`)
      steps.push({ kind: 'draw ahead', dpi, look, page: packing.pack(page()) })
    }
    if (steps.length === 0) return
    waiting += steps.length
    channel
      .post({ run: ++runs, steps }, () => {})
      // Where the thread has ended, that is found out when they are written.
      .catch(() => undefined)
      .then(() => {
        waiting -= steps.length
      })
  }

  function letGo(): void {
    ahead.clear()
    // Where the thread has ended nothing is held in it.
    taken({ kind: 'let go', shapes: packing.letGo() }).catch(() => undefined)
  }

  return {
    start: channel.start,
    isReady: channel.isReady,
    setFiles: () =>
      filesByThread({
        channel,
        run: ++runs,
        memory,
        freeParts,
        packing,
        isDrawn: isAhead,
      }),
    drawAhead,
    letGo,
    letGoAhead: () => {
      if (ahead.size > 0) letGo()
    },
    setAside: async discarding => (await taken({ kind: 'set aside', discarding })).moved ?? [],
    removeFolder: async path => void (await taken({ kind: 'remove folder', path })),
    end: channel.end,
  }
}
