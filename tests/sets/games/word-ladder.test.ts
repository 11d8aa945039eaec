import { dictionary } from 'cmu-pronouncing-dictionary'
import { describe, expect, it } from 'vitest'
import { knownWords } from '../../../layouts/word-ladder/known-words.js'
import type { KnownWords, LaddersWanted } from '../../../src/sets/games/ladders-wanted.js'
import { wordLadders } from '../../../src/sets/games/word-ladder.js'
import { generatorFor, shuffle } from '../../../src/sets/random.js'
import { unfitWords } from '../../../src/words/fitness/unfit-file.js'
import { openLexicon } from '../../../src/words/lexicon/lexicon.js'
import { studyWord } from '../../../src/words/study.js'
import type { Word } from '../../../src/words/word.js'

const place = { file: 'marsh.yaml', line: 9 }
const lexicon = openLexicon()
const studied = (text: string, clue?: string): Word => {
  const word = studyWord({ text, place, overrides: {}, ...(clue === undefined ? {} : { clue }) }, lexicon)
  if (!word.ok) throw new Error(text)
  return word.value
}
const week = 'reed seal mud pond gnat wren leaf moth shell nest boat lake'
  .split(' ')
  .map(text => studied(text))
const known = knownWords(undefined)

/** So that a thousand searches take no minute: the words that are familiar enough, gathered once. */
const keptWords = new Map<string, ReturnType<KnownWords['wordsOf']>>()
const kept: KnownWords = {
  ...known,
  wordsOf: (sounds, least) => {
    const name = `${[...sounds].sort().join()} ${least}`
    const words = keptWords.get(name) ?? known.wordsOf(sounds, Math.max(least, 2000))
    keptWords.set(name, words)
    return words
  },
}

function asked(wanted: Partial<LaddersWanted> = {}): LaddersWanted {
  return {
    words: week,
    known,
    ladders: undefined,
    steps: undefined,
    from: undefined,
    to: undefined,
    copies: 1,
    seed: 12,
    label: 'word-ladder',
    place,
    ...wanted,
  }
}

function laddersOf(wanted: Partial<LaddersWanted> = {}): readonly (readonly string[])[] {
  const made = wordLadders(asked(wanted))
  if (!made.ok) throw new Error(made.problems.map(({ message }) => message).join('\n'))
  return made.value.cards.filter(({ copy }) => copy === 1).map(({ words }) => words.map(({ text }) => text))
}

function problemOf(wanted: Partial<LaddersWanted>): string {
  return wordLadders(asked(wanted))
    .problems.map(({ message, advice }) => `${message}\n${advice}`)
    .join('\n')
}

/** Every way to say a word that CMUdict has (Carnegie Mellon University, version 0.7b), without stress. */
function waysToSay(word: string): readonly (readonly string[])[] {
  return ['', '(2)', '(3)', '(4)']
    .map(which => dictionary[`${word}${which}`])
    .filter(said => said !== undefined)
    .map(said => said.replaceAll(/\d/g, '').split(' '))
}

/** From the definition: as many sounds, all the same but one. */
function changesOneSound(from: string, to: string): boolean {
  return waysToSay(from).some(before =>
    waysToSay(to).some(
      after =>
        before.length === after.length &&
        before.filter((sound, index) => sound !== after[index]).length === 1,
    ),
  )
}

const larger = [
  ...week,
  ...'ship chick rain boot fox queen fish cake kite bird fork cow house ring bell stop plant'
    .split(' ')
    .map(text => studied(text)),
]

