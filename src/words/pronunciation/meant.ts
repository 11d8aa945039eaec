/** Which of several words that are spelled alike is meant: the first of the table, or the one that the teacher names. */
import type { PlanWord } from '../../plan/plan.js'
import { foldName } from '../../plan/values/fold-name.js'
import { inWords } from '../../plan/values/in-words.js'
import { errorAt, type Problem } from '../../problems.js'
import type { LexiconEntry } from '../lexicon/entry.js'
import { heteronyms, type Use } from './listed-pronunciations.js'

/** Two or more of a word that is said in different ways, each its own word; else none. */
export function usesOf(entry: LexiconEntry | undefined): readonly Use[] {
  return entry?.heteronym === true ? (heteronyms().get(entry.word) ?? []) : []
}

/** Undefined where she names none of them. */
export function meantUse(entry: LexiconEntry | undefined, meant: string | undefined): Use | undefined {
  if (meant === undefined) return undefined
  return usesOf(entry).find(({ meaning }) => foldName(meaning) === foldName(meant))
}

/** The word with the pronunciation of the one that is meant before its others. */
export function asMeant(
  entry: LexiconEntry | undefined,
  meant: string | undefined,
): LexiconEntry | undefined {
  const use = meantUse(entry, meant)
  if (entry === undefined || use === undefined) return entry
  const others = entry.pronunciations.filter(each => each !== use.pronunciation)
  return { ...entry, pronunciations: [use.pronunciation, ...others] }
}

/** An error where there is nothing to choose, or she names none of those that there are. */
export function meantProblems(
  { text, place, overrides: { meant }, overridePlaces = {} }: PlanWord,
  entry: LexiconEntry | undefined,
): readonly Problem[] {
  if (meant === undefined || meantUse(entry, meant) !== undefined) return []
  const at = overridePlaces.meant ?? place
  const meanings = usesOf(entry).map(({ meaning }) => `"${meaning}"`)
  return meanings.length === 0
    ? [
        errorAt(
          at,
          `"${text}" is not told apart from another word spelled alike`,
          'Take meant: out; for how it sounds write sounds:.',
        ),
      ]
    : [errorAt(at, `"${meant}" is no meaning of "${text}" that is told apart`, `Write ${inWords(meanings)}.`)]
}
