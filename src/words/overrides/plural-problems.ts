/** What is said of a plural that the teacher gives. */
import { errorAt, type Place, type Problem, warningAt } from '../../problems.js'
import type { Plural } from '../word.js'

export interface PluralOverride {
  readonly text: string
  readonly place: Place
  /** Hers. */
  readonly form: string
  /** As the tool would form it, were the word a noun. */
  readonly ours: Plural
  /** By a dictionary or by the teacher; or nobody knows. */
  readonly isNoun: boolean | undefined
  /** Whether a dictionary has the form. */
  readonly isWord: (form: string) => boolean
}

export function pluralProblems({
  text,
  place,
  form,
  ours,
  isNoun,
  isWord,
}: PluralOverride): readonly Problem[] {
  const forms = [ours.form, ...(ours.alternatives ?? [])]
  const lower = form.toLowerCase()
  if (isNoun === false) {
    const advice = `Take the plural out, or add part of speech: noun, if your class uses "${text}" as one.`
    return isWord(lower)
      ? [warningAt(place, `"${text}" has a plural here, and is no noun in the dictionary`, advice)]
      : [errorAt(place, `"${form}" is no form of "${text}", which is no noun in the dictionary`, advice)]
  }
  if (forms.some(other => other.toLowerCase() === lower)) return []
  const advice = `The dictionary's plural is ${forms.join(' or ')}.`
  // However irregular, a plural begins as its word does: foot, feet; ox, oxen. Person and people are in the tables.
  if (lower[0] !== text[0]!.toLowerCase()) {
    return [errorAt(place, `"${form}" is no form that "${text}" could have`, advice)]
  }
  return [warningAt(place, `"${form}" is an unusual plural of "${text}"`, advice)]
}
