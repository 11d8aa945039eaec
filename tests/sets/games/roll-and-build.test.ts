import { describe, expect, it } from 'vitest'
import { type RollWanted, rollAndBuild } from '../../../src/sets/games/roll-and-build.js'
import { unfitWords } from '../../../src/words/fitness/unfit-file.js'
import {
  askedDice,
  type DiceAnswer,
  diceAnswers,
  faultsOfDice,
  faultsOfWeek,
  studied,
} from './dice-by-definition.js'

const texts =
  'reed marsh moth frog leaf wren gnat mud pond nest shell boat seal lake tree heron duck fish'.split(' ')
const week = texts.map(studied)

const asked = (wanted: Partial<RollWanted> = {}) => askedDice({ words: week, ...wanted })
function answersOf(wanted: Partial<RollWanted> = {}): readonly DiceAnswer[] {
  const made = rollAndBuild(asked(wanted))
  if (!made.ok) throw new Error(made.problems.map(({ message }) => message).join('\n'))
  return diceAnswers(made.value)
}

describe('roll and build', () => {
  // `npm run soak` asks the same of 1,000 weeks.
  it('tells every known word that the throws spell and no other, and none spells an unfit one, over many weeks', () => {
    const weeks = Array.from({ length: 25 }, (_, seed) => faultsOfWeek(seed))
    expect(weeks.flatMap(({ faults }) => faults)).toEqual([])
    expect(weeks.filter(({ sets }) => sets > 0).length).toBeGreaterThan(20)
  })

  it('would be told of dice that spell what nobody claims, and of what they do not spell', () => {
    const [{ dice, words }] = answersOf() as [DiceAnswer]
    expect(faultsOfDice({ dice, words }, texts)).toEqual([])
    expect(faultsOfDice({ dice, words: [...words.slice(1), 'heron', 'zorp'] }, texts)).toEqual([
      '"heron" cannot be built',
      '"zorp" cannot be built',
      '"zorp" is no known word',
      `"${words[0]}" can be built, and is not told`,
    ])
  })

  it('would be told of dice that spell an unfit word, and of a face that stands twice', () => {
    const unfit = [...unfitWords()].find(text => text.length === 3)!
    const dice = [...unfit].map(letter => [letter, '1', '2', '3', '4', '5'])
    expect(faultsOfDice({ dice, words: [] }, [])).toEqual([`"${unfit}" can be built, and is unfit`])
    const twice = [...dice.slice(0, 2), ['1', '1', '2', '3', '4', '5']]
    expect(faultsOfDice({ dice: twice, words: [] }, [])).toEqual(['a die of 6 faces: 1 1 2 3 4 5'])
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
