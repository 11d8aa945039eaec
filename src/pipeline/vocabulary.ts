import { faultOfFont } from '../../fonts/load-typeface.js'
import type { Vocabulary } from '../plan/vocabulary.js'
import { vocabularyOfNames } from './vocabulary-of-names.js'

/** Every name that a plan may use, and what is wrong with a font of the teacher's own: all that reading a plan needs. */
export function planVocabulary(): Vocabulary {
  return { ...vocabularyOfNames(), faultOfFont }
}