describe('word ladders', () => {
  it('change one sound at each step, on fit words, none twice, over 1,000 seeds', () => {
    const steps = new Map<string, { readonly from: string; readonly to: string }>()
    for (let seed = 1; seed <= 1000; seed++) {
      const words = shuffle(larger, generatorFor(seed, 'a week')).slice(0, 8)
      for (const ladder of laddersOf({ words, known: kept, seed, ladders: 2 })) {
        expect(new Set(ladder).size).toBe(ladder.length)
        for (const [index, to] of ladder.entries())
          if (index > 0) steps.set(`${ladder[index - 1]} ${to}`, { from: ladder[index - 1]!, to })
      }
    }
    const taken = [...steps.values()]
    expect(taken.length).toBeGreaterThan(500)
    expect(taken.filter(({ from, to }) => !changesOneSound(from, to))).toEqual([])
    expect(taken.map(({ to }) => to).filter(word => unfitWords().has(word))).toEqual([])
  })

  it('have words of the list at both ends where one is in reach of another', () => {
    const texts = week.map(({ text }) => text)
    expect(laddersOf({ ladders: 2 }).flatMap(ladder => [ladder[0], ladder.at(-1)])).toSatisfy(
      (ends: readonly string[]) => ends.every(end => texts.includes(end)),
    )
  })

  it('are 4, of different words, where the plan says nothing', () => {
    const ladders = laddersOf()
    expect(ladders).toHaveLength(4)
    expect(new Set(ladders.map(ladder => ladder.join())).size).toBe(4)
  })

  it.each([2, 3, 5, 7])('have %i steps where the plan says so', steps => {
    for (const ladder of laddersOf({ steps })) expect(ladder).toHaveLength(steps + 1)
  })

  it('never step from a word to one that sounds the same', () => {
    const words = [studied('reed'), studied('reread'), studied('wait'), studied('weight')]
    expect(problemOf({ words, from: 'wait', to: 'weight' })).toContain('"wait" and "weight" sound the same')
    expect(laddersOf({ words: [studied('wait'), studied('weight')], known: kept }).join()).not.toContain(
      'wait,weight',
    )
  })

  it('may leave no step out: no word is one sound away from an earlier one than the last', () => {
    for (const ladder of laddersOf({ ladders: 6 }))
      for (const [index, word] of ladder.entries())
        for (const earlier of ladder.slice(0, Math.max(0, index - 1)))
          expect(`${earlier} ${word} ${changesOneSound(earlier, word)}`).toBe(`${earlier} ${word} false`)
  })

  it('are the same for the same seed, and others for another', () => {
    expect(laddersOf()).toEqual(laddersOf())
    expect(laddersOf({ seed: 13 })).not.toEqual(laddersOf())
  })

  it('lead from the word that is named to the word that is named', () => {
    const [ladder] = laddersOf({ from: 'reed', to: 'seal' })
    expect([ladder![0], ladder!.at(-1), ladder!.length]).toEqual(['reed', 'seal', 3])
    expect(laddersOf({ to: 'seal' })[0]!.at(-1)).toBe('seal')
  })

  it('tell the teacher which clues are drafts', () => {
    const made = wordLadders(asked())
    expect(made.ok && made.value.notes?.[0]).toMatch(
      /^Clues of words that are not on your list are drafts; read them over: "/,
    )
  })
})

describe('a ladder that does not exist', () => {
  it('is told with the nearest that does, where the sounds are not as many', () => {
    const problem = problemOf({ from: 'reed', to: 'nest' })
    expect(problem).toContain('no ladder begins with "reed" and ends with "nest": they have 3 and 4 sounds')
    const nearest = /write to: (\w+)/.exec(problem)![1]!
    expect(laddersOf({ from: 'reed', to: nearest })[0]!.at(-1)).toBe(nearest)
  })

  it('is told with the fewest steps that lead there', () => {
    const problem = problemOf({ from: 'mud', to: 'seal', steps: 2 })
    expect(problem).toContain('no ladder of 2 steps begins with "mud" and ends with "seal"')
    const fewest = Number(/write steps: (\d)/.exec(problem)![1])
    expect(laddersOf({ from: 'mud', to: 'seal', steps: fewest })[0]).toHaveLength(fewest + 1)
  })

  it.each([
    ['blorf', 'it is neither on the list nor a word that ladders step on'],
    ['umbrella', 'changing one sound of it makes no other word that children know'],
  ])('is told where %s is to be its end', (from, why) => {
    expect(problemOf({ from })).toContain(`no ladder begins or ends with "${from}": ${why}`)
  })

  it('is told where both ends are one word', () => {
    expect(problemOf({ from: 'reed', to: 'Reed' })).toContain(
      'a ladder with "reed" at both ends changes nothing',
    )
  })

  it('is told of a word whose sounds are a guess, and of a word of one sound', () => {
    const words = [studied('blorf'), studied('I'), studied('reed')]
    expect(problemOf({ words, from: 'blorf' })).toContain('its sounds are a guess')
    expect(problemOf({ words, from: 'I' })).toContain('it has one sound alone')
  })

  it('is told where no word of the list leads anywhere', () => {
    expect(problemOf({ words: [studied('umbrella'), studied('blorf')] })).toContain(
      'no word of the list begins a ladder',
    )
  })

  it('is a warning where there are some, but not as many as asked', () => {
    expect(
      problemOf({ words: [studied('reed'), studied('seal')], from: 'reed', to: 'seal', ladders: 40 }),
    ).toMatch(/^\d+ of 40 ladders are made/)
  })
})
