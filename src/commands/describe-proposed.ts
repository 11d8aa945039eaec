import type { ProposedGroup } from '../door/make.js'
import { groupsText, lengthsOf } from './describe-graded.js'
import { wrapLine } from './wrap-line.js'

/** What `spread:` asked for: the lists in a line each, and as groups of a plan to take over or leave. */
export function describeProposed(groups: readonly ProposedGroup[] = []): readonly string[] {
  if (groups.length === 0) return []
  return [
    ...wrapLine(
      'Lists for groups, as spread: asks; nothing is made of them. Take over what you want, name the groups as your class does (a number tells children whose words are the harder), and take spread: out:',
      80,
    ),
    ...groups.flatMap(({ name, words }) => wrapLine(`  # ${name}: ${lengthsOf(words)}`, 80)),
    'groups:',
    ...groupsText(groups.map(({ name, words }) => ({ name, words: words.map(({ text }) => text) }))),
  ]
}
