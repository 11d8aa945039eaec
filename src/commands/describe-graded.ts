/** What `find --groups` prints: a list for each group, and how a plan takes them. */
import type { ShownWord } from '../door/find.js'
import { describeFound } from './describe-found.js'
import { wrapLine } from './wrap-line.js'

export function describeGraded(lists: readonly (readonly ShownWord[])[]): string {
  const blocks = lists.map(
    (words, index) =>
      `Group ${index + 1}: ${lengthsOf(words.map(({ word }) => word))}\n${describeFound(words)}`,
  )
  const groups = groupsText(
    lists.map((words, index) => ({ name: `group ${index + 1}`, words: words.map(({ word }) => word.text) })),
  )
  return [
    ...blocks,
    wrapLine(
      'Take out what you do not want, and name the groups as your class does: their names stand on the cards, and a number tells children whose words are the harder. In a plan they stand so:',
      80,
    ).join('\n'),
    `groups:\n${groups.join('\n')}`,
  ].join('\n\n')
}

/** As a plan has them. */
export function groupsText(
  groups: readonly { readonly name: string; readonly words: readonly string[] }[],
): readonly string[] {
  return groups.flatMap(({ name, words }) => [
    `  - name: ${name}`,
    ...wrapLine(`    words: [${words.join(', ')}]`, 80),
  ])
}

/** `3 sounds, 1 syllable`, `4 to 6 sounds, 2 syllables`. */
export function lengthsOf(
  words: readonly { readonly soundCount: number; readonly syllables: readonly string[] }[],
): string {
  const sounds = words.map(({ soundCount }) => soundCount)
  const syllables = words.map(word => word.syllables.length)
  return `${fromTo(sounds, 'sound')}, ${fromTo(syllables, 'syllable')}`
}

function fromTo(counts: readonly number[], noun: string): string {
  const [least, most] = [Math.min(...counts), Math.max(...counts)]
  const named = least === most ? String(least) : `${least} to ${most}`
  return `${named} ${noun}${most === 1 ? '' : 's'}`
}
