/** The sorts that words support, the best first, with what would make lop-sided ones good. */
import { present, succeed } from '../outcomes.js'
import type { FileAccess } from '../plan/disk/file-access.js'
import type { Plan, PlanMark, PlanWord, TaughtEntry } from '../plan/plan.js'
import { sameWord } from '../plan/words/word-text.js'
import type { Outcome } from '../problems.js'
import { adviceOn } from '../sets/sorts/advice.js'
import { rankedSorts } from '../sets/sorts/rank-sorts.js'
import type { Sort } from '../sets/sorts/sort.js'
import { installedLexicon } from '../words/lexicon/lexicon.js'
import type { ClassWays } from '../words/study.js'
import type { Word } from '../words/word.js'
import { studyWordList } from './words.js'

/** The class's words of a plan: what it marks is what she teaches, and ranks first. */
export async function sortsOfPlan(planFile: string, files?: FileAccess): Promise<Outcome<readonly Sort[]>> {
  const { studyPlanFile } = await import('../pipeline.js')
  const read = studyPlanFile({ planFile, ...present({ files }) })
  if (!read.ok) return read
  const { plan, words } = read.value
  const own = wordsOfClass(plan).map(word => words.get(word)!)
  const { accent, countSounds, taught, marks } = plan
  const ways = present({ accent, countSounds })
  return succeed(await sortsOf(own, { marks, ways, ...present({ taught }) }), read.problems)
}

/** Of a plan for groups alone the words of all groups, each once. */
function wordsOfClass({ words, groups }: Plan): readonly PlanWord[] {
  if (words.length > 0) return words
  const all = groups.flatMap(group => group.words)
  return [...new Map(all.map(word => [sameWord(word.text), word])).values()]
}

/** The words of a list, `.txt` or `.csv`. */
export async function sortsOfList(path: string): Promise<Outcome<readonly Sort[]>> {
  const words = await studyWordList(path)
  return words.ok ? succeed(await sortsOf(words.value, { marks: [], ways: {} }), words.problems) : words
}

interface ClassOfWords {
  readonly marks: readonly PlanMark[]
  readonly ways: ClassWays
  readonly taught?: readonly TaughtEntry[]
}

/** Longer lists are no week's, and two words more mend nothing there. */
const mostToAdviseOn = 60

async function sortsOf(
  words: readonly Word[],
  { marks, ways, taught }: ClassOfWords,
): Promise<readonly Sort[]> {
  const ranked = rankedSorts(words, { marks })
  if (ranked.length === 0 || words.length > mostToAdviseOn) return ranked.map(({ sort }) => sort)
  const toAdd = await wordsToAdd(words, { marks, ways, ...present({ taught }) })
  return ranked.map(rated => ({ ...rated.sort, ...present({ advice: adviceOn({ rated, toAdd }) }) }))
}

/** Loaded for a week's list alone. */
async function wordsToAdd(words: readonly Word[], { ways, taught }: ClassOfWords) {
  const [{ openOfferedWords }, { wordsLike }, { readableWords }] = await Promise.all([
    import('../words/find/offered-file.js'),
    import('../words/find/words-like.js'),
    import('../words/find/taught.js'),
  ])
  const lexicon = installedLexicon()
  const readable = taught === undefined ? undefined : readableWords(taught, lexicon)
  return wordsLike({
    words,
    offered: openOfferedWords(),
    lexicon,
    ways,
    readable: readable?.ok === true ? readable.value : undefined,
  })
}

export { leftoversInWords, openSortNote } from '../sets/sorts/rank-sorts.js'
export type { Sort }
