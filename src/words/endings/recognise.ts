import { lazily } from '../../lazily.js'
import { wordsOf } from '../tables/installed-tables.js'
import { join } from './adding.js'
import { pluralOf } from './plural.js'
import { ruleBefore, type SoundOfEd, sFormOf } from './verb-endings.js'

export type EndingName = 'ed' | 'ing' | 'er' | 'est' | 's' | 'es'

export interface Ending {
  readonly ending: EndingName
  readonly base: string
  /** How the ending was joined, in plain words: `double the last letter, add ing`. */
  readonly rule: string
  /** How -ed is said, or null. */
  readonly sound: SoundOfEd | null
  readonly why: string
}

export interface EndingQuestion {
  readonly text: string
  /** ARPABET of the whole word; tells the three sounds of -ed and checks that the ending is heard. */
  readonly pronunciation?: string
  /** The evidence that the base is a word. Without it only the spelling speaks, and nothing is found. */
  readonly isWord?: (text: string) => boolean
  /** Pronunciations of a base, the commonest first: river is no `rive` + er, since their vowels differ. */
  readonly pronunciationsOf?: (text: string) => readonly string[]
  /** Of several bases the most familiar is taken: teaser is tease and -er, not teas. */
  readonly familiarity?: (text: string) => number
}

/** Spelled like base + ending, sounded like it too, and yet none. */
const noEnding = lazily(() => new Set(wordsOf('endings/no-ending')))

export function hasNoEnding(word: string): boolean {
  return noEnding().has(word)
}

/** The inflectional ending of a word and its base, when the base is a word; null when there is none. */
export function endingOf(question: EndingQuestion): Ending | null {
  const word = question.text.toLowerCase()
  if (question.isWord === undefined || hasNoEnding(word)) return null
  return withVowelEnding(word, question) ?? withS(word, question)
}

function withVowelEnding(word: string, question: EndingQuestion): Ending | null {
  for (const ending of ['ing', 'est', 'ed', 'er'] as const) {
    if (!word.endsWith(ending) || word.length < ending.length + 2) continue
    for (const base of inOrder(possibleBases(word, ending), question)) {
      if (!/[aeiouy]/.test(base) || !question.isWord?.(base)) continue
      const pronunciations = question.pronunciationsOf?.(base) ?? []
      const joined = join(base, ending, pronunciations[0])
      if (joined.form !== word) continue
      if (!soundsLikeBase(base, pronunciations, question.pronunciation)) continue
      return {
        ending,
        base,
        rule: `${ruleBefore(joined.rule)}add ${ending}`,
        sound: ending === 'ed' ? saidEd(question.pronunciation) : null,
        why: `${base} is a word, and ${base} + ${ending} is spelled ${word}`,
      }
    }
  }
  return null
}

/** A stem that is a word goes before what only the doubled letter hides: hissing is hiss and -ing, not his. */
function inOrder(bases: readonly string[], { familiarity, isWord }: EndingQuestion): readonly string[] {
  if (familiarity === undefined) return bases
  const [stem = '', withE = '', ...others] = bases
  const byFamiliarity = (some: readonly string[]) =>
    some.toSorted((first, second) => familiarity(second) - familiarity(first))
  return isWord?.(stem) === true
    ? [...byFamiliarity([stem, withE]), ...others]
    : byFamiliarity([withE, ...others])
}

/** sit from sitting, smile from smiling, carry from carried, lie from lying. */
function possibleBases(word: string, ending: string): readonly string[] {
  const stem = word.slice(0, -ending.length)
  const bases = [stem, `${stem}e`]
  if (/([^aeiou])\1$/.test(stem)) bases.push(stem.slice(0, -1))
  if (stem.endsWith('i')) bases.push(`${stem.slice(0, -1)}y`)
  if (ending === 'ing' && stem.endsWith('y')) bases.push(`${stem.slice(0, -1)}ie`)
  if (stem.endsWith('ck')) bases.push(stem.slice(0, -1))
  return bases
}

function withS(word: string, question: EndingQuestion): Ending | null {
  if (!word.endsWith('s') || /(?:ss|us|is)$/.test(word) || word.length < 3) return null
  const changed = [`${word.slice(0, -3)}y`, `${word.slice(0, -3)}f`, `${word.slice(0, -3)}fe`]
  const bases = [...changed, word.slice(0, -1), word.slice(0, -2)]
  for (const base of bases) {
    if (base.length < 2 || !question.isWord?.(base)) continue
    const pronunciation = question.pronunciationsOf?.(base)[0]
    const built = pluralOf({
      text: base,
      partsOfSpeech: ['noun'],
      ...(pronunciation === undefined ? {} : { pronunciation }),
    })
    const rule = [built, sFormOf({ text: base })].find(one => one?.form === word)?.rule
    if (rule === undefined || base === word) continue
    const ending = word === `${base}s` ? 's' : 'es'
    return {
      ending,
      base,
      rule,
      sound: null,
      why: `${base} is a word, and ${base} + ${ending} is spelled ${word}`,
    }
  }
  return null
}

/** The sounds of the base open the whole word's. */
function soundsLikeBase(base: string, ofBase: readonly string[], ofWord: string | undefined): boolean {
  if (ofBase.length === 0 || ofWord === undefined) return true
  const wordSounds = sounds(ofWord)
  return ofBase.some(pronunciation => {
    const baseSounds = sounds(pronunciation)
    // A final -le or -er loses its vowel before an ending (handling).
    const length = /(?:le|er|re)$/.test(base) ? Math.max(1, baseSounds.length - 2) : baseSounds.length
    return baseSounds
      .slice(0, length)
      .every(
        (sound, at) =>
          alike(sound, wordSounds[at]) || (at === baseSounds.length - 1 && isOtherEnd(sound, wordSounds[at])),
      )
  })
}

/** The end of a word that is said in two ways (close and closer, cloth and clothed), or weakly (funnier, souring). */
function isOtherEnd(first: string, second: string | undefined): boolean {
  return ['S Z', 'Z S', 'TH DH', 'DH TH', 'IY Y', 'ER R'].includes(`${first} ${second}`)
}

/** The dictionary wavers between AA and AO (want) and, unstressed, between IH and AH. */
function alike(first: string, second: string | undefined): boolean {
  if (first === second) return true
  return ['AA AO', 'AO AA', 'IH AH', 'AH IH'].includes(`${first} ${second}`)
}

function sounds(pronunciation: string): readonly string[] {
  return pronunciation.replace(/\d/g, '').trim().split(/\s+/)
}

function saidEd(pronunciation: string | undefined): SoundOfEd | null {
  if (pronunciation === undefined) return null
  const [before = '', last] = sounds(pronunciation).slice(-2)
  if (last === 'T') return 't'
  return last === 'D' && /^(?:IH|AH|EH)$/.test(before) ? 'id' : 'd'
}
