import type { CluesFrom } from '../plan.js'
import { choiceReader } from '../values/names.js'

/** Where a word has no clue of the teacher's own. */
export const readCluesFrom = choiceReader<CluesFrom>('a source of clues', ['own', 'drafts'], {
  none: 'own',
  draft: 'drafts',
})
