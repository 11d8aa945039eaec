import type { LexiconEntry } from './entry.js'
import {
  fileMark,
  flagBits,
  headerBytes,
  partsOfSpeech,
  type Section,
  sections,
  soundBytes,
} from './file-format.js'

const byteOfSound = new Map(soundBytes.map((sound, index) => [sound, index]))

/** The bytes of a lexicon of these entries, in any order; file-format.ts describes them. */
export function writeLexicon(entries: readonly LexiconEntry[]): Buffer {
  const sorted = entries
    .map(entry => ({ entry, word: Buffer.from(entry.word) }))
    .sort((a, b) => Buffer.compare(a.word, b.word))
  const records = sorted.map(({ entry }) => recordOf(entry))
  const order = sorted.map((_, index) => index)
  order.sort((a, b) => sorted[b]!.entry.familiarity - sorted[a]!.entry.familiarity || a - b)
  const content: Record<Section, Buffer> = {
    wordEnds: numbers(runningEnds(sorted.map(({ word }) => word.length))),
    recordEnds: numbers(runningEnds(records.map(record => record.length))),
    familiarity: numbers(sorted.map(({ entry }) => entry.familiarity)),
    order: numbers(order),
    words: Buffer.concat(sorted.map(({ word }) => word)),
    records: Buffer.concat(records),
  }
  const ends = runningEnds(sections.map(section => content[section].length))
  const starts = [0, ...ends].map(offset => headerBytes + offset)
  return Buffer.concat([
    Buffer.from(fileMark, 'latin1'),
    numbers([entries.length, ...starts]),
    ...sections.map(section => content[section]),
  ])
}

function recordOf(entry: LexiconEntry): Buffer {
  const flags =
    (entry.unfit ? flagBits.unfit : 0) |
    (entry.notReadAloud ? flagBits.notReadAloud : 0) |
    (entry.name ? flagBits.name : 0) |
    (entry.heteronym ? flagBits.heteronym : 0)
  const bytes = [
    flags,
    entry.partsOfSpeech.length,
    ...entry.partsOfSpeech.map(part => partsOfSpeech.indexOf(part)),
  ]
  bytes.push(entry.pronunciations.length)
  for (const pronunciation of entry.pronunciations) {
    const sounds = pronunciation.split(' ')
    bytes.push(sounds.length, ...sounds.map(sound => byteFor(sound, entry.word)))
  }
  return Buffer.from(bytes)
}

function byteFor(sound: string, word: string): number {
  const byte = byteOfSound.get(sound)
  if (byte === undefined)
    throw new Error(`The pronunciation of "${word}" holds "${sound}", which is no sound`)
  return byte
}

function runningEnds(lengths: readonly number[]): readonly number[] {
  let end = 0
  return lengths.map(length => {
    end += length
    return end
  })
}

function numbers(values: readonly number[]): Buffer {
  const buffer = Buffer.alloc(values.length * 4)
  values.forEach((value, index) => {
    buffer.writeUInt32LE(value, index * 4)
  })
  return buffer
}
