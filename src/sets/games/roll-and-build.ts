/** Roll and build: dice whose throws spell the week's words and as many other words that children know as can be. */
import { failWith, succeed } from '../../outcomes.js'
import { errorAt, type Outcome, type Place, warningAt } from '../../problems.js'
import type { Word } from '../../words/word.js'
import { answerOfEach } from '../answer-data.js'
import { cardId } from '../card-id.js'
import type { Card, CardSet } from '../card-set.js'
import { generatorFor } from '../random.js'
import { buildDice, type DieOnCard, FACES, type ThreeDice, throwsOf } from './build-dice.js'
import { namedWords } from './named-words.js'
import { type ThreeParts, threeParts } from './split-words.js'

/** A word that children know, one syllable, in its three parts. */
export interface KnownParts {
  readonly parts: ThreeParts
  /** How often it stands in the 51 million words of SUBTLEX-US. */
  readonly familiarity: number
}

export interface RollWanted {
  readonly words: readonly Word[]
  /** Fit for children, the most familiar first. */
  readonly known: readonly KnownParts[]
  /** Whether children may meet the text as a word, of however many syllables. */
  readonly isKnown: (text: string) => boolean
  readonly isUnfit: (text: string) => boolean
  /** Whether letters have room on a face. */
  readonly fits: (letters: string) => boolean
  /** How many times three dice. */
  readonly sets: number
  readonly copies: number
  readonly seed: number
  readonly label: string
  readonly place: Place
}

interface Split {
  readonly word: Word
  readonly text: string
  readonly parts: ThreeParts
}

/** Three nets for each set of dice; the next set builds what those before it leave out. */
export function rollAndBuild(wanted: RollWanted): Outcome<CardSet> {
  const { words, sets, seed, label, place, isUnfit } = wanted
  const splits = words.flatMap((word): readonly Split[] => {
    const parts = word.source === 'guess' ? undefined : threeParts(word.graphemes)
    const text = parts?.join('') ?? ''
    return parts === undefined || isUnfit(text) ? [] : [{ word, text, parts }]
  })
  if (splits.length === 0) return failWith([nothingToBuild(place)])
  const fitting = splits.filter(({ parts }) => parts.every(wanted.fits))
  if (fitting.length === 0) return failWith([tooFewFaces(place)])
  const dice: ThreeDice[] = []
  let left: readonly Split[] = fitting
  while (dice.length < sets && left.length > 0) {
    const faces = facesFor(left, wanted)
    if (faces.some(each => each.length < FACES)) return failWith([tooFewFaces(place)])
    const found = buildDice(
      { faces, worth: worthOf(left, wanted) },
      generatorFor(seed, `${label}: dice ${dice.length + 1}`),
    )
    if (found === undefined) break
    const built = new Set(throwsOf(found).map(parts => parts.join('')))
    const rest = left.filter(({ text }) => !built.has(text))
    if (rest.length === left.length) break
    dice.push(found)
    left = rest
  }
  if (dice.length === 0) return failWith([nothingToBuild(place)])
  const listed = new Set(splits.map(({ text }) => text))
  const few =
    dice.length < sets
      ? [
          warningAt(
            place,
            `${dice.length} of ${sets} sets of dice are made: they build all of the list that dice can build`,
            'Ask for fewer sets.',
          ),
        ]
      : []
  return succeed(
    setOf(dice, { ...wanted, listed, unbuilt: words.filter(word => !isBuilt(word, fitting, left)) }),
    few,
  )
}

function isBuilt(word: Word, splits: readonly Split[], left: readonly Split[]): boolean {
  return splits.some(split => split.word === word && !left.includes(split))
}

/** A word of the list is worth so many others. */
const LISTED_WORTH = 25
/** Twenty times in a million words (SUBTLEX-US), and five: the bounds are our own. */
const FAMILIAR = 1020
const MIDDLING = 255
/** No number of words makes up for what children should not read. */
const NEVER = -1e6

function worthOf(left: readonly Split[], { known, isUnfit, isKnown }: RollWanted): (text: string) => number {
  const listed = new Set(left.map(({ text }) => text))
  const familiarity = new Map(known.map(({ parts, ...each }) => [parts.join(''), each.familiarity]))
  return text => {
    if (isUnfit(text)) return NEVER
    if (listed.has(text)) return LISTED_WORTH
    const heard = familiarity.get(text)
    if (heard === undefined) return isKnown(text) ? 0.1 : 0
    return heard >= FAMILIAR ? 1 : heard >= MIDDLING ? 0.6 : 0.1
  }
}

/** Beside those of the list, so many of the commonest. */
const COMMON_FACES = [24, 12, 30] as const

/** What the list's words are spelled with, and what many words that children know are spelled with. */
function facesFor(
  left: readonly Split[],
  { known, fits }: RollWanted,
): readonly [readonly string[], readonly string[], readonly string[]] {
  const of = (die: 0 | 1 | 2): readonly string[] => {
    const counts = new Map<string, number>()
    for (const { parts, familiarity } of known)
      if (familiarity >= MIDDLING && parts[die] !== '' && fits(parts[die]))
        counts.set(parts[die], (counts.get(parts[die]) ?? 0) + 1)
    const common = [...counts].sort(([a, x], [b, y]) => y - x || (a < b ? -1 : 1)).slice(0, COMMON_FACES[die])
    return [...new Set([...left.map(({ parts }) => parts[die]), ...common.map(([letters]) => letters)])]
  }
  return [of(0), of(1), of(2)]
}

interface Built extends RollWanted {
  readonly listed: ReadonlySet<string>
  readonly unbuilt: readonly Word[]
}

/** What the throws of these dice spell that is a word: of the list, or one that children know. */
export function wordsBuilt(
  dice: ThreeDice,
  { listed, isKnown }: { readonly listed: ReadonlySet<string>; readonly isKnown: (text: string) => boolean },
): readonly string[] {
  const texts = throwsOf(dice).map(parts => parts.join(''))
  return [...new Set(texts)].filter(text => listed.has(text) || isKnown(text)).sort()
}

function setOf(dice: readonly ThreeDice[], built: Built): CardSet {
  const { copies, unbuilt } = built
  const nets = dice.flatMap(three =>
    three.map((faces, place): DieOnCard => ({ faces, place: placeOf(place) })),
  )
  const cards = Array.from({ length: copies }, (_, copy) =>
    nets.map(
      (die, index): Card => ({
        id: cardId({ prefix: 'board', number: index + 1, copy: copy + 1, of: nets.length }),
        kind: 'board',
        number: index + 1,
        copy: copy + 1,
        words: [],
        die,
      }),
    ),
  ).flat()
  const answers = dice.map(three => ({ dice: three, words: wordsBuilt(three, built) }))
  return {
    cards,
    answerData: answerOfEach(answers),
    notes:
      unbuilt.length === 0
        ? []
        : [
            `The dice do not build ${namedWords(unbuilt)}: three dice build words of one syllable, and not all of them.`,
          ],
    answers: answers.map(({ words }, index) => ({
      text: words.join(', '),
      numbers: [3 * index + 1, 3 * index + 2, 3 * index + 3],
    })),
  }
}

function placeOf(index: number): 0 | 1 | 2 {
  return index === 0 ? 0 : index === 1 ? 1 : 2
}

function nothingToBuild(place: Place) {
  return errorAt(
    place,
    'no word of the list can be built with three dice: that takes a known word of one syllable',
    'Add words of one syllable, or print another game.',
  )
}

function tooFewFaces(place: Place) {
  return errorAt(
    place,
    'at this size too few letters have room on the faces of a die',
    'Choose larger paper or a smaller size.',
  )
}
