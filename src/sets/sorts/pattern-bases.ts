import { plainName } from '../../words/patterns/plain-name.js'
/** Sorts by a pattern of the words: which letters, where they stand, how they sound, whether the word has it at all. */
import type { Finding, Word } from '../../words/word.js'
import { type BasisFamily, distinct, findingsOf, patternsIn, type SortBasis } from './sort-basis.js'

export const whichLetters: BasisFamily = words =>
  patternsIn(words).map(pattern => ({
    name: `which ${plainName(pattern)}`,
    basis: `which letters make the ${plainName(pattern)}`,
    sharpness: 1,
    titlesFor: word => distinct(findingsOf(word, pattern).map(finding => titleOf(finding))),
    noneBecause: () => `has no ${plainName(pattern)}`,
    noneTitle: `no ${plainName(pattern)}`,
  }))

export const whereItStands: BasisFamily = words =>
  patternsIn(words).map(pattern => ({
    name: `where the ${plainName(pattern)} stands`,
    basis: `where in the word the ${plainName(pattern)} stands`,
    sharpness: 0.85,
    titlesFor: word => distinct(findingsOf(word, pattern).map(finding => finding.place)),
    noneBecause: () => `has no ${plainName(pattern)}`,
    order: ['beginning', 'middle', 'end', 'whole'],
  }))

/** The columns hold one pattern's letters with different sounds, as hard and soft, or the three sounds of ed. */
export const howLettersSound: BasisFamily = words =>
  patternsIn(words).flatMap(pattern =>
    distinct(
      words.flatMap(word => findingsOf(word, pattern).map(finding => finding.letters.toLowerCase())),
    ).map(letters => soundOfLetters(words, pattern, letters)),
  )

export const hasPattern: BasisFamily = words =>
  patternsIn(words).map(pattern => ({
    name: `${plainName(pattern)} or none`,
    basis: `${plainName(pattern)} or none`,
    sharpness: 0.67,
    titlesFor: word => (findingsOf(word, pattern).length > 0 ? [plainName(pattern)] : []),
    noneBecause: () => `has no ${plainName(pattern)}`,
    noneTitle: `no ${plainName(pattern)}`,
  }))

/** The letters; a lone vowel letter with its length, `short i`; a part of a word with the side that it joins, `-es`, `un-`. */
function titleOf({ pattern, letters }: Finding): string {
  const title = letters.toLowerCase()
  const length = /^(short|long)-vowel$/.exec(pattern)?.[1]
  if (length !== undefined) return `${length} ${title}`
  if (pattern === 'prefix') return `${title}-`
  return pattern === 'suffix' || pattern.startsWith('ending-') ? `-${title}` : title
}

function soundOfLetters(words: readonly Word[], pattern: string, letters: string): SortBasis {
  const soundsIn = (word: Word): readonly string[] =>
    distinct(
      findingsOf(word, pattern)
        .filter(finding => finding.letters.toLowerCase() === letters)
        .map(finding => soundsUnder(word, finding)),
    )
  const titles = new Map<string, string>()
  for (const word of words) {
    const [sounds, another] = soundsIn(word)
    if (sounds !== undefined && another === undefined && !titles.has(sounds)) {
      titles.set(sounds, `${letters} as in ${word.text}`)
    }
  }
  return {
    name: `how ${letters} sounds (${plainName(pattern)})`,
    basis: `how the letters ${letters} sound`,
    sharpness: 1,
    titlesFor: word => soundsIn(word).map(sounds => titles.get(sounds) ?? sounds),
    noneBecause: () => `has no ${plainName(pattern)} ${letters}`,
  }
}

/**
 * The sounds of all graphemes that begin within the finding. In an ending the weak vowel counts as one, for the
 * dictionary writes it now AH, now IH (kneaded, melted).
 */
function soundsUnder(word: Word, { pattern, start, end }: Finding): string {
  const sounds = word.graphemes
    .filter(grapheme => grapheme.start >= start && grapheme.start < end)
    .flatMap(grapheme => grapheme.sounds)
  return sounds.map(sound => (sound === 'AH' && pattern.startsWith('ending-') ? 'IH' : sound)).join(' ')
}
