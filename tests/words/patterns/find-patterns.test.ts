import { describe, expect, it } from 'vitest'
import { findPattern, findPatterns } from '../../../src/words/patterns/find-patterns.js'
import { patternNames, patterns } from '../../../src/words/patterns/index.js'
import { placeOf } from '../../../src/words/patterns/spelled-sounds.js'
import { aligned, handAligned, readTable } from './hand-aligned.js'

/** The words with all that each shows, in order: word, pattern, letters, start, end, place. */
const expected = new Map<string, readonly string[]>()
for (const row of readTable('findings.tsv')) {
  expected.set(row[0]!, [...(expected.get(row[0]!) ?? []), row.join(' ')])
}

describe('the hand-aligned words', () => {
  it.each([...handAligned.keys()])('%s is covered by its graphemes, its sounds and its syllables', word => {
    const { text, graphemes, pronunciation, syllables } = aligned(word)
    expect(graphemes.map(grapheme => grapheme.letters).join('')).toBe(text)
    expect(syllables.join('')).toBe(text)
    expect(graphemes.flatMap(grapheme => grapheme.sounds).join(' ')).toBe(pronunciation.replace(/\d/g, ''))
  })
})

describe('what a word shows', () => {
  it.each([...expected.keys()])('%s', word => {
    const found = findPatterns(aligned(word)).map(({ pattern, letters, start, end, place }) =>
      [word, pattern, letters, start, end, place].join(' '),
    )
    expect(found).toEqual(expected.get(word))
  })

  it('shows in thread just what the contract shows', () => {
    expect(findPatterns(aligned('thread')).map(({ why, ...finding }) => finding)).toEqual([
      { pattern: 'digraph-blend', letters: 'thr', start: 0, end: 3, place: 'beginning' },
      { pattern: 'vowel-team', letters: 'ea', start: 3, end: 5, place: 'middle' },
    ])
  })

  it('keeps a capital as it stands', () => {
    const { text, graphemes, ...rest } = aligned('thread')
    const capital = {
      ...rest,
      text: 'Thread',
      graphemes: [{ ...graphemes[0]!, letters: 'Th' }, ...graphemes.slice(1)],
    }
    expect(text).toBe('thread')
    expect(findPatterns(capital)[0]).toMatchObject({ pattern: 'digraph-blend', letters: 'Thr' })
  })

  it('gives every finding its letters, its place and a reason', () => {
    for (const word of handAligned.values()) {
      for (const name of patternNames) {
        for (const { letters, start, end, place, why } of findPattern(name, word)) {
          const [first, last] = letters.split('_')
          if (last === undefined) expect(letters).toBe(word.text.slice(start, end))
          else expect(word.text.slice(start, end)).toMatch(new RegExp(`^${first}.+${last}$`))
          expect(place).toBe(placeOf(word.text, start, end))
          expect(why).not.toBe('')
        }
      }
    }
  })

  it('refuses a pattern that there is none of', () => {
    expect(() => findPattern('magic-q', aligned('quilt'))).toThrow('magic-q')
  })
})

describe('each pattern', () => {
  it.each(patterns.map(pattern => [pattern.name, pattern] as const))(
    '%s finds its own example',
    (name, pattern) => {
      const { word, letters } = pattern.example
      expect(pattern.find(aligned(word)).map(finding => [finding.pattern, finding.letters])).toContainEqual([
        name,
        letters,
      ])
    },
  )

  it.each(patterns.map(pattern => [pattern.name, pattern] as const))(
    '%s finds nothing to the point in its counter-example',
    (_, pattern) => {
      const { word, letters } = pattern.counterExample
      const found = pattern.find(aligned(word)).map(finding => finding.letters)
      expect(letters === undefined ? found : found.filter(other => other === letters)).toEqual([])
    },
  )

  it('is found only in words that have the letters it is spelled with', () => {
    for (const { name, find, spelledWith } of patterns) {
      if (spelledWith === undefined) continue
      const without = [...handAligned.values()].filter(({ text }) => !spelledWith.test(text))
      expect([name, ...without.filter(word => find(word).length > 0).map(({ text }) => text)]).toEqual([name])
    }
  })

  it('has a name of its own and one line to say what it is', () => {
    expect(new Set(patternNames).size).toBe(patterns.length)
    for (const { definition, condition, source } of patterns) {
      expect(definition).not.toContain('\n')
      expect(definition.length).toBeLessThanOrEqual(110)
      expect(condition).not.toBe('')
      expect(source).not.toBe('')
    }
  })

  it('is named as the trade names it', () => {
    const trade = `consonant-digraph trigraph beginning-blend ending-blend three-letter-blend digraph-blend silent-letters
      double-consonant short-vowel long-vowel silent-e vowel-team diphthong r-controlled consonant-le soft-c soft-g
      y-as-vowel schwa`
    expect(patternNames).toEqual(expect.arrayContaining(trade.split(/\s+/)))
  })
})
