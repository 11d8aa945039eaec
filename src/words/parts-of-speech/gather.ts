/** Which parts of speech a word has, the commonest use first. Build time; the lexicon keeps the result. */
import { isInGroup } from '../endings/plural-groups.js'
import type { PartOfSpeech } from '../word.js'
import { regularBases } from './bases.js'
import { closedClasses, corrections, firstUses, neverNouns } from './listed-parts.js'
import { type Familiarity, readUses } from './uses.js'
import { partsByWeight } from './weigh.js'

/**
 * @param words lower case
 * @param familiarity the forms of a word tell how much of a noun or a verb it is
 */
export function gatherPartsOfSpeech(
  words: Iterable<string>,
  familiarity: Familiarity,
): Map<string, readonly PartOfSpeech[]> {
  const usesOf = readUses(familiarity)
  const found = new Map<string, readonly PartOfSpeech[]>()
  for (const word of words) {
    const settled = closedClasses().get(word) ?? corrections().get(word)
    const parts = settled ?? withItsFirst(word, withCountedDoing(word, partsByWeight(usesOf(word))))
    const met = isNeverNoun(word) ? parts.filter(part => part !== 'noun') : parts
    if (parts.length > 0) found.set(word, met.length > 0 ? met : parts)
  }
  for (const [word, parts] of found)
    if (isSeveral(word, parts, found, familiarity)) found.set(word, [...parts, 'noun'])
  return found
}

/** Treats and notes are several, though the tagged texts met them as verbs: their base is a noun too. */
function isSeveral(
  word: string,
  parts: readonly PartOfSpeech[],
  found: ReadonlyMap<string, readonly PartOfSpeech[]>,
  familiarity: Familiarity,
): boolean {
  if (!parts.includes('verb') || parts.includes('noun') || isSettled(word)) return false
  const bases = regularBases(word).filter(({ form }) => form === 'plural')
  const [commonest] = bases.sort((one, other) => familiarity(other.base) - familiarity(one.base))
  return commonest !== undefined && found.get(commonest.base)?.includes('noun') === true
}

function isSettled(word: string): boolean {
  return closedClasses().has(word) || corrections().has(word)
}

function withItsFirst(word: string, parts: readonly PartOfSpeech[]): readonly PartOfSpeech[] {
  const first = firstUses().get(word)
  return first === undefined ? parts : [first, ...parts.filter(part => part !== first)]
}

/** A saying, a helping: nouns too, though hardly beside the verb. */
function withCountedDoing(word: string, parts: readonly PartOfSpeech[]): readonly PartOfSpeech[] {
  return isInGroup(word, 'counted doing') && !parts.includes('noun') ? [...parts, 'noun'] : parts
}

/** Nor with an s: the knows, the carries. */
function isNeverNoun(word: string): boolean {
  const bases = [word, word.replace(/s$/, ''), word.replace(/(?<=[hosxz])es$/, ''), word.replace(/ies$/, 'y')]
  return bases.some(base => neverNouns().has(base))
}
