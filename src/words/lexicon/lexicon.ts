import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { buildFolder } from '../../installation.js'
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

/** @throws Error when the bytes are no lexicon of this version */
export function lexiconIn(bytes: Buffer): Lexicon {
  if (bytes.toString('latin1', 0, fileMark.length) !== fileMark) {
    throw new Error('The lexicon was made by another version. Run "npm run build" to make it anew.')
  }
  const size = bytes.readUInt32LE(fileMark.length)
  const starts = new Map(
    sections.map((section, index) => [section, bytes.readUInt32LE(fileMark.length + 4 + 4 * index)]),
  )
  const number = (section: Section, index: number) => bytes.readUInt32LE(starts.get(section)! + 4 * index)
  const wordsStart = starts.get('words')!
  const recordsStart = starts.get('records')!
  const wordStart = (index: number) => wordsStart + (index === 0 ? 0 : number('wordEnds', index - 1))
  const wordEnd = (index: number) => wordsStart + number('wordEnds', index)

  const indexOf = (word: Buffer): number | undefined => {
    let low = 0
    let high = size - 1
    while (low <= high) {
      const middle = (low + high) >> 1
      const order = bytes.compare(word, 0, word.length, wordStart(middle), wordEnd(middle))
      if (order === 0) return middle
      if (order < 0) low = middle + 1
      else high = middle - 1
    }
    return undefined
  }
  const entryAt = (index: number): LexiconEntry => ({
    word: bytes.toString('utf8', wordStart(index), wordEnd(index)),
    familiarity: number('familiarity', index),
    ...readRecord(bytes, recordsStart + (index === 0 ? 0 : number('recordEnds', index - 1))),
  })
  return {
    size,
    lookUp(word) {
      const index = indexOf(Buffer.from(word.toLowerCase()))
      return index === undefined ? undefined : entryAt(index)
    },
    *entries() {
      for (let rank = 0; rank < size; rank++) yield entryAt(number('order', rank))
    },
  }
}

function readRecord(bytes: Buffer, start: number): Omit<LexiconEntry, 'word' | 'familiarity'> {
  let at = start
  const byte = () => bytes[at++]!
  const list = <T>(read: () => T): readonly T[] => Array.from({ length: byte() }, read)
  const flags = byte()
  return {
    unfit: (flags & flagBits.unfit) !== 0,
    name: (flags & flagBits.name) !== 0,
    heteronym: (flags & flagBits.heteronym) !== 0,
    partsOfSpeech: list(() => partsOfSpeech[byte()]!),
    pronunciations: list(() => list(() => soundBytes[byte()]!).join(' ')),
    glosses: list(() => {
      const length = bytes.readUInt16LE(at)
      at += 2 + length
      return bytes.toString('utf8', at - length, at)
    }),
  }
}
