import { failWith, succeed } from '../outcomes.js'
import { disk } from '../plan/disk/disk.js'
import { readWordListFile } from '../plan/words/word-list.js'
import type { Outcome, Problem } from '../problems.js'
import { openSortNote, rankSorts } from '../sets/sorts/rank-sorts.js'
import type { Sort } from '../sets/sorts/sort.js'
import { openLexicon } from '../words/lexicon/lexicon.js'
import { patterns } from '../words/patterns/index.js'
import { studyWord } from '../words/study.js'
import type { Word } from '../words/word.js'
import { type CommandResult, resultOf, wrongUsage } from './command-result.js'
import { wrapLine } from './wrap-line.js'

export interface SortsOptions {
  readonly plan?: string | undefined
  readonly file?: string | undefined
  readonly json: boolean
}

/** `oaktag sorts`: the ranked sorts that a plan's words support, each with its columns and its leftovers. */
export async function sortsCommand({ plan, file, json }: SortsOptions): Promise<CommandResult> {
  if ((plan === undefined) === (file === undefined))
    return wrongUsage(
      'sorts needs a plan or --file',
      'Write oaktag sorts plan.yaml, or oaktag sorts --file words.txt.',
    )
  const words = plan === undefined ? wordsOfList(file!) : await wordsOfPlan(plan)
  if (!words.ok) return resultOf('', words.problems)
  const sorts = rankSorts(words.value)
  if (json) return resultOf(JSON.stringify(sorts, null, 2), words.problems)
  const blocks = sorts.map((sort, index) => describeSort(sort, index + 1).join('\n'))
  return resultOf(
    [...wrapLine(openSortNote(sorts), 80), ...blocks.map(block => `\n${block}`)].join('\n'),
    words.problems,
  )
}

/** The plan stage and the layouts' names are loaded only for a plan. */
async function wordsOfPlan(planFile: string): Promise<Outcome<readonly Word[]>> {
  const { studyPlanFile } = await import('../pipeline.js')
  const read = studyPlanFile({ planFile })
  if (!read.ok) return read
  const { plan, words } = read.value
  return { ...read, value: plan.words.map(word => words.get(word)!) }
}

function wordsOfList(path: string): Outcome<readonly Word[]> {
  const list = readWordListFile({ path, files: disk, patterns: patterns.map(pattern => pattern.name) })
  if (!list.ok) return list
  const lexicon = openLexicon()
  const studied = list.value.map(word => studyWord(word, lexicon))
  const problems: readonly Problem[] = [...list.problems, ...studied.flatMap(outcome => outcome.problems)]
  const words = studied.flatMap(outcome => (outcome.ok ? [outcome.value] : []))
  return words.length < studied.length ? failWith(problems) : succeed(words, problems)
}

function describeSort(sort: Sort, number: number): readonly string[] {
  return [
    `${number}. ${sort.name}`,
    `   ${sort.why}`,
    ...sort.columns.map(column => `   ${column.title}: ${column.words.join(', ')}`),
    ...(sort.leftovers.length === 0 ? [] : [`   left over: ${sort.leftovers.join(', ')}`]),
  ].flatMap(line => wrapLine(line, 80))
}
