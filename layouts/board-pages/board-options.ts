/** What a teacher may choose of her pages for the board. */
import { choice, option, yesNo } from '../../src/plan/values/options.js'
import type { RequestWith } from '../layout.js'

export const boardOptions = {
  patterns: option('pages for each mark of the plan: the words that show it bare, then marked', yesNo(true)),
  'each word': option(
    'how a word that stands alone is shown: bare, then one sound after another, then its marks; or all its sounds at once; or sounds and marks in one step; or not at all',
    choice(['sound by sound', 'sounds then marks', 'in one step', 'none'], undefined, { no: 'none' }),
    {
      example: 'sounds then marks',
      usual: 'sound by sound; in one step for more than 12 words',
    },
  ),
  sounds: option(
    'signs under a word that stands alone, one for each sound',
    choice(['boxes', 'bars', 'dots', 'none'], 'boxes', { no: 'none' }),
  ),
  'parts of speech': option('pages that sort the words by what they most often are', yesNo(true)),
  plurals: option('pages with one and more than one, and the rule', yesNo(true)),
}

export type BoardRequest = RequestWith<typeof boardOptions>

/** So many words sound by sound are a lesson; more are better shown in two steps (our own judgement, no source). */
const MOST_SOUND_BY_SOUND = 12

type StepsOfWord = NonNullable<BoardRequest['options']['each word']>

export function stepsOfWord({ options, words }: BoardRequest): StepsOfWord {
  return options['each word'] ?? (words.length > MOST_SOUND_BY_SOUND ? 'in one step' : 'sound by sound')
}
