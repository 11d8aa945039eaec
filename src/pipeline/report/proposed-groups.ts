/** The lists that a plan's `spread:` asks for: familiar words that show a pattern, from short to long. */
import { andThen, succeed } from '../../outcomes.js'
import type { Plan, SpreadWish } from '../../plan/plan.js'
import { type Outcome, type Problem, warningAt } from '../../problems.js'
import type { GradedWord } from '../../words/find/graded-lists.js'
import type { OfferedWord } from '../../words/find/offered-word.js'

/** A list with the name that it may have in the plan. */
export interface ProposedGroup {
  readonly name: string
  readonly words: readonly GradedWord[]
}

/** Lists are drawn from so many times as many words: with fewer they are too much alike. */
const DRAWN_FROM = 4

/** None where the plan does not ask; where the class file says what is taught, of words that the class can read. */
export async function proposedGroups(plan: Plan): Promise<Outcome<readonly ProposedGroup[]>> {
  const { spread, taught, marks, groups } = plan
  if (spread === undefined) return succeed([])
  const { pattern, lists, words: count, place } = spread
  // What finds words is loaded only for a plan that asks for some.
  const [
    { gradedLists },
    { findWords },
    { openOfferedWords },
    { readableWords, thisWeeks },
    { installedLexicon },
  ] = await Promise.all([
    import('../../words/find/graded-lists.js'),
    import('../../words/find/find-words.js'),
    import('../../words/find/offered-file.js'),
    import('../../words/find/taught.js'),
    import('../../words/lexicon/lexicon.js'),
  ])
  const lexicon = installedLexicon()
  const met = taught && [
    ...taught,
    ...thisWeeks(marks, lexicon),
    { kind: 'pattern', pattern, place } as const,
  ]
  const readable = met === undefined ? succeed(undefined) : readableWords(met, lexicon)
  return andThen(readable, canRead => {
    const query = {
      patterns: [pattern],
      count: lists * count * DRAWN_FROM,
      ...(canRead === undefined ? {} : { readable: canRead }),
    }
    const found = findWords(query, openOfferedWords()).map(({ word }) => gradedOf(word))
    const graded = gradedLists(found, { lists, count })
    const isShort = graded.some(list => list.length < count)
    const short = isShort ? [tooFew(spread, found.length)] : []
    if (graded.some(list => list.length === 0)) return succeed([], short)
    const names = groups.length === lists ? groups.map(({ name }) => name) : undefined
    const named = graded.map((words, index) => ({ name: names?.[index] ?? `group ${index + 1}`, words }))
    return succeed(named, short)
  })
}

function tooFew({ pattern, lists, words, place }: SpreadWish, found: number): Problem {
  return warningAt(
    place,
    `too few familiar words show ${pattern} for ${lists} lists of ${words}: there are ${found}`,
    'Ask for fewer or shorter lists, or add to what the class file says is taught.',
  )
}

function gradedOf({ text, soundCount, sortable: { syllables } }: OfferedWord): GradedWord {
  return { text, soundCount, syllables }
}
