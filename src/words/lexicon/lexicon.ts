import { existsSync, openSync, readSync } from 'node:fs'
import { join } from 'node:path'
import { buildFolder } from '../../installation.js'
import { lazily } from '../../lazily.js'
import type { Lexicon, LexiconEntry } from './entry.js'
import {
  fileMark,
  flagBits,
  headerBytes,
  partsOfSpeech,
  type Section,
  sections,
  soundBytes,
  wordsABlock,
} from './file-format.js'

export type { Lexicon, LexiconEntry } from './entry.js'

export const lexiconPath = join(buildFolder, 'lexicon.bin')

const opened = new Map<string, Lexicon>()

/**
 * Opens the compiled lexicon; nothing in it is read before it is asked for. Opened once, and open as long as the program runs.
 * @throws Error with what to do, when the file is missing or made by another version
 */
export function openLexicon(path: string = lexiconPath): Lexicon {
  const known = opened.get(path)
  if (known !== undefined) return known
  if (!existsSync(path)) throw new Error(`The lexicon is missing (${path}). Run "npm run build" to make it.`)
  const file = openSync(path, 'r')
  const lexicon = lexiconReadBy((start, length) => {
    const bytes = Buffer.allocUnsafe(length)
    return bytes.subarray(0, readSync(file, bytes, 0, length, start))
  })
  opened.set(path, lexicon)
  return lexicon
}

/** The one that `npm run build` made, opened once. */
export const installedLexicon: () => Lexicon = lazily(() => openLexicon())

/** @throws Error when the bytes are no lexicon of this version */
export function lexiconIn(bytes: Buffer): Lexicon {
  return lexiconReadBy((start, length) => bytes.subarray(start, start + length))
}

function lexiconReadBy(readFrom: (start: number, length: number) => Buffer): Lexicon {
  const read = (start: number, length: number): Buffer => {
    const bytes = readFrom(start, length)
    if (bytes.length < length) throw madeByAnotherVersion()
    return bytes
  }
  const header = read(0, headerBytes)
  if (header.toString('latin1', 0, fileMark.length) !== fileMark) throw madeByAnotherVersion()
  const size = header.readUInt32LE(fileMark.length)
  const startOf = (section: Section | 'end') => {
    const index = section === 'end' ? sections.length : sections.indexOf(section)
    return header.readUInt32LE(fileMark.length + 4 + 4 * index)
  }
  const indexStart = startOf('firstEnds')
  const index = read(indexStart, startOf('blocks') - indexStart)
  const count = Math.ceil(size / wordsABlock)
  const firstEnds = numbersAt(index, 0, count)
  const firsts = index.subarray(startOf('firsts') - indexStart)
  const blockEnds = numbersAt(index, startOf('blockEnds') - indexStart, count)
  const begin = (ends: Uint32Array, at: number) => (at === 0 ? 0 : ends[at - 1]!)

  const blocks = new Map<number, Buffer>()
  const blockAt = (number: number): Buffer => {
    const known = blocks.get(number)
    if (known !== undefined) return known
    const start = begin(blockEnds, number)
    const block = read(startOf('blocks') + start, blockEnds[number]! - start)
    blocks.set(number, block)
    return block
  }
  const entryIn = (block: Buffer, at: number): LexiconEntry => {
    const start = block.readUInt16LE(2 * at)
    const end = start + 1 + block[start]!
    return {
      word: block.toString('latin1', start + 1, end),
      familiarity: block.readUInt32LE(end),
      ...readRecord(block, end + 4),
    }
  }
  const find = (word: string): LexiconEntry | undefined => {
    // The last block that begins no later than the word.
    const number = lastOf(count, at => compare(firsts, begin(firstEnds, at), firstEnds[at]!, word) <= 0)
    if (number < 0) return undefined
    const block = blockAt(number)
    const orderOf = (at: number) => {
      const start = block.readUInt16LE(2 * at)
      return compare(block, start + 1, start + 1 + block[start]!, word)
    }
    const held = Math.min(wordsABlock, size - number * wordsABlock)
    const at = lastOf(held, each => orderOf(each) <= 0)
    return at >= 0 && orderOf(at) === 0 ? entryIn(block, at) : undefined
  }
  const asked = new Map<string, LexiconEntry | null>()
  return {
    size,
    lookUp(typed) {
      const word = typed.toLowerCase()
      const known = asked.get(word)
      if (known !== undefined) return known ?? undefined
      const entry = find(word)
      if (asked.size >= mostRemembered) asked.clear()
      asked.set(word, entry ?? null)
      return entry
    },
    *entries() {
      const start = startOf('order')
      const order = numbersAt(read(start, startOf('end') - start), 0, size)
      for (const index of order) yield entryIn(blockAt(Math.floor(index / wordsABlock)), index % wordsABlock)
    },
  }
}

function madeByAnotherVersion(): Error {
  return new Error('The lexicon was made by another version. Run "npm run build" to make it anew.')
}

/** The last of so many for which it holds; those for which it does come first. -1 where it does for none. */
function lastOf(count: number, holds: (at: number) => boolean): number {
  let low = 0
  let high = count - 1
  while (low <= high) {
    const middle = (low + high) >> 1
    if (holds(middle)) low = middle + 1
    else high = middle - 1
  }
  return high
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
