import { closeSync, openSync, writeSync } from 'node:fs'
import { writeFile } from 'node:fs/promises'
import { performance } from 'node:perf_hooks'

/** Of a file; texts follow one another in it. */
export type Contents = string | Uint8Array | Iterable<string>

/** A file of a page is written in a tenth of this where nothing holds it up. */
const SLOW_MS = 3
/** So many may have been slow by chance, and one more in so many: where a plan is watched, files are written all day. */
const [MOST_SLOW, ONE_IN] = [5, 20]
/** So many are left to another thread where files are slow; then it is seen whether they still are. */
const FILES_BESIDE = 200
/** More is left to another thread: nobody is to wait for a set's largest files. */
const MOST_BYTES = 2 ** 20

/** Of UTF-8, for each of the one or two signs that a character counts for in a text. */
export const MOST_BYTES_OF_SIGN = 3

/** Another file is begun as soon as one is written, so that one piece of memory is enough for the texts of all. */
let memory: Buffer | undefined

/**
 * Writes files in the order of the calls. To hand a file to another thread and to hear of it three times takes longer than the
 * system takes to take it over, so it is written here; but where a disk, a network or a guard against viruses keeps each file
 * waiting, files are written beside the program, which draws on meanwhile.
 */
export function fileWriter(
  now: () => number = () => performance.now(),
): (path: string, contents: Contents) => Promise<void> {
  let slow = 0
  let beside = 0
  return async (path, contents) => {
    const bytes = beside > 0 ? undefined : bytesOf(contents)
    beside = Math.max(0, beside - 1)
    if (bytes === undefined) return writeFile(path, inLargePieces(contents))
    const begin = now()
    writeAtOnce(path, bytes)
    slow = now() - begin > SLOW_MS ? slow + 1 : Math.max(0, slow - 1 / ONE_IN)
    if (slow > MOST_SLOW) [slow, beside] = [0, FILES_BESIDE]
    // What waits for its turn, as to let go of what resvg drew or to keep a lock alive, has it between two files.
    await new Promise(resolve => setImmediate(resolve))
  }
}

/** A proof page comes word by word, and each piece would be handed to another thread by itself. */
const PIECE = 2 ** 18

/** Texts that follow one another, put together to so many signs at a time. */
function inLargePieces(contents: Contents): Contents {
  if (typeof contents === 'string' || contents instanceof Uint8Array) return contents
  return piecesOf(contents)
}

function* piecesOf(texts: Iterable<string>): Generator<string, void> {
  let piece: string[] = []
  let length = 0
  for (const text of texts) {
    piece.push(text)
    length += text.length
    if (length < PIECE) continue
    yield piece.join('')
    piece = []
    length = 0
  }
  yield piece.join('')
}

/** As they are to stand in the file; undefined where they are too many to be written at once, or come one after another. */
function bytesOf(contents: Contents): Uint8Array | undefined {
  if (contents instanceof Uint8Array) return contents.length <= MOST_BYTES ? contents : undefined
  if (typeof contents === 'string') return encoded([contents])
  return areAtHand(contents) ? encoded(contents) : undefined
}

/** Others are made while they are written. */
function areAtHand(texts: Iterable<string>): texts is readonly string[] {
  return Array.isArray(texts)
}

function encoded(texts: readonly string[]): Uint8Array | undefined {
  const length = texts.reduce((sum, text) => sum + text.length, 0)
  if (length * MOST_BYTES_OF_SIGN > MOST_BYTES) return undefined
  memory ??= Buffer.allocUnsafeSlow(MOST_BYTES)
  let end = 0
  for (const text of texts) end += memory.write(text, end, 'utf8')
  return memory.subarray(0, end)
}

/** @param how `a` adds to what stands in the file */
export function writeAtOnce(path: string, bytes: Uint8Array, how: 'w' | 'a' = 'w'): void {
  const file = openSync(path, how)
  try {
    for (let at = 0; at < bytes.length; ) at += writeSync(file, bytes, at)
  } finally {
    closeSync(file)
  }
}
