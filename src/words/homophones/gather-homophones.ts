/** Groups of familiar words that sound the same, found in the lexicon. Build time. */
import { alignWord } from '../alignment/graphemes.js'
import type { LexiconEntry } from '../lexicon/entry.js'
import { keyOf, keyWhereMerged, keyWithoutR } from './said-alike.js'
import type { HomophoneGroup, Where } from './where.js'

/**
 * A rarer word is no homophone that a class meets: so many times in 51 million words of speech. Words of books that
 * speech has seldom (beet, cymbal) stand in homophones.tsv.
 */
const leastFamiliar = 15

export interface HomophoneSources {
  /** The most familiar first. */
  readonly entries: readonly LexiconEntry[]
  /** Two spellings of one word. */
  readonly isOneWord: (first: string, second: string) => boolean
  /** Left out by hand. */
  readonly leftOut: ReadonlySet<string>
  /** Words that are only called out (hey, oh) and stand in books all the same. */
  readonly calledOut: ReadonlySet<string>
}

/** A word as it is said in one way. */
interface Said {
  readonly word: string
  readonly pronunciation: string
}

export function gatherHomophones(sources: HomophoneSources): readonly HomophoneGroup[] {
  const said = sources.entries.filter(entry => isMet(entry, sources)).flatMap(waysOf)
  const groupsBy = (key: (pronunciation: string) => string) =>
    groupsWithKey(said, key).map(group => withoutVariants(group, sources.isOneWord))
  const inEvery = groupsBy(keyOf).filter(group => group.length > 1)
  const merged = groupsBy(keyWhereMerged).filter(saysMore)
  const withoutR = groupsBy(keyWithoutR)
    .map(group => group.filter(each => dropsR(each) || isLongAlone(each)))
    .filter(group => saysMore(group) && group.some(dropsR))
  return [
    ...inEvery.map(group => ({ words: wordsOf(group), where: whereAlike(group) })),
    ...merged.map(group => ({ words: wordsOf(group), where: 'cot and caught merged' as const })),
    ...withoutR.map(group => ({ words: wordsOf(group), where: 'r dropped' as const })),
  ]
}

function isMet(entry: LexiconEntry, { leftOut, calledOut }: HomophoneSources): boolean {
  const { word, familiarity, partsOfSpeech, name, unfit, notReadAloud } = entry
  return (
    familiarity >= leastFamiliar &&
    !(name || unfit || notReadAloud || leftOut.has(word)) &&
    /^[a-z]{2,}$/.test(word) &&
    /[aeiouy]/.test(word) &&
    partsOfSpeech[0] !== undefined &&
    (partsOfSpeech[0] !== 'interjection' || calledOut.has(word))
  )
}

/**
 * Of a word that is said as different words (read, bow) each way with the stress of the one taught first: to desert
 * is a rarer word than the desert, and dessert would be confused with it.
 */
function waysOf({ word, pronunciations, heteronym }: LexiconEntry): readonly Said[] {
  const stressesOf = (pronunciation: string) => pronunciation.replaceAll(/\D/g, '')
  const [first = ''] = pronunciations
  const ways = heteronym
    ? pronunciations.filter(pronunciation => stressesOf(pronunciation) === stressesOf(first))
    : pronunciations.slice(0, 1)
  return ways.map(pronunciation => ({ word, pronunciation }))
}

function groupsWithKey(
  said: readonly Said[],
  keyFor: (pronunciation: string) => string,
): readonly (readonly Said[])[] {
  const groups = new Map<string, Said[]>()
  for (const each of said) {
    const key = keyFor(each.pronunciation)
    const group = groups.get(key)
    if (group === undefined) groups.set(key, [each])
    else if (group.every(({ word }) => word !== each.word)) group.push(each)
  }
  return [...groups.values()].filter(group => group.length > 1)
}

/** The more familiar stands first and stays. */
function withoutVariants(group: readonly Said[], isOneWord: HomophoneSources['isOneWord']): readonly Said[] {
  const kept: Said[] = []
  for (const each of group) if (!kept.some(({ word }) => isOneWord(word, each.word))) kept.push(each)
  return kept
}

/** Than what is the same in General American. */
function saysMore(group: readonly Said[]): boolean {
  return new Set(group.map(({ pronunciation }) => keyOf(pronunciation))).size > 1
}

/** Has AO or AA and an r behind it that is not said: fort, farther. */
function dropsR({ pronunciation }: Said): boolean {
  return /\bA[OA]\d R(?! [AEIOU])/.test(keyOf(pronunciation))
}

/**
 * Its AO or AA is long as in fort or farther, by its letters: au, aw, al, a. Where the letter is an o, or an a after w
 * (cot, want), accents without r have a short vowel of its own.
 */
function isLongAlone({ word, pronunciation }: Said): boolean {
  const { graphemes } = alignWord(word, pronunciation)
  return graphemes.every(({ letters, sounds }, index) => {
    if (!sounds.some(sound => sound === 'AO' || sound === 'AA')) return true
    const before = graphemes[index - 1]?.letters ?? ''
    return letters.length > 1 || (letters === 'a' && !/[wu]h?$/.test(before))
  })
}

function whereAlike(group: readonly Said[]): Where {
  if (isSplitBy(({ word, pronunciation }) => word.startsWith('wh') && pronunciation.startsWith('W'), group))
    return 'wh said as w'
  return isSplitBy(hasMerrysVowel, group) ? 'merry said as marry' : 'every accent'
}

/** Accents that drop their r keep the e of very and ferry from the a of vary and fairy (common practice, no source). */
function hasMerrysVowel({ word, pronunciation }: Said): boolean {
  if (!pronunciation.includes('EH1 R')) return false
  const { graphemes } = alignWord(word, pronunciation)
  return graphemes.some(
    ({ letters, sounds }, index) =>
      /^(?:e|u|err)$/.test(letters) &&
      [...sounds, ...(graphemes[index + 1]?.sounds ?? [])].join(' ').startsWith('EH R'),
  )
}

function isSplitBy(test: (said: Said) => boolean, group: readonly Said[]): boolean {
  return group.some(test) && !group.every(test)
}

function wordsOf(group: readonly Said[]): readonly string[] {
  return group.map(({ word }) => word)
}
