/**
 * What makes one word like another for a word study:
 * 0. the same patterns and the same rime (spelled and said alike from the stressed vowel on): reed, seed
 * 1. the same patterns on the same letters: reed, keep
 * 2. the same rime, whatever stands before it: reed, greed
 * 3. the same patterns on other letters, with as many sounds: reed, boat
 * 4. the same patterns on other letters, with more or fewer sounds: reed, sea
 * All have as many syllables. Common practice, no source.
 */
import { isVowelSound, soundsOf } from './alignment/arpabet.js'
import { patternNamed } from './patterns/index.js'
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
    const sameRime = rime !== undefined && sharesRime(word, rime)
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

/**
 * A quick look at spelling and sounds before a word is studied: whether it may have as many syllables as the model,
 * and either its rime or its patterns. Never false for a word that is like it.
 */
export function mayBeLike(model: Word): (text: string, pronunciation: string) => boolean {
  const syllables = model.syllables.length
  const rime = rimeOf(model)?.letters
  const spellings = model.patterns
    .filter(finding => !tellsLittle.has(finding.pattern))
    .flatMap(finding => patternNamed(finding.pattern)?.spelledWith ?? [])
  return (text, pronunciation) => {
    const vowels = pronunciation.match(/\d/g)?.length ?? 0
    // fire and hour may be said with two vowel sounds and are one syllable on paper.
    if (vowels !== syllables && !(vowels > syllables && /Y\d ER|W\d ER/.test(pronunciation))) return false
    return (rime !== undefined && text.endsWith(rime)) || spellings.every(spelling => spelling.test(text))
  }
}

function profile(word: Word, describe: (finding: Word['patterns'][number]) => string): string {
  const telling = word.patterns.filter(finding => !tellsLittle.has(finding.pattern))
  return [...new Set(telling.map(describe))].toSorted().join(', ')
}

interface Rime {
  /** Lower case. */
  readonly letters: string
  /** ARPABET without stress. */
  readonly sounds: string
}

function sharesRime(word: Word, { letters, sounds }: Rime): boolean {
  const own = rimeOf(word)
  return own?.letters === letters && own.sounds === sounds
}

/** From the last stressed vowel on: `ead`, `EH D`. Undefined for a word with no vowel sound. */
function rimeOf(word: Word): Rime | undefined {
  const sounds = (word.pronunciations[0] ?? '').split(' ')
  const stressed = sounds.findLastIndex(sound => /[12]$/.test(sound))
  const from = stressed >= 0 ? stressed : sounds.findLastIndex(sound => /\d$/.test(sound))
  if (from < 0) return undefined
  let heard = 0
  for (const { start, sounds: own } of word.graphemes) {
    heard += own.length
    if (heard > from && own.some(isVowelSound)) {
      return {
        letters: word.text.slice(start).toLowerCase(),
        sounds: soundsOf(sounds.slice(from).join(' ')).join(' '),
      }
    }
  }
  return undefined
}
