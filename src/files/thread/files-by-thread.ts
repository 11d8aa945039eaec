import type { PictureToDraw, SetFiles, WhenLeft } from '../folder/set-files.js'
import { type Contents, MOST_BYTES_OF_SIGN } from '../folder/write-file.js'
import type { PagePacking } from '../page/packed-page.js'
import { bytesOfPart, PART_BYTES } from './shared-parts.js'
import type { ThreadChannel } from './thread-channel.js'
import type { StepResult, WritingStep } from './writing-steps.js'

/** As soon as so many steps are there, they are handed over. */
const STEPS_AT_ONCE = 8
/** So many pages may wait to be drawn: what has to be known of each takes some kilobytes. */
const MOST_PAGES = 64

export interface HandingOver {
  readonly channel: ThreadChannel
  readonly run: number
  /** What is written is put here, in parts, and read from here by the thread. */
  readonly memory: SharedArrayBuffer
  /** Parts that hold nothing, by number; the last is used next. */
  readonly freeParts: number[]
  readonly packing: PagePacking
  /** Whether a page at this resolution, of this look, was handed over to be drawn ahead. */
  readonly isDrawn: (dpi: number, look: string) => boolean
}

interface StepToTake {
  /** Asked for when it is handed over: which shapes and pages the thread has by then depends on all that went before. */
  readonly step: () => WritingStep
  readonly whenLeft?: WhenLeft | undefined
}

/** The files of one run, put where they belong by the thread at the other end. */
export function filesByThread({ channel, run, memory, freeParts, packing, isDrawn }: HandingOver): SetFiles {
  let steps: StepToTake[] = []
  let pages = 0
  let failure: unknown
  let last: Promise<void> = Promise.resolve()

  function handOver(): void {
    if (steps.length === 0) return
    const handed = steps.map(({ step, whenLeft }) => ({ step: step(), whenLeft }))
    steps = []
    const whenTaken = ({ left }: StepResult, index: number): void => {
      if (left !== undefined) handed[index]?.whenLeft?.(left)
    }
    last = channel
      .post({ run, steps: handed.map(({ step }) => step) }, whenTaken)
      .catch((error: unknown) => {
        failure ??= error
      })
      .then(() => {
        for (const { step } of handed)
          if (step.kind === 'write') freeParts.push(step.part)
          else if (step.kind === 'draw') pages -= 1
      })
  }

  async function handedOver(): Promise<void> {
    handOver()
    await (channel.isAnswerDue() ? channel.nextAnswer() : last)
    if (failure !== undefined) throw failure
  }

  const ask = (step: WritingStep, whenLeft?: WhenLeft): Promise<void> => askInTurn(() => step, whenLeft)

  async function askInTurn(step: () => WritingStep, whenLeft?: WhenLeft): Promise<void> {
    steps.push({ step, whenLeft })
    if (steps.length < STEPS_AT_ONCE) return
    handOver()
    // What waits for its turn has it here: answers, and all that has its turn between two files written at once.
    await new Promise(resolve => setImmediate(resolve))
    if (failure !== undefined) throw failure
  }

  async function freePart(): Promise<number> {
    for (;;) {
      const part = freeParts.pop()
      if (part !== undefined) return part
      await handedOver()
    }
  }

  async function write(path: string, contents: Contents, whenLeft?: WhenLeft): Promise<void> {
    let part = await freePart()
    let bytes = bytesOfPart(memory, part)
    let [length, goesOn] = [0, false]
    for (const each of inPieces(contents)) {
      if (length + mostBytesOf(each) > PART_BYTES) {
        await ask({ kind: 'write', path, part, length, goesOn })
        part = await freePart()
        bytes = bytesOfPart(memory, part)
        ;[length, goesOn] = [0, true]
      }
      if (typeof each === 'string') length += bytes.write(each, length, 'utf8')
      else {
        bytes.set(each, length)
        length += each.length
      }
    }
    await ask({ kind: 'write', path, part, length, goesOn }, whenLeft)
  }

  async function draw(path: string, { dpi, look, page }: PictureToDraw, whenLeft?: WhenLeft): Promise<void> {
    while (pages >= MOST_PAGES) await handedOver()
    pages += 1
    const step = (): WritingStep => {
      const packed = isDrawn(dpi, look) ? {} : { page: packing.pack(page()) }
      return { kind: 'draw', path, dpi, look, ...packed }
    }
    await askInTurn(step, whenLeft)
  }

  return {
    makeFolder: path => ask({ kind: 'make folder', path }),
    write,
    draw,
    link: (from, to, whenLeft) => ask({ kind: 'link', from, to }, whenLeft),
    settle: async path => {
      await ask({ kind: 'settle', path })
      // It takes long, and other things may be made meanwhile.
      handOver()
    },
    done: async () => {
      handOver()
      await last
      if (failure !== undefined) throw failure
    },
  }
}

function mostBytesOf(piece: string | Uint8Array): number {
  return typeof piece === 'string' ? piece.length * MOST_BYTES_OF_SIGN : piece.length
}

/** Texts, and bytes, each of which fits into a part. */
function* inPieces(contents: Contents): Generator<string | Uint8Array, void> {
  if (contents instanceof Uint8Array) yield* inParts(contents)
  else
    for (const text of typeof contents === 'string' ? [contents] : contents)
      if (mostBytesOf(text) <= PART_BYTES) yield text
      else yield* inParts(Buffer.from(text))
}

function* inParts(bytes: Uint8Array): Generator<Uint8Array, void> {
  for (let at = 0; at < bytes.length; at += PART_BYTES) yield bytes.subarray(at, at + PART_BYTES)
}
