import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { isVowelSound, withoutStress } from '../../../src/words/alignment/arpabet.js'
import { spell } from '../../../src/words/alignment/spelling.js'
import { soundBytes } from '../../../src/words/lexicon/file-format.js'
import { guesserOf } from '../../../src/words/pronunciation/guess.js'
import { contextOf, costOf } from '../../../src/words/pronunciation/joint-model.js'
import {
  installedGuesser,
  readJointModel,
  writeJointModel,
} from '../../../src/words/pronunciation/joint-model-file.js'
import { trainJointModel } from '../../../src/words/pronunciation/train-joint-model.js'

const guess = (word: string) => installedGuesser.guess(spell(word))

describe('guesses for invented words', () => {
  test.each([
    ['blorp', 'B L AO1 R P'],
    ['wug', 'W AH1 G'],
    ['shrape', 'SH R EY1 P'],
    ['thrab', 'TH R AE1 B'],
    ['knesh', 'N EH1 SH'],
    ['glimp', 'G L IH1 M P'],
    ['spreeking', 'S P R IY1 K IH0 NG'],
  ])('%s as %s', (word, pronunciation) => {
    expect(guess(word)).toBe(pronunciation)
  })

  test('any run of letters has some sounds, one main stress at most, and none that is not a sound', () => {
    fc.assert(
      fc.property(fc.stringMatching(/^[a-z]{1,12}(['-][a-z]{1,8})?$/), word => {
        const sounds = guess(word).split(' ')
        expect(soundBytes).toEqual(expect.arrayContaining(sounds))
        const vowels = sounds.filter(sound => isVowelSound(withoutStress(sound)))
        expect(vowels.filter(sound => sound.endsWith('1'))).toHaveLength(vowels.length === 0 ? 0 : 1)
      }),
      { numRuns: 60 },
    )
  })

  test('a letter from outside the alphabet stays without a sound', () => {
    expect(guess('þ')).toBe('')
  })
})

describe('the joint model', () => {
  const lessons = [
    { word: 'reed', pronunciation: 'R IY1 D' },
    { word: 'seed', pronunciation: 'S IY1 D' },
    { word: 'red', pronunciation: 'R EH1 D' },
  ]
  const model = trainJointModel(lessons)

  test('what is likely after a history sums to one over all tokens', () => {
    const first = model.tokens.findIndex(({ letters }) => letters === 'r')
    const sum = model.tokens
      .map((_, token) => Math.exp(-costOf(model, contextOf(model, [0, 0, first]), token)))
      .reduce((total, probability) => total + probability, 0)
    expect(sum).toBeCloseTo(1, 9)
  })

  test('says what it was taught', () => {
    const guesser = guesserOf(model)
    expect(guesser.guess(spell('seed'))).toBe('S IY1 D')
    expect(guesser.guess(spell('sed'))).toBe('S EH1 D')
  })

  test('is the same after it was written and read', () => {
    expect(readJointModel(writeJointModel(model))).toEqual(model)
  })

  test('refuses a file of another version', () => {
    expect(() => readJointModel(Buffer.from('something else, and long enough'))).toThrow(/npm run build/)
  })
})
