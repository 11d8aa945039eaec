/** What a teacher may choose of a page of practice. */
import { choice, option, wholeNumber, yesNo } from '../../src/plan/values/options.js'
import type { RequestWith } from '../layout.js'

export const practiceOptions = {
  practise: option(
    'what the children practise',
    choice(['plurals', 'endings', 'parts of speech', 'clues', 'sounds', 'marks', 'copy'], 'copy'),
    { example: 'plurals' },
  ),
  prompts: option(
    'how many words stand on a page at most; a longer list takes several pages',
    wholeNumber(4, 20, 14),
  ),
  sorted: option(
    'whether plurals and endings stand under the name of their rule; else in the order of the list',
    yesNo(true),
  ),
  'add words': option(
    'when nouns that are not on the list are added to a page of plurals',
    choice(['too few', 'every rule', 'nothing'], 'too few', { no: 'nothing' }),
  ),
  bank: option('whether the words to choose from stand over the clues', yesNo(true)),
}

export type PracticeRequest = RequestWith<typeof practiceOptions>
