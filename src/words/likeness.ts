/**
 * What makes one word like another for a word study:
 * 0. the same patterns and the same rime (spelled and said alike from the stressed vowel on): reed, seed
 * 1. the same patterns on the same letters: reed, keep
 * 2. the same rime, whatever stands before it: reed, greed
 * 3. the same patterns on other letters, with as many sounds: reed, boat
 * 4. the same patterns on other letters, with more or fewer sounds: reed, sea
 * All have as many syllables. Common practice, no source.
 */
import { isVowelSound } from './alignment/arpabet.js'
import type { Word } from './word.js'

export interface Likeness {
  /** 0 is nearest. */
  readonly rank: 0 | 1 | 2 | 3 | 4
  readonly why: string
}

/** Patterns that a teacher would not choose a word for; nearly every word shows some of them. */
const tellsLittle = new Set(['hard-c', 'hard-g', 'schwa', 'homophone', 'long-vowel'])

/** @returns undefined for a word that is not like the model in any of these ways */
export function likenessTo(model: Word): (word: Word) => Likeness | undefined {
  const names = profile(model, finding => finding.pattern)
  const spelled = profile(model, finding => `${finding.pattern} ${finding.letters}`)
  const rime = rimeOf(model)
  return word => {
    if (word.syllables.length !== model.syllables.length) return undefined
    const sameRime = rime !== undefined && rimeOf(word) === rime
    const samePatterns = names !== '' && profile(word, finding => finding.pattern) === names
    if (samePatterns && sameRime)
      return { rank: 0, why: `the same patterns, and it rhymes with ${model.text}` }
    if (samePatterns && profile(word, finding => `${finding.pattern} ${finding.letters}`) === spelled) {
      return { rank: 1, why: 'the same patterns on the same letters' }
    }
    if (sameRime) return { rank: 2, why: `rhymes with ${model.text} and is spelled like it` }
    if (!samePatterns) return undefined
    return word.soundCount === model.soundCount
      ? { rank: 3, why: 'the same patterns on other letters, and as many sounds' }
      : { rank: 4, why: 'the same patterns on other letters' }
  }
}

function profile(word: Word, describe: (finding: Word['patterns'][number]) => string): string {
  const telling = word.patterns.filter(finding => !tellsLittle.has(finding.pattern))
  return [...new Set(telling.map(describe))].toSorted().join(', ')
}

/** Letters and sounds from the last stressed vowel on: `ead EH D`. Undefined for a word with no vowel sound. */
function rimeOf(word: Word): string | undefined {
  const sounds = (word.pronunciations[0] ?? '').split(' ')
  const stressed = sounds.findLastIndex(sound => /[12]$/.test(sound))
  const from = stressed >= 0 ? stressed : sounds.findLastIndex(sound => /\d$/.test(sound))
  if (from < 0) return undefined
  let heard = 0
  for (const { start, sounds: own } of word.graphemes) {
    heard += own.length
    if (heard > from && own.some(isVowelSound)) {
      return `${word.text.slice(start).toLowerCase()} ${sounds.slice(from).join(' ').replace(/\d/g, '')}`
    }
  }
  return undefined
}
