/** What two places show of each word, so that what stands in one belongs to what stands in one other alone. */
import { type Place, type Problem, warningAt } from '../../problems.js'
import type { Word } from '../../words/word.js'
import { namedWords } from './named-words.js'
import {
  type PairSide,
  type ShownSide,
  shownSide,
  sideNoun,
  sideWording,
  type WordAtHand,
} from './pair-sides.js'

export interface SidesWanted {
  readonly words: readonly Word[]
  /** What one card of a pair shows, and what the other. */
  readonly sides: readonly [PairSide, PairSide]
  readonly atHand: WordAtHand
  /** What comes of a word that is left out: `gets no card`, `get no card` for several. */
  readonly leftOut: { readonly one: string; readonly several: string }
  readonly place: Place
}

export interface Pair {
  /** The word of the list that it is made for. */
  readonly word: Word
  readonly sides: readonly [ShownSide, ShownSide]
}

export interface MadePairs {
  readonly pairs: readonly Pair[]
  readonly problems: readonly Problem[]
}

/** Those that have both sides; a word that lacks one is named in a warning. */
export function pairsOfSides({ words, sides, atHand, place, leftOut }: SidesWanted): MadePairs {
  const [one, other] = sides
  const lacking = new Map<PairSide, Word[]>()
  const shown = (word: Word, side: PairSide): ShownSide | undefined => {
    const found = side === 'sound alike' ? undefined : shownSide(word, side, atHand)
    if (found === undefined) lacking.set(side, [...(lacking.get(side) ?? []), word])
    return found
  }
  const pairs = words.flatMap((word): Pair[] => {
    const first = shown(word, one)
    const second = one === other ? first : shown(word, other)
    return first === undefined || second === undefined ? [] : [{ word, sides: [first, second] }]
  })
  return { pairs, problems: [...lacking].map(([side, without]) => noSide(side, without, { place, leftOut })) }
}

/**
 * The pairs without those of which a card would be right beside a card of an earlier pair: it reads as that card does, or
 * some word of the list has both.
 */
export function apart(
  made: readonly Pair[],
  { sides: [one, other], place, leftOut }: Pick<SidesWanted, 'sides' | 'place' | 'leftOut'>,
): MadePairs {
  const belongsTo = new Map<string, Map<string, Word>>()
  const link = (from: string, to: string, word: Word) =>
    belongsTo.set(from, (belongsTo.get(from) ?? new Map<string, Word>()).set(to, word))
  for (const { word, sides } of made) {
    link(sides[0].text, sides[1].text, word)
    link(sides[1].text, sides[0].text, word)
  }
  const ownerOf = new Map<string, Word>()
  /** The word whose card stands there already, or by which such a card would belong to this text. */
  const rivals: readonly ((text: string) => Word | undefined)[] = [
    text => ownerOf.get(text),
    text => [...belongsTo.get(text)!].find(([to]) => ownerOf.has(to))?.[1],
  ]
  const shared = new Map<string, { readonly side: PairSide; readonly words: Word[] }>()
  const pairs = made.filter(({ word, sides }) => {
    for (const rival of rivals) {
      const index = sides.findIndex(({ text }) => rival(text) !== undefined)
      if (index === -1) continue
      const { text } = sides[index]!
      const known = shared.get(text) ?? { side: index === 0 ? one : other, words: [rival(text)!] }
      shared.set(text, { ...known, words: [...known.words, word] })
      return false
    }
    for (const { text } of sides) ownerOf.set(text, word)
    return true
  })
  const problems = [...shared].map(([text, { side, words }]) =>
    warningAt(
      place,
      `the ${sideNoun(side)} "${text}" goes with ${namedWords([...new Set(words)])}`,
      `Children could not tell which is meant, so ${namedWords(words.slice(1))} ${words.length === 2 ? leftOut.one : leftOut.several}.`,
    ),
  )
  return { pairs, problems }
}

function noSide(
  side: PairSide,
  words: readonly Word[],
  { place, leftOut }: Pick<SidesWanted, 'place' | 'leftOut'>,
): Problem {
  const { lacks, advice } = sideWording(side)
  const [has, isLeft] =
    words.length === 1 ? ['has', `It ${leftOut.one}`] : ['have', `They ${leftOut.several}`]
  return warningAt(place, `${namedWords(words)} ${has} no ${lacks}`, `${isLeft}. ${advice}`)
}
