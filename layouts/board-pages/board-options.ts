/** What a teacher may choose of her pages for the board. */
import { choice, option, yesNo } from '../../src/plan/values/options.js'
import type { RequestWith } from '../layout.js'

export const boardOptions = {
  patterns: option('pages for each mark of the plan: the words that show it bare, then marked', yesNo(true)),
  'each word': option(
    'how a word that stands alone is shown: bare, then its sounds, then its marks; or bare, then both; or not at all',
    choice(['sounds then marks', 'in one step', 'none'], undefined, { no: 'none' }),
    {
      example: 'in one step',
      usual: 'sounds then marks; in one step for more than 12 words',
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

/** So many words one by one in three steps are a lesson; more are better shown in two (our own judgement, no source). */
const MOST_IN_THREE_STEPS = 12

export function stepsOfWord({ options, words }: BoardRequest): 'sounds then marks' | 'in one step' | 'none' {
  return options['each word'] ?? (words.length > MOST_IN_THREE_STEPS ? 'in one step' : 'sounds then marks')
}
