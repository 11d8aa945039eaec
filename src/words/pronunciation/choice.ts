/** Why a word's first pronunciation is the one taken, in plain words for the teacher. */
import { alignWord } from '../alignment/graphemes.js'
import { corrections, firstPronunciations, heteronyms } from './listed-pronunciations.js'
import { inOneWriting } from './one-writing.js'
import { preferences, type Variant } from './preferences.js'

/**
 * @param word lower case, as the lexicon has it
 * @param pronunciations ARPABET with stress, the one taken first
 */
export function whyTaken(word: string, pronunciations: readonly string[]): string {
  const [first = '', second] = pronunciations
  if (corrections().has(word)) return "the dictionary's entry is a slip and is mended here"
  if (heteronyms().has(word))
    return 'spelled alike and said in different ways: the commoner in speech to children'
  if (firstPronunciations().has(word)) return "chosen by hand among the dictionary's"
  // One way of saying it needs no reason.
  if (second === undefined) return ''
  if (inOneWriting(word, second) === first)
    return `the dictionary's /${second}/, written as in words that rhyme with it`
  const reasons = offences(word, second).filter(reason => !offences(word, first).includes(reason))
  if (reasons.length === 0) return `the dictionary has it before /${second}/`
  return `taken before /${second}/: ${reasons.join('; ')}`
}

function offences(word: string, pronunciation: string): readonly string[] {
  const { graphemes, exceptions } = alignWord(word, pronunciation)
  const variant: Variant = { word, sounds: pronunciation.split(' '), graphemes, exceptions }
  return preferences.filter(({ against }) => against(variant) > 0).map(({ name }) => name)
}
