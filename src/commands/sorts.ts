import { leftoversInWords, openSortNote, type Sort, sortsOfList, sortsOfPlan } from '../door/sorts.js'
import { type CommandResult, resultOf, wrongUsage } from './command-result.js'
import { planFiles } from './plan-files.js'
import type { Input } from './standard-input.js'
import { wrapLine } from './wrap-line.js'

export interface SortsOptions {
  readonly plan?: string | undefined
  readonly file?: string | undefined
  readonly json: boolean
}

/** `oaktag sorts`: the ranked sorts that a plan's words support, each with its columns and its leftovers. */
export async function sortsCommand(
  { plan, file, json }: SortsOptions,
  input?: Input,
): Promise<CommandResult> {
  if ((plan === undefined) === (file === undefined))
    return wrongUsage(
      'sorts needs a plan or --file',
      'Write oaktag sorts plan.yaml, or oaktag sorts --file words.txt.',
    )
  const found = plan === undefined ? await sortsOfList(file!) : await sortsIn(plan, input)
  if (!found.ok) return resultOf('', found.problems)
  const sorts = found.value
  if (json) return resultOf(JSON.stringify(sorts, null, 2), found.problems)
  const nearly = sorts.flatMap(sort => (sort.nearly === undefined ? [] : wrapLine(sort.nearly.says, 80)))
  const blocks = sorts.map((sort, index) => describeSort(sort, index + 1).join('\n'))
  return resultOf(
    [...wrapLine(openSortNote(sorts), 80), ...nearly, ...blocks.map(block => `\n${block}`)].join('\n'),
    found.problems,
  )
}

async function sortsIn(plan: string, input: Input | undefined) {
  const { paths, files } = await planFiles([plan], input)
  return sortsOfPlan(paths[0] ?? plan, files)
}

function describeSort(sort: Sort, number: number): readonly string[] {
  return [
    `${number}. ${sort.name}`,
    `   ${sort.why}`,
    `   Why here: ${sort.standing}.`,
    ...sort.columns.map(column => `   ${column.title}: ${column.words.join(', ')}`),
    ...(sort.leftovers.length === 0 ? [] : [`   ${leftoversInWords(sort)}`]),
    ...(sort.advice === undefined ? [] : [`   ${sort.advice.says}`]),
  ].flatMap(line => wrapLine(line, 80))
}
