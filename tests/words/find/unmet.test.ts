import { describe, expect, it } from 'vitest'
import type { PlanWord, TaughtEntry } from '../../../src/plan/plan.js'
import { readTaught } from '../../../src/plan/settings/taught.js'
import { unmetIn } from '../../../src/words/find/unmet-in-words.js'
import { installedLexicon } from '../../../src/words/lexicon/lexicon.js'
import { patternNames } from '../../../src/words/patterns/index.js'

const place = { file: 'room-7.yaml' }
const wordOf = (text: string): PlanWord => ({ text, place, overrides: {} })

/** `vowel-team ee`: what a word shows that a class with this list has not met. */
function unmet(word: string, taught: string): readonly string[] {
  const list = readTaught({ kind: 'text', text: taught, place }, patternNames)
  if (!list.ok) throw new Error(taught)
  return unmetBy(list.value, wordOf(word))
}

function unmetBy(taught: readonly TaughtEntry[], word: PlanWord): readonly string[] {
  const found = unmetIn({ taught, words: [word], lexicon: installedLexicon(), ways: {} })
  if (!found.ok) throw new Error(word.text)
  return found.value.flatMap(({ pattern, words }) => words.map(({ letters }) => `${pattern} ${letters}`))
}

describe('what a class has not met', () => {
  it.each([
    ['a pattern that is not on the list', 'reed', 'short-vowel', ['vowel-team ee']],
    ['nothing where the pattern is', 'reed', 'vowel-team', []],
    ['nothing where its letters are', 'reed', 'ee', []],
    ['nothing where they stand with this sound in a word that is', 'rain', 'ai as in train', []],
    ['letters with another sound than the one on the list', 'head', 'ea as in sea', ['vowel-team ea']],
    ['a blend, although each of its consonants is known', 'frog', 'short-vowel', ['beginning-blend fr']],
    ['no blend that is on the list', 'frog', 'short-vowel, fr', []],
    ['an ending, although its letter is known', 'frogs', 'short-vowel, fr', ['ending-s s']],
    ['no plain consonant', 'cat', 'short-vowel', []],
    ['no kind of syllable and no whole word', 'sea', 'ea as in sea', []],
  ])('is %s: %s with %s', (_, word, taught, expected) => {
    expect(unmet(word, taught)).toEqual(expected)
  })

  it('holds to the teacher’s own division of a word', () => {
    const word = { ...wordOf('reed'), overrides: { notPatterns: [{ pattern: 'vowel-team' }] } }
    expect(unmetBy([], word).filter(pattern => pattern.startsWith('vowel-team'))).toEqual([])
  })
})
