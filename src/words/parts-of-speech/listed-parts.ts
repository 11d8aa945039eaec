/** Parts of speech that tables settle, the commonest use first. */
import { lazily } from '../../lazily.js'
import { partsOfSpeech } from '../lexicon/file-format.js'
import { rowsOf, wordsOf } from '../tables/installed-tables.js'
import type { PartOfSpeech } from '../word.js'

type PartsByWord = ReadonlyMap<string, readonly PartOfSpeech[]>

export const closedClasses: () => PartsByWord = lazily(() => partsByWord('parts-of-speech/closed-classes'))
export const corrections: () => PartsByWord = lazily(() => partsByWord('parts-of-speech/corrections'))
/** Only the first is settled; the rest follows as it was found. */
export const firstUses: () => ReadonlyMap<string, PartOfSpeech> = lazily(
  () => new Map([...partsByWord('parts-of-speech/first-uses')].map(([word, [first]]) => [word, first!])),
)
export const neverNouns: () => ReadonlySet<string> = lazily(
  () => new Set(wordsOf('parts-of-speech/never-nouns')),
)

function partsByWord(table: string): PartsByWord {
  return new Map(rowsOf(table).map(([word = '', parts = '']) => [word, readParts(parts)]))
}

/**
 * `noun, verb`
 * @throws Error on a name that is no part of speech
 */
export function readParts(written: string): readonly PartOfSpeech[] {
  return written.split(', ').map(name => {
    const part = partsOfSpeech.find(each => each === name)
    if (part === undefined) throw new Error(`"${name}" is no part of speech`)
    return part
  })
}
