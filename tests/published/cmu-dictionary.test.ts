/** The CMU Pronouncing Dictionary (Carnegie Mellon University), read from its own package, not from our lexicon. */
import { dictionary } from 'cmu-pronouncing-dictionary'
import { describe, expect, test } from 'vitest'
import { openLexicon } from '../../src/words/lexicon/lexicon.js'
import { corrections } from '../../src/words/pronunciation/corrections.js'

const familiar = [...openLexicon().entries()]
  .filter(({ pronunciations, familiarity }) => pronunciations.length > 0 && familiarity > 0)
  .slice(0, 30_000)

function entriesOf(word: string): readonly string[] {
  const keys = [word, `${word}(2)`, `${word}(3)`, `${word}(4)`]
  return keys.flatMap(key => dictionary[key] ?? []).map(entry => entry.replace(/\s*#.*/, ''))
}

describe("pronunciations against the dictionary's own entries, 30,000 most familiar words", () => {
  test('each is one of the entries, the corrected slips and the quarrel called a row apart', () => {
    const strange = familiar.flatMap(({ word, pronunciations }) => {
      const entries = entriesOf(word)
      return pronunciations.every(pronunciation => entries.includes(pronunciation)) ? [] : [word]
    })
    expect(strange.filter(word => !corrections.has(word))).toEqual(['row'])
  })

  test('none of the entries is lost', () => {
    const lost = familiar.filter(
      ({ word, pronunciations }) =>
        !corrections.has(word) && !entriesOf(word).every(entry => pronunciations.includes(entry)),
    )
    expect(lost.map(({ word }) => word)).toEqual([])
  })

  test('each correction differs from every entry', () => {
    const needless = [...corrections].filter(([word, pronunciation]) =>
      entriesOf(word).includes(pronunciation),
    )
    expect(needless).toEqual([])
  })
})
