import { fail, failWith, present, succeed } from '../outcomes.js'
import { disk } from '../plan/disk/disk.js'
import type { TaughtEntry } from '../plan/plan.js'
import { nearestAdvice } from '../plan/values/nearest.js'
import { typedWordList } from '../plan/words/typed-words.js'
import { errorAt, type Outcome } from '../problems.js'
import { type FindQuery, type FoundWord, findWords } from '../words/find/find-words.js'
import type { Level } from '../words/find/levels.js'
import type { PlanLikeness } from '../words/find/like-plan.js'
import { openOfferedWords } from '../words/find/offered-file.js'
import { type OfferedWord, offeredWord } from '../words/find/offered-word.js'
import { reasonsFor } from '../words/find/reasons.js'
import type { PlaceWished } from '../words/find/spelled.js'
import { type WayOut, waysOut } from '../words/find/ways-out.js'
import type { Lexicon } from '../words/lexicon/entry.js'
import { installedLexicon } from '../words/lexicon/lexicon.js'
import { patternNames } from '../words/patterns/index.js'
import { type ClassWays, studyWord } from '../words/study.js'
import { tradeWords } from '../words/trade-words/trade-words.js'
import type { Word } from '../words/word.js'

/** What the words are to be like; what is left out does not matter. */
export interface FindWishes {
  /** Names as `oaktag list patterns` has them; a word shows all of them. */
  readonly patterns?: readonly string[] | undefined
  /** As spelled; a low line stands for one letter or team between. */
  readonly letters?: string | undefined
  readonly place?: PlaceWished | undefined
  readonly sounds?: number | undefined
  readonly syllables?: number | undefined
  readonly level?: Level | undefined
  /** A word whose vowel spelling and frame come first. */
  readonly like?: string | undefined
  /** Path of a list, or of a class file, of what has been taught. */
  readonly taught?: string | undefined
  /** Path of a plan whose patterns and level they match. */
  readonly for?: string | undefined
  readonly count: number
}

/** A word that was found. */
export interface ShownWord {
  readonly word: Word
  /** A few words beside it: the letters that show the pattern, how it is like the word asked for. */
  readonly remark: string
  /** Which rule fired. */
  readonly why: string
}

export interface Findings {
  /** The most familiar first, nothing unfit for children. */
  readonly words: readonly ShownWord[]
  /** Where there are none: which wish to leave out or change, and how many words fit then. */
  readonly waysOut: readonly WayOut[]
  /** Whether they are held to what the plan's class file says is taught. */
  readonly byClassFile: boolean
}

/** Familiar words that fit all wishes, as `oaktag find` finds them. */
export async function find(wishes: FindWishes): Promise<Outcome<Findings>> {
  const lexicon = installedLexicon()
  const like = wishes.like === undefined ? succeed(undefined) : modelWord(wishes.like, lexicon)
  const plan = wishes.for === undefined ? succeed(undefined) : await planToMatch(wishes.for, wishes, lexicon)
  const taught = await taughtSoFar(wishes.taught, plan.ok ? plan.value : undefined)
  const readable = taught.ok ? await readableBy(taught.value, lexicon) : taught
  if (!like.ok || !plan.ok || !readable.ok)
    return failWith([like, plan, readable].flatMap(outcome => (outcome.ok ? [] : outcome.problems)))
  const { patterns = [], place, sounds, syllables, level, count } = wishes
  const query: FindQuery = {
    count,
    ...(patterns.length === 0 ? {} : { patterns }),
    ...present({
      letters: wishes.letters?.toLowerCase(),
      place,
      sounds,
      syllables,
      level,
      like: like.value,
      readable: readable.value,
      goesWith: plan.value?.likeness,
    }),
  }
  const offered = openOfferedWords()
  const found = findWords(query, offered)
  return succeed({
    words: found.flatMap(each => showWord(each, query, { lexicon, ways: plan.value?.ways })),
    waysOut: found.length === 0 ? waysOut(query, offered) : [],
    byClassFile: wishes.taught === undefined && plan.value?.taught !== undefined,
  })
}

/** The word is studied anew, as the class of the plan says it, for all that is told of it. */
function showWord(
  { word, likeness }: FoundWord,
  query: FindQuery,
  { lexicon, ways = {} }: { readonly lexicon: Lexicon; readonly ways: ClassWays | undefined },
): readonly ShownWord[] {
  const studied = studyWord({ text: word.text, place: { file: 'lexicon' }, overrides: {} }, lexicon, ways)
  if (!studied.ok) return []
  const reasons = reasonsFor(studied.value, query)
  const shows = reasons.map(({ pattern, letters }) =>
    reasons.length > 1 ? `${pattern} ${letters}` : letters,
  )
  return [
    {
      word: studied.value,
      remark: likeness === '' ? shows.join(', ') : likeness,
      why: likeness === '' ? reasons.map(({ why }) => why).join('; ') : likeness,
    },
  ]
}

