import { find } from '../door/find.js'
import { commaList } from './comma-list.js'
import { type CommandResult, resultOf } from './command-result.js'
import { describeFound, describeNothing } from './describe-found.js'
import type { FindOptions } from './find-options.js'
import { refuseWishes } from './refuse-wishes.js'

/** `oaktag find`: words that fit, the most familiar first, nothing unfit for children. */
export async function findCommand(options: FindOptions): Promise<CommandResult> {
  const patterns = commaList(options.pattern ?? []).map(name => name.toLowerCase().replaceAll(/[\s_]+/g, '-'))
  const refusal = refuseWishes({ ...options, patterns })
  if (refusal !== undefined) return refusal
  const found = await find({ ...options, patterns })
  if (!found.ok) return resultOf('', found.problems)
  const { words, waysOut, byClassFile } = found.value
  if (words.length === 0) {
    const nothing = describeNothing(waysOut, options)
    return options.json ? { output: '[]', problems: nothing, exitCode: 0 } : resultOf(nothing)
  }
  if (!options.json) return resultOf(describeFound(words) + (byClassFile ? classFileNote : ''))
  const { studiedWord } = await import('../door/words.js')
  const entries = words.map(({ word, why }) => ({ ...studiedWord(word), why }))
  return resultOf(JSON.stringify(entries, null, 2))
}

const classFileNote =
  "\n\nOnly words made of what the plan's class file says is taught, and of this week's marks."
