import { find, gradedLists, type ShownWord } from '../door/find.js'
import { commaList } from './comma-list.js'
import { type CommandResult, resultOf } from './command-result.js'
import { describeFound, describeNothing } from './describe-found.js'
import { describeGraded } from './describe-graded.js'
import type { FindOptions } from './find-options.js'
import { refuseWishes } from './refuse-wishes.js'

/** `oaktag find`: words that fit, the most familiar first, nothing unfit for children. */
export async function findCommand(options: FindOptions): Promise<CommandResult> {
  const patterns = commaList(options.pattern ?? []).map(name => name.toLowerCase().replaceAll(/[\s_]+/g, '-'))
  const refusal = refuseWishes({ ...options, patterns })
  if (refusal !== undefined) return refusal
  const { groups, count } = options
  const found = await find({
    ...options,
    patterns,
    count: groups === undefined ? count : count * groups * DRAWN_FROM,
  })
  if (!found.ok) return resultOf('', found.problems)
  const { words, waysOut, byClassFile } = found.value
  if (words.length === 0) {
    const nothing = describeNothing(waysOut, options)
    return options.json ? { output: '[]', problems: nothing, exitCode: 0 } : resultOf(nothing)
  }
  if (groups !== undefined) return inGroups(words, { groups, count, json: options.json })
  if (!options.json) return resultOf(describeFound(words) + (byClassFile ? classFileNote : ''))
  const { studiedWord } = await import('../door/words.js')
  const entries = words.map(({ word, why }) => ({ ...studiedWord(word), why }))
  return resultOf(JSON.stringify(entries, null, 2))
}

/** Lists of words are drawn from so many times as many: with fewer, the groups are too much alike. */
const DRAWN_FROM = 4

async function inGroups(
  words: readonly ShownWord[],
  { groups, count, json }: { readonly groups: number; readonly count: number; readonly json: boolean },
): Promise<CommandResult> {
  const graded = words.map(shown => ({ ...shown.word, shown }))
  const lists = gradedLists(graded, { lists: groups, count }).map(list => list.map(({ shown }) => shown))
  if (lists.some(list => list.length === 0)) {
    const found = words.length === 1 ? '1 word fits' : `${words.length} words fit`
    return resultOf(`Only ${found}, too few for ${groups} lists:\n${describeFound(words)}`)
  }
  if (!json) return resultOf(describeGraded(lists))
  const { studiedWord } = await import('../door/words.js')
  const entries = lists.map((list, index) => ({
    group: index + 1,
    words: list.map(({ word, why }) => ({ ...studiedWord(word), why })),
  }))
  return resultOf(JSON.stringify(entries, null, 2))
}

const classFileNote =
  "\n\nOnly words made of what the plan's class file says is taught, and of this week's marks."
