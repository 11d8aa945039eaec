import type { LexiconEntry } from './entry.js'
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

const byteOfSound = new Map(soundBytes.map((sound, index) => [sound, index]))

/** The bytes of a lexicon of these entries, in any order; file-format.ts describes them. */
export function writeLexicon(entries: readonly LexiconEntry[]): Buffer {
  const sorted = entries
    .map(entry => ({ entry, word: Buffer.from(entry.word) }))
    .sort((a, b) => Buffer.compare(a.word, b.word))
  const order = sorted.map((_, index) => index)
  order.sort((a, b) => sorted[b]!.entry.familiarity - sorted[a]!.entry.familiarity || a - b)
  const groups = Array.from({ length: Math.ceil(sorted.length / wordsABlock) }, (_, index) =>
    sorted.slice(index * wordsABlock, (index + 1) * wordsABlock),
  )
  const firsts = groups.map(group => group[0]!.word)
  const blocks = groups.map(group => blockOf(group))
  const content: Record<Section, Buffer> = {
    firstEnds: numbers(runningEnds(firsts.map(word => word.length))),
    firsts: Buffer.concat(firsts),
    blockEnds: numbers(runningEnds(blocks.map(block => block.length))),
    blocks: Buffer.concat(blocks),
    order: numbers(order),
  }
  const ends = runningEnds(sections.map(section => content[section].length))
  const starts = [0, ...ends].map(offset => headerBytes + offset)
  return Buffer.concat([
    Buffer.from(fileMark, 'latin1'),
    numbers([entries.length, ...starts]),
    ...sections.map(section => content[section]),
  ])
}

function blockOf(group: readonly { readonly entry: LexiconEntry; readonly word: Buffer }[]): Buffer {
  const parts = group.map(({ entry, word }) =>
    Buffer.concat([Buffer.of(word.length), word, numbers([entry.familiarity]), recordOf(entry)]),
  )
  const begins = Buffer.alloc(2 * parts.length)
  runningEnds(parts.map(part => part.length)).forEach((end, index) => {
    const begin = begins.length + end - parts[index]!.length
    begins.writeUInt16LE(begin, 2 * index)
  })
  return Buffer.concat([begins, ...parts])
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