function modelWord(text: string, lexicon: Lexicon): Outcome<OfferedWord> {
  const read = typedWordList({ words: [text], files: disk, patterns: patternNames })
  if (!read.ok) return read
  const studied = studyWord(read.value[0]!, lexicon)
  return studied.ok ? succeed(offeredWord(studied.value, 0)) : studied
}

interface MatchedPlan {
  readonly likeness: PlanLikeness
  readonly ways: ClassWays
  /** The class file's list, and what this week's plan teaches besides; undefined where the class file has none. */
  readonly taught: readonly TaughtEntry[] | undefined
}

/** The plan stage and the layouts' names are loaded only for a plan. */
async function planToMatch(
  planFile: string,
  { patterns = [], letters }: FindWishes,
  lexicon: Lexicon,
): Promise<Outcome<MatchedPlan>> {
  const [{ studyPlanFile }, { likePlan }, { thisWeeks }] = await Promise.all([
    import('../pipeline.js'),
    import('../words/find/like-plan.js'),
    import('../words/find/taught.js'),
  ])
  const read = studyPlanFile({ planFile })
  if (!read.ok) return read
  const { plan } = read.value
  // What a word is as a whole is no spelling to look for.
  const marks = plan.marks.flatMap(({ target }) => (target.kind === 'word' ? [] : [target]))
  if (marks.length === 0 && patterns.length === 0 && letters === undefined) {
    const advice = 'Give the plan marks:, or name beside it what to look for, such as --pattern vowel-team.'
    return fail(errorAt({ file: planFile }, 'the plan marks nothing to look for', advice))
  }
  const planWords = [...plan.words, ...plan.groups.flatMap(group => group.words)]
  const words = planWords.flatMap(word => {
    const studied = studyWord(word, lexicon, present({ accent: plan.accent }))
    return studied.ok ? [studied.value] : []
  })
  const familiarity = (word: string) => lexicon.lookUp(word)?.familiarity ?? 0
  return succeed({
    likeness: likePlan({ words, marks, familiarity }),
    ways: present({ accent: plan.accent, countSounds: plan.countSounds }),
    taught: plan.taught === undefined ? undefined : [...plan.taught, ...thisWeeks(plan.marks, lexicon)],
  })
}

/** Of the file that is named, else of the class file of the plan that is named. */
async function taughtSoFar(
  path: string | undefined,
  plan: MatchedPlan | undefined,
): Promise<Outcome<readonly TaughtEntry[] | undefined>> {
  if (path === undefined) return succeed(plan?.taught)
  const named = { path, files: disk, patterns: patternNames }
  if (!/\.ya?ml$/i.test(path)) return (await import('../plan/settings/taught.js')).readTaughtFile(named)
  const [{ readClassFile }, { taughtInAll }, { vocabularyOfNames }] = await Promise.all([
    import('../plan/settings/class-file.js'),
    import('../plan/settings/weeks.js'),
    import('../pipeline/vocabulary-of-names.js'),
  ])
  const place = { file: path }
  const source = { file: 'oaktag', files: disk, vocabulary: vocabularyOfNames() }
  const read = readClassFile({ kind: 'text', text: path, place }, source)
  if (!read.ok) return read
  const taught = taughtInAll(read.value)
  if (taught !== undefined) return succeed(taught)
  const advice =
    'Write taught: in the class file, and under it patterns, letters or words, a dash before each.'
  return fail(errorAt(place, 'the class file does not say what is taught', advice))
}

async function readableBy(taught: readonly TaughtEntry[] | undefined, lexicon: Lexicon) {
  if (taught === undefined) return succeed(undefined)
  return (await import('../words/find/taught.js')).readableWords(taught, lexicon)
}

export { gradedLists } from '../words/find/graded-lists.js'
export { piecesInWords } from '../words/sounds-in-words.js'
export { type Level, type PlaceWished, patternNames, type WayOut }

/** What to write instead of a pattern that is not known. */
export function patternAdvice(name: string): string {
  return nearestAdvice({
    name,
    known: patternNames,
    where: '"oaktag list patterns" shows all.',
    others: () => tradeWords('pattern'),
  })
}
