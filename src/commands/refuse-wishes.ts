import { patternAdvice, patternNames } from '../door/find.js'
import { type CommandResult, wrongUsage } from './command-result.js'
import type { FindOptions } from './find-options.js'

/** Wrong usage of `find`, with what to write instead; undefined where all is well. */
export function refuseWishes(
  options: FindOptions & { readonly patterns: readonly string[] },
): CommandResult | undefined {
  const {
    patterns,
    letters,
    sounds,
    syllables,
    level,
    like,
    taught,
    for: plan,
    count,
    place,
    groups,
  } = options
  const wishes = [letters, sounds, syllables, level, like, taught, plan]
  if (patterns.length === 0 && wishes.every(wish => wish === undefined))
    return wrongUsage(
      'find needs a wish',
      'For example: oaktag find --pattern digraph-blend --place beginning.',
    )
  const unknown = patterns.find(name => !patternNames.includes(name))
  if (unknown !== undefined) return wrongUsage(`unknown pattern "${unknown}"`, patternAdvice(unknown))
  if (letters !== undefined && !isLetters(letters))
    return wrongUsage(`"${letters}" is not letters`, 'Write letters such as sh, or a_e for a split team.')
  if (place !== undefined && patterns.length === 0 && letters === undefined)
    return wrongUsage(
      '--place needs a pattern or letters',
      'Say what is to stand there, with --pattern or --letters.',
    )
  for (const [name, value] of Object.entries({ sounds, syllables, count }))
    if (value !== undefined && !(Number.isInteger(value) && value >= 1 && value <= 10_000))
      return wrongUsage(`--${name} takes a whole number from 1`, `For example --${name} 3.`)
  if (groups !== undefined && !(Number.isInteger(groups) && groups >= 2 && groups <= MOST_GROUPS))
    return wrongUsage(`--groups takes a whole number from 2 to ${MOST_GROUPS}`, 'For example --groups 3.')
  for (const [name, value] of Object.entries({ taught, for: plan }))
    if (value !== undefined && value.trim() === '')
      return wrongUsage(`--${name} names no file`, `For example --${name} ${examples[name]}.`)
  return undefined
}

/** More lists of one pattern than a class has groups. */
const MOST_GROUPS = 6

const examples: Readonly<Record<string, string>> = { taught: 'taught.txt', for: 'plan.yaml' }

/** With one low line at most, and letters on both sides of it. */
function isLetters(text: string): boolean {
  return /^[a-z'-]+(?:_[a-z]+)?$/i.test(text) && text.length <= 30
}
