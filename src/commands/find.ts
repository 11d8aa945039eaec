import { present, succeed } from '../outcomes.js'
import { disk } from '../plan/disk/disk.js'
import type { TaughtEntry } from '../plan/plan.js'
import { typedWordList } from '../plan/words/typed-words.js'
import { errorAt, type Outcome } from '../problems.js'
import { type FindQuery, type FoundWord, findWords } from '../words/find/find-words.js'
import type { PlanLikeness } from '../words/find/like-plan.js'
import { openOfferedWords } from '../words/find/offered-file.js'
import { type OfferedWord, offeredWord } from '../words/find/offered-word.js'
import { reasonsFor } from '../words/find/reasons.js'
import { waysOut } from '../words/find/ways-out.js'
import type { Lexicon } from '../words/lexicon/entry.js'
import { openLexicon } from '../words/lexicon/lexicon.js'
import { patternNames } from '../words/patterns/index.js'
import { type ClassWays, studyWord } from '../words/study.js'
import { commaList } from './comma-list.js'
import { type CommandResult, resultOf } from './command-result.js'
import { describeFound, describeNothing, type ShownWord } from './describe-found.js'
import type { FindOptions } from './find-options.js'
import { refuseWishes } from './refuse-wishes.js'
import { wordJson } from './word-json.js'

/** `oaktag find`: words that fit, the most familiar first, nothing unfit for children. */
export async function findCommand(options: FindOptions): Promise<CommandResult> {
  const patterns = commaList(options.pattern ?? []).map(name => name.toLowerCase().replaceAll(/[\s_]+/g, '-'))
  const refusal = refuseWishes({ ...options, patterns })
  if (refusal !== undefined) return refusal
  const lexicon = openLexicon()
  const like = options.like === undefined ? succeed(undefined) : modelWord(options.like, lexicon)
  const plan =
    options.for === undefined ? succeed(undefined) : await planToMatch(options.for, options, lexicon)
  const taught = await taughtSoFar(options.taught, plan.ok ? plan.value : undefined)
  const readable = taught.ok ? await readableBy(taught.value, lexicon) : taught
  if (!like.ok || !plan.ok || !readable.ok)
    return resultOf(
      '',
      [like, plan, readable].flatMap(outcome => (outcome.ok ? [] : outcome.problems)),
    )
  const { place, sounds, syllables, level, count } = options
  const query: FindQuery = {
    count,
    ...(patterns.length === 0 ? {} : { patterns }),
    ...present({
      letters: options.letters?.toLowerCase(),
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
  if (found.length === 0) {
    const nothing = describeNothing(waysOut(query, offered), options)
    return options.json ? { output: '[]', problems: nothing, exitCode: 0 } : resultOf(nothing)
  }
  const shown = found.flatMap(each => showWord(each, query, { lexicon, ways: plan.value?.ways }))
  if (!options.json) {
    const note = options.taught === undefined && plan.value?.taught !== undefined ? classFileNote : ''
    return resultOf(describeFound(shown) + note)
  }
  return resultOf(
    JSON.stringify(
      shown.map(({ word, why }) => ({ ...wordJson(word), why })),
      null,
      2,
    ),
  )
}

const classFileNote =
  "\n\nOnly words made of what the plan's class file says is taught, and of this week's marks."

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
  { pattern, letters }: Pick<FindOptions, 'pattern' | 'letters'>,
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
  const marks = plan.marks.map(({ target }) => target)
  if (marks.length === 0 && pattern === undefined && letters === undefined) {
    const advice = 'Give the plan marks:, or name beside it what to look for, such as --pattern vowel-team.'
    return {
      ok: false,
      problems: [errorAt({ file: planFile }, 'the plan marks nothing to look for', advice)],
    }
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
  const { readClassFile } = await import('../plan/settings/class-file.js')
  const place = { file: path }
  const read = readClassFile({ kind: 'text', text: path, place }, { ...named, file: 'oaktag' })
  if (!read.ok || read.value.taught !== undefined) return read.ok ? succeed(read.value.taught) : read
  const advice =
    'Write taught: in the class file, and under it patterns, letters or words, a dash before each.'
  return { ok: false, problems: [errorAt(place, 'the class file does not say what is taught', advice)] }
}

async function readableBy(taught: readonly TaughtEntry[] | undefined, lexicon: Lexicon) {
  if (taught === undefined) return succeed(undefined)
  return (await import('../words/find/taught.js')).readableWords(taught, lexicon)
}
