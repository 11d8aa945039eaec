/** The sorts that words support, the best first, with what would make lop-sided ones good. */
import { andThen, present, succeed } from '../outcomes.js'
import { disk } from '../plan/disk/disk.js'
import type { FileAccess } from '../plan/disk/file-access.js'
import type { Plan, PlanMark, PlanWord, TaughtEntry } from '../plan/plan.js'
import { eachWordOnce } from '../plan/words/word-text.js'
import { type Outcome, type Problem, warningAt } from '../problems.js'
import { adviceOn } from '../sets/sorts/advice.js'
import { nearlySorts } from '../sets/sorts/nearly-sorts.js'
import { inAlphabet, rankedSorts } from '../sets/sorts/rank-sorts.js'
import type { Sort } from '../sets/sorts/sort.js'
import { wordsForASort } from '../sets/sorts/words-for-a-sort.js'
import { openOfferedWords } from '../words/find/offered-file.js'
import { sortableWords } from '../words/find/sortable-words.js'
import { wordsLike } from '../words/find/words-like.js'
import { installedLexicon } from '../words/lexicon/lexicon.js'
import { patternNames } from '../words/patterns/index.js'
import type { SortableWord } from '../words/sortable-word.js'
import type { ClassWays } from '../words/study.js'

/** The class's words of a plan: what it marks is what she teaches, and ranks first. */
export async function sortsOfPlan(
  planFile: string,
  files: FileAccess = disk,
): Promise<Outcome<readonly Sort[]>> {
  const [{ loadPlan }, { planVocabulary }] = await Promise.all([
    import('../plan/load-plan.js'),
    import('../pipeline/vocabulary.js'),
  ])
  const plan = loadPlan(planFile, planVocabulary(), files)
  if (!plan.ok) return plan
  const { accent, countSounds, taught, marks } = plan.value
  const list = wordsOfClass(plan.value)
  const sorts = await sortsOf({
    file: planFile,
    list,
    marks,
    ways: present({ accent, countSounds }),
    ...present({ taught }),
  })
  return { ...sorts, problems: [...plan.problems, ...sorts.problems] }
}

/** Of a plan for groups alone the words of all groups, each once. */
function wordsOfClass({ words, groups }: Plan): readonly PlanWord[] {
  return words.length > 0 ? words : eachWordOnce(groups.flatMap(group => group.words))
}

/** The words of a list, `.txt` or `.csv`. */
export async function sortsOfList(path: string): Promise<Outcome<readonly Sort[]>> {
  const { readWordListFile } = await import('../plan/words/word-list.js')
  const list = readWordListFile({ path, files: disk, patterns: patternNames })
  if (!list.ok) return list
  const sorts = await sortsOf({ file: path, list: list.value, marks: [], ways: {} })
  return { ...sorts, problems: [...list.problems, ...sorts.problems] }
}

interface ClassOfWords {
  /** Where its words were read. */
  readonly file: string
  readonly list: readonly PlanWord[]
  readonly marks: readonly PlanMark[]
  readonly ways: ClassWays
  readonly taught?: readonly TaughtEntry[]
}

async function sortsOf({ file, list, marks, ways, taught }: ClassOfWords): Promise<Outcome<readonly Sort[]>> {
  const words = sortableWords({ list, ways, lexicon: installedLexicon(), offered: openOfferedWords })
  const readable = await readableBy(taught)
  return andThen(words, value => {
    const sorts = advisedSorts(value, marks, readable)
    return succeed(sorts, sorts.length === 0 ? noSort(value, file, readable) : [])
  })
}

/** Nothing is asked for where two or three words would not do. */
function noSort(words: readonly SortableWord[], file: string, readable: Readable): readonly Problem[] {
  if (words.length > mostToAdviseOn) return []
  const says = wordsForASort({ words, toAdd: toAddTo(words, readable) })
  return says === undefined ? [] : [warningAt({ file }, 'these words support no sort yet', says)]
}

function toAddTo(words: readonly SortableWord[], readable: Readable) {
  return wordsLike({ words, offered: openOfferedWords, lexicon: installedLexicon(), readable })
}

/** Longer lists are no week's, and two words more mend nothing there. */
const mostToAdviseOn = 60

type Readable = Parameters<typeof wordsLike>[0]['readable']

function advisedSorts(
  words: readonly SortableWord[],
  marks: readonly PlanMark[],
  readable: Readable,
): readonly Sort[] {
  const ranked = rankedSorts(words, { marks })
  if (words.length > mostToAdviseOn) return ranked.map(({ sort }) => sort)
  const toAdd = toAddTo(words, readable)
  const [nearly] = nearlySorts({
    words: inAlphabet(words),
    best: ranked[0]?.sort.score ?? 0,
    taken: ranked.map(({ sort }) => sort.name),
    toAdd,
  })
  return ranked.map((rated, index) => ({
    ...rated.sort,
    ...present({ advice: adviceOn({ rated, toAdd }), nearly: index === 0 ? nearly : undefined }),
  }))
}

/** What the class can read, where its class file says what is taught; a mistake in that is told by whoever makes the plan. */
async function readableBy(taught: readonly TaughtEntry[] | undefined): Promise<Readable> {
  if (taught === undefined) return undefined
  const { readableWords } = await import('../words/find/taught.js')
  const readable = readableWords(taught, installedLexicon())
  return readable.ok ? readable.value : undefined
}

export { leftoversInWords, openSortNote } from '../sets/sorts/rank-sorts.js'
export type { Sort }
