/** Whether an adjective is compared by -er and -est in use: next and main have the length for it, and are not. */
import { lazily } from '../../lazily.js'
import type { LexiconEntry } from '../lexicon/entry.js'
import { rowsOf, wordsOf } from '../tables/installed-tables.js'

const notCompared = lazily(() => new Set(wordsOf('endings/not-compared')))

const irregular = lazily(() => rowsOf('endings/irregular-comparing'))

export interface ComparedForms {
  /** Lower case. */
  readonly word: string
  readonly er: string
  readonly est: string
}

type LookUp = (word: string) => Pick<LexiconEntry, 'familiarity' | 'partsOfSpeech'> | undefined

/**
 * Irregular ones are; better and worst, which are such forms, are not. Of the rest every adjective in -y is, if not in
 * -ly (muddy, but not daily); else one that is heard so: both forms known, or one of them and the word an adjective
 * before all else. Common practice, no source; heard in SUBTLEX-US.
 */
export function isCompared({ word, er, est }: ComparedForms, lookUp: LookUp): boolean {
  if (irregular().some(([base]) => base === word)) return true
  if (notCompared().has(word) || irregular().some(forms => forms.includes(word))) return false
  const isAdjectiveFirst = lookUp(word)?.partsOfSpeech[0] === 'adjective'
  if (isAdjectiveFirst && /[^aeiou]y$/.test(word) && !/[^l]ly$/.test(word)) return true
  const known = [er, est].filter(form => isComparing(lookUp(form)))
  return known.length === 2 || (known.length === 1 && isAdjectiveFirst)
}

/** Heard, and a form of an adjective or adverb: owner is neither, and number is another word than numb with an ending. */
function isComparing(entry: ReturnType<LookUp>): boolean {
  if (entry === undefined || entry.familiarity === 0) return false
  return entry.partsOfSpeech.some(part => part === 'adjective' || part === 'adverb')
}
