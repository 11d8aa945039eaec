import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { soundsOf } from '../../../src/words/alignment/arpabet.js'
import { alignWord } from '../../../src/words/alignment/graphemes.js'
import { soundBytes } from '../../../src/words/lexicon/file-format.js'
import { openLexicon } from '../../../src/words/lexicon/lexicon.js'

const mostFamiliar = [...openLexicon().entries()]
  .filter(({ pronunciations }) => pronunciations.length > 0)
  .slice(0, 30_000)

describe('the 30,000 most familiar words', () => {
  const studied = mostFamiliar.map(({ word, pronunciations: [pronunciation = ''] }) => ({
    word,
    pronunciation,
    ...alignWord(word, pronunciation),
  }))

  test('graphemes cover the letters left to right without gap or overlap', () => {
    const broken = studied.filter(({ word, graphemes }) => !covers(word, graphemes))
    expect(broken.map(({ word }) => word)).toEqual([])
  })

  test('the sounds of the graphemes are the sounds of the pronunciation', () => {
    const broken = studied.filter(
      ({ pronunciation, graphemes }) =>
        graphemes.flatMap(grapheme => grapheme.sounds).join(' ') !== soundsOf(pronunciation).join(' '),
    )
    expect(broken.map(({ word }) => word)).toEqual([])
  })

  test('99 % are explained by the grapheme table; the others are called exceptions', () => {
    const unexplained = studied.filter(({ exceptions }) => exceptions.length > 0)
    expect(unexplained.length).toBeGreaterThan(0)
    expect(unexplained.length).toBeLessThan(studied.length * 0.01)
  })
})

describe('any run of letters with any sounds', () => {
  const text = fc.stringMatching(/^[A-Za-zéü]{1,12}(['-][a-z]{1,6})?'?$/)
  const sounds = fc.array(fc.constantFrom(...soundBytes), { maxLength: 20 })

  test('is covered, and no sound is lost', () => {
    fc.assert(
      fc.property(text, sounds, (word, said) => {
        const { graphemes } = alignWord(word, said.join(' '))
        expect(covers(word, graphemes)).toBe(true)
        expect(graphemes.flatMap(grapheme => grapheme.sounds)).toEqual(soundsOf(said.join(' ')))
      }),
    )
  })
})

function covers(word: string, graphemes: readonly { letters: string; start: number }[]): boolean {
  const ends = graphemes.map(({ letters, start }) => start + letters.length)
  return (
    graphemes.every(({ start }, index) => start === (index === 0 ? 0 : ends[index - 1])) &&
    ends.at(-1) === word.length &&
    graphemes.map(({ letters }) => letters).join('') === word
  )
}
