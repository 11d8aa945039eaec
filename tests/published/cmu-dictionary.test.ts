/** The CMU Pronouncing Dictionary (Carnegie Mellon University), read from its own package, not from our lexicon. */
import { dictionary } from 'cmu-pronouncing-dictionary'
import { afterAll, describe, expect, test } from 'vitest'
import { openLexicon } from '../../src/words/lexicon/lexicon.js'
import { addedPronunciations, corrections } from '../../src/words/pronunciation/listed-pronunciations.js'
import { inOneWriting } from '../../src/words/pronunciation/one-writing.js'

const familiar = [...openLexicon().entries()]
  .filter(
    ({ word, pronunciations, familiarity }) =>
      pronunciations.length > 0 && familiarity > 0 && !addedPronunciations().has(word),
  )
  .slice(0, 30_000)

function entriesOf(word: string): readonly string[] {
  const keys = [word, `${word}(2)`, `${word}(3)`, `${word}(4)`]
  return keys.flatMap(key => dictionary[key] ?? []).map(entry => entry.replace(/\s*#.*/, ''))
}

/** Ours and the dictionary's own are mostly the same, and each is asked for twice. */
const levelledBefore = new Map<string, string>()
afterAll(() => levelledBefore.clear())

function levelled(word: string, entry: string): string {
  const key = `${word} ${entry}`
  const known = levelledBefore.get(key) ?? level(word, entry)
  levelledBefore.set(key, known)
  return known
}

/**
 * In one writing, and without what a word may take from its base or its halves: weak vowels, the short u of a second half,
 * AA for AO, EH for AE and IH for IY before R, a weak re-, and an ending that is S or Z as the sound before it asks.
 */
function level(word: string, entry: string): string {
  return inOneWriting(word, entry)
    .replace(/AO(?=\d)/g, 'AA')
    .replace(/AE(?=\d R)/g, 'EH')
    .replace(/IY(?=[12] R)/g, 'IH')
    .replace(/\bAH2/g, 'AH0')
    .replace(/\b(?:IH|IY|EH|AE|AH)\d/g, vowel => (vowel.endsWith('0') ? 'AH0' : vowel))
    .replace(/^((?:R|P R|D|B|S) )?IY2/, '$1AH0')
    .replace(/\bZ$/, word.endsWith('s') ? 'S' : 'Z')
    .replace(/(?<=[A-Z])[12]/g, '')
}

describe("pronunciations against the dictionary's own entries, 30,000 most familiar words", () => {
  test('each is one of the entries, the corrected slips and the quarrel called a row apart', () => {
    const strange = familiar.flatMap(({ word, pronunciations }) => {
      const entries = entriesOf(word).map(entry => levelled(word, entry))
      return pronunciations.every(said => entries.includes(levelled(word, said))) ? [] : [word]
    })
    expect(strange.filter(word => !corrections().has(word))).toEqual(['row'])
  })

  test('all but few are entries sound for sound, weak vowels apart', () => {
    const withoutWeak = (said: string) => said.replace(/\b(?:AH|IH|IY|EH)0/g, 'AH0')
    const same = familiar.filter(({ word, pronunciations: [first = ''] }) =>
      entriesOf(word).map(withoutWeak).includes(withoutWeak(first)),
    )
    expect(same.length / familiar.length).toBeGreaterThan(0.97)
  })

  test('none of the entries is lost', () => {
    const lost = familiar.filter(({ word, pronunciations }) => {
      const known = pronunciations.map(said => levelled(word, said))
      return (
        !corrections().has(word) && !entriesOf(word).every(entry => known.includes(levelled(word, entry)))
      )
    })
    expect(lost.map(({ word }) => word)).toEqual([])
  })

  test('each added word is missing there', () => {
    expect([...addedPronunciations().keys()].filter(word => entriesOf(word).length > 0)).toEqual([])
  })

  test('each correction differs from every entry', () => {
    const needless = [...corrections()].filter(([word, pronunciation]) =>
      entriesOf(word).includes(pronunciation),
    )
    expect(needless).toEqual([])
  })
})
