import type { Word } from '../../words/word.js'
import type { StyledMark } from './styled-mark.js'
import { showsFeature } from './word-features.js'

/** Words that a mark on a part of speech passes over, because they most often are another, although they can be it too. */
export function canBeToo(words: readonly Word[], { mark: { target } }: StyledMark): readonly string[] {
  if (target.kind !== 'word' || target.feature !== 'part of speech') return []
  const passed = words.filter(
    word => !showsFeature(word, target) && word.partsOfSpeech.some(part => part === target.value),
  )
  return [...new Set(passed.map(({ text }) => text))]
}

export const howToMarkBoth =
  'A word is marked as what it most often is; to mark it as both, write its parts of speech with the word, for example "part of speech: [noun, verb]".'

/** What a teacher should know of marks on parts of speech, in plain sentences; undefined where there is nothing to tell. */
export function canBeTooNote(words: readonly Word[], marks: readonly StyledMark[]): string | undefined {
  const told = marks.flatMap(mark => {
    const { target } = mark.mark
    const passed = canBeToo(words, mark)
    return passed.length === 0 || target.kind !== 'word'
      ? []
      : [`Not marked as ${target.value}, though each can be one: ${passed.join(', ')}.`]
  })
  return told.length === 0 ? undefined : [...told, howToMarkBoth].join(' ')
}
