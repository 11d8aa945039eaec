/** Letters that a contraction leaves out, and letters that say nothing, make no pattern that they are not part of. */
import { describe, expect, test } from 'vitest'
import { alignWord } from '../../../src/words/alignment/graphemes.js'
import { findPattern } from '../../../src/words/patterns/find-patterns.js'
import type { StudiedLetters } from '../../../src/words/patterns/pattern.js'
import { findingsOf } from '../word-parts/word-parts.js'

function shown(word: string): readonly string[] {
  return findingsOf(word).map(({ pattern, letters }) => `${pattern} ${letters}`)
}

describe('contractions', () => {
  test.each([
    ["we've", 'silent-e e_e'],
    ["they're", 'silent-e e'],
    ["we'll", 'double-consonant ll'],
  ])('%s has no %s', (word, finding) => {
    expect(shown(word)).not.toContain(finding)
    expect(shown(word).some(found => found.startsWith('contraction'))).toBe(true)
  })

  test("the e of aren't goes with its r", () => expect(shown("aren't")).toContain('r-controlled are'))
})

describe('letters that say nothing', () => {
  test('the first syllable of island is open: its s is silent', () => {
    const island: StudiedLetters = {
      text: 'island',
      pronunciation: 'AY1 L AH0 N D',
      graphemes: alignWord('island', 'AY1 L AH0 N D').graphemes,
      syllables: ['is', 'land'],
    }
    expect(findPattern('open-syllable', island).map(({ letters }) => letters)).toEqual(['is'])
    expect(findPattern('closed-syllable', island).map(({ letters }) => letters)).toEqual(['land'])
  })

  test('ire keeps its r where -ed has taken its e', () => {
    expect(shown('tired')).toContain('r-controlled ire')
  })

  test('the e of dyeing belongs to dye', () => {
    expect(shown('dyeing').filter(found => found.startsWith('vowel-team'))).toEqual([])
  })
})
