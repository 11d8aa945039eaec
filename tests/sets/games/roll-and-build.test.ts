import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { isUnfit, knownParts } from '../../../layouts/roll-and-build/known-parts.js'
import { type RollWanted, rollAndBuild } from '../../../src/sets/games/roll-and-build.js'
import { generatorFor, shuffle } from '../../../src/sets/random.js'
import { offeredPath, offeredTexts } from '../../../src/words/find/offered-file.js'
import { unfitPath } from '../../../src/words/fitness/unfit-file.js'
import { openLexicon } from '../../../src/words/lexicon/lexicon.js'
import { studyWord } from '../../../src/words/study.js'
import type { Word } from '../../../src/words/word.js'

const place = { file: 'marsh.yaml', line: 9 }
const lexicon = openLexicon()
const studied = (text: string): Word => {
  const word = studyWord({ text, place, overrides: {} }, lexicon)
  if (!word.ok) throw new Error(text)
  return word.value
}
const texts =
  'reed marsh moth frog leaf wren gnat mud pond nest shell boat seal lake tree heron duck fish'.split(' ')
const week = texts.map(studied)

/** The files that hold them, read for themselves: every word fit for children, every word that is not. */
const fit = new Set(
  readFileSync(offeredPath, 'latin1')
    .split('\n')
    .map(line => line.slice(4).split('\t')[0]),
)
const unfit = new Set(readFileSync(unfitPath, 'latin1').split('\n'))

function asked(wanted: Partial<RollWanted> = {}): RollWanted {
  return {
    words: week,
    known: knownParts(),
    isKnown: text => offeredTexts().has(text),
    isUnfit,
    fits: () => true,
    sets: 1,
    copies: 1,
    seed: 12,
    label: 'roll-and-build',
    place,
    ...wanted,
  }
}

interface Answer {
  readonly dice: readonly (readonly string[])[]
  readonly words: readonly string[]
}

function answersOf(wanted: Partial<RollWanted> = {}): readonly Answer[] {
  const made = rollAndBuild(asked(wanted))
  if (!made.ok) throw new Error(made.problems.map(({ message }) => message).join('\n'))
  const { cards, answers = [] } = made.value
  return answers.map(({ text, numbers }) => ({
    words: text.split(', '),
    dice: numbers.map(number => cards.find(card => card.number === number)!.die!.faces),
  }))
}

/** From the definition: a face of each die, side by side. */
function spelledBy([first, second, third]: Answer['dice']): readonly string[] {
  return first!.flatMap(a => second!.flatMap(b => third!.map(c => `${a}${b}${c}`)))
}

describe('roll and build', () => {
  it('tells every known word that the throws spell and no other, and none spells an unfit one, over many weeks', () => {
    for (let seed = 1; seed <= 40; seed++) {
      const words = shuffle(week, generatorFor(seed, 'a week')).slice(0, 9)
      const listed = words.map(({ text }) => text)
      for (const { dice, words: told } of answersOf({ words, seed, sets: 2 })) {
        const spelled = spelledBy(dice)
        expect(spelled).toHaveLength(216)
        const known = spelled.filter(text => fit.has(text) || listed.includes(text))
        expect([...told].sort()).toEqual([...new Set(known)].sort())
        expect(spelled.filter(text => unfit.has(text))).toEqual([])
      }
    }
  })

  it('builds several words of the list with one set of dice, and most with three', () => {
    const built = (sets: number) => {
      const told = new Set(answersOf({ sets }).flatMap(({ words }) => words))
      return texts.filter(text => told.has(text)).length
    }
    expect(built(1)).toBeGreaterThanOrEqual(6)
    expect(built(3)).toBeGreaterThanOrEqual(14)
  })

  it('builds more than 40 words in all', () => {
    expect(answersOf()[0]!.words.length).toBeGreaterThan(40)
  })

  it('is the same for the same seed', () => {
    expect(answersOf()).toEqual(answersOf())
  })

  it('names the words that are not built', () => {
    const made = rollAndBuild(asked({ words: [studied('reed'), studied('heron')] }))
    expect(made.ok && made.value.notes).toEqual([
      'The dice do not build "heron": three dice build words of one syllable, and not all of them.',
    ])
  })

  it('keeps letters off the faces that have no room there', () => {
    const [answer] = answersOf({ fits: letters => letters.length < 2 })
    expect(answer!.dice.flat().filter(letters => letters.length > 1)).toEqual([])
  })

  it('is an error where the faces are too small for the letters', () => {
    const made = rollAndBuild(asked({ fits: () => false }))
    expect(made.problems.map(({ message }) => message)).toEqual([
      'at this size too few letters have room on the faces of a die',
    ])
  })

  it('is an error without a word of one syllable that is known', () => {
    const made = rollAndBuild(asked({ words: ['heron', 'blorf', 'I', 'café'].map(studied) }))
    expect(made.problems.map(({ message }) => message)).toEqual([
      'no word of the list can be built with three dice: that takes a known word of one syllable',
    ])
  })

  it('is a warning where fewer sets build all there is', () => {
    const made = rollAndBuild(asked({ words: [studied('reed')], sets: 3 }))
    expect(made.problems.map(({ message }) => message).join()).toContain('1 of 3 sets of dice are made')
  })
})
