import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { buildFolder } from '../../installation.js'
import { lazily } from '../tables/installed-tables.js'
import type { Lexicon, LexiconEntry } from './entry.js'
import { fileMark, flagBits, partsOfSpeech, type Section, sections, soundBytes } from './file-format.js'

export type { Lexicon, LexiconEntry } from './entry.js'

export const lexiconPath = join(buildFolder, 'lexicon.bin')

/**
 * Opens the compiled lexicon; nothing in it is read before it is asked for.
 * @throws Error with what to do, when the file is missing or made by another version
 */
export function openLexicon(path: string = lexiconPath): Lexicon {
  if (!existsSync(path)) throw new Error(`The lexicon is missing (${path}). Run "npm run build" to make it.`)
  return lexiconIn(readFileSync(path))
}

/** The one that `npm run build` made, opened once. */
export const installedLexicon: () => Lexicon = lazily(() => openLexicon())

/** @throws Error when the bytes are no lexicon of this version */
export function lexiconIn(bytes: Buffer): Lexicon {
  if (bytes.toString('latin1', 0, fileMark.length) !== fileMark) {
    throw new Error('The lexicon was made by another version. Run "npm run build" to make it anew.')
  }
  const size = bytes.readUInt32LE(fileMark.length)
  const startOf = (section: Section) =>
    bytes.readUInt32LE(fileMark.length + 4 + 4 * sections.indexOf(section))
  const wordEnds = numbersAt(bytes, startOf('wordEnds'), size)
  const recordEnds = numbersAt(bytes, startOf('recordEnds'), size)
  const familiarity = numbersAt(bytes, startOf('familiarity'), size)
  const order = numbersAt(bytes, startOf('order'), size)
  const words = bytes.subarray(startOf('words'), startOf('records'))
  const records = bytes.subarray(startOf('records'))
  const begin = (ends: Uint32Array, index: number) => (index === 0 ? 0 : ends[index - 1]!)

  const entryAt = (index: number): LexiconEntry => ({
    word: words.toString('latin1', begin(wordEnds, index), wordEnds[index]),
    familiarity: familiarity[index]!,
    ...readRecord(records, begin(recordEnds, index)),
  })
  const indexOf = (word: string): number | undefined => {
    let low = 0
    let high = size - 1
    while (low <= high) {
      const middle = (low + high) >> 1
      const order = compare(words, begin(wordEnds, middle), wordEnds[middle]!, word)
      if (order === 0) return middle
      if (order < 0) low = middle + 1
      else high = middle - 1
    }
    return undefined
  }
  const asked = new Map<string, LexiconEntry | null>()
  return {
    size,
    lookUp(typed) {
      const word = typed.toLowerCase()
      const known = asked.get(word)
      if (known !== undefined) return known ?? undefined
      const index = indexOf(word)
      const entry = index === undefined ? undefined : entryAt(index)
      if (asked.size >= mostRemembered) asked.clear()
      asked.set(word, entry ?? null)
      return entry
    },
    *entries() {
      for (const index of order) yield entryAt(index)
    },
  }
}

/** So many answers are kept: the rules ask for the same bases again and again. */
const mostRemembered = 50_000

/** Order of the bytes from `start` to `end` and a word; the lexicon's words are ASCII. */
function compare(words: Buffer, start: number, end: number, word: string): number {
  const length = Math.min(end - start, word.length)
  for (let index = 0; index < length; index++) {
    const difference = words[start + index]! - word.charCodeAt(index)
    if (difference !== 0) return difference
  }
  return end - start - word.length
}

/** Read where they lie when they lie well, which they do in a file read as a whole. */
function numbersAt(bytes: Buffer, start: number, count: number): Uint32Array {
  const section = bytes.subarray(start, start + 4 * count)
  if (section.byteOffset % 4 === 0) return new Uint32Array(section.buffer, section.byteOffset, count)
  return new Uint32Array(Uint8Array.from(section).buffer)
}

function readRecord(bytes: Buffer, start: number): Omit<LexiconEntry, 'word' | 'familiarity'> {
  let at = start
  const byte = () => bytes[at++]!
  const list = <T>(read: () => T): readonly T[] => {
    const count = byte()
    const items: T[] = []
    for (let index = 0; index < count; index++) items.push(read())
    return items
  }
  const pronunciation = () => {
    const count = byte()
    let sounds = ''
    for (let index = 0; index < count; index++) sounds += (index === 0 ? '' : ' ') + soundBytes[byte()]!
    return sounds
  }
  const flags = byte()
  return {
    unfit: (flags & flagBits.unfit) !== 0,
    notReadAloud: (flags & flagBits.notReadAloud) !== 0,
    name: (flags & flagBits.name) !== 0,
    heteronym: (flags & flagBits.heteronym) !== 0,
    partsOfSpeech: list(() => partsOfSpeech[byte()]!),
    pronunciations: list(pronunciation),
  }
}
