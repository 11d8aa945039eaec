/** What an item takes up from the rest of the plan: words and groups, by name. */

import { fail, failWith, outcomeOf, succeed, together } from '../../outcomes.js'
import { errorAt, type Outcome } from '../../problems.js'
import { reading, type ValueReader } from '../keys/key.js'
import type { Takes } from '../keys/takes.js'
import { foldName } from '../values/fold-name.js'
import { nameReader } from '../values/names.js'
import { nearestAdvice } from '../values/nearest.js'
import { repetitions } from '../values/repetitions.js'
import { sameWord, wordPattern, wordText } from '../words/word-text.js'
import { type Entry, misfit, oneOrMore, type Reader } from '../yaml/entry.js'

/** Words of the plan, each once, as the plan spells them; any words where the plan's are not known. */
export function subsetReader(words: readonly string[] | undefined): ValueReader<readonly string[]> {
  // Where a group spells a word of the plan otherwise, the plan's spelling, which comes first, is the one.
  const known = new Map((words ?? []).toReversed().map(word => [sameWord(word), word]))
  const readOne: Reader<string> = entry => {
    if (entry.kind !== 'text')
      return misfit(entry, 'a word of the plan', 'Write a dash and a word on each line.')
    if (words === undefined) return wordText(entry.text, entry.place)
    const word = known.get(sameWord(entry.text))
    if (word !== undefined) return succeed(word)
    const advice = nearestAdvice({
      name: sameWord(entry.text),
      known: [...known.keys()],
      where: 'An item prints words of the plan.',
    })
    return fail(errorAt(entry.place, `"${entry.text}" is not among the words of the plan`, advice))
  }
  const one: Takes = {
    kind: 'form',
    what: 'a word of the plan',
    samples: ['marsh'],
    pattern: wordPattern,
    plain: ['boolean', 'null'],
  }
  return reading({ kind: 'list', of: one, alone: true, empty: false }, entry =>
    listOfNames(entry, readOne, 'word'),
  )
}

/** Groups of the plan, each once; `none` for the class alone. */
export function groupsReader(groups: readonly string[]): ValueReader<readonly string[]> {
  const readOne = nameReader({ what: 'a group', known: groups, where: 'Groups are named under "groups:".' })
  const one: Takes = {
    kind: 'form',
    what: "a group's name, or none for the class alone",
    samples: ['Otters', 'none'],
    pattern: String.raw`\S`,
    plain: ['number', 'boolean', 'null'],
  }
  return reading({ kind: 'list', of: one, alone: true, empty: false }, entry => {
    if (entry.kind === 'text' && foldName(entry.text) === 'none') return succeed([])
    return listOfNames(entry, readOne, 'group')
  })
}

function listOfNames(entry: Entry, readOne: Reader<string>, what: string): Outcome<readonly string[]> {
  const items = oneOrMore(entry)
  if (items.length === 0)
    return misfit(entry, `at least one ${what}`, `Write a ${what}, or take the key out.`)
  const outcomes = items.map(readOne)
  const named = outcomes.flatMap((outcome, index) =>
    outcome.ok ? [{ name: outcome.value, place: items[index]!.place }] : [],
  )
  const twice = repetitions(named, ({ name }) => name).map(({ item, lines }) =>
    errorAt(item.place, `"${item.name}" stands twice${lines}`, 'Take one of the two out.'),
  )
  const names = together(outcomes)
  return names.ok
    ? outcomeOf(names.value, [...names.problems, ...twice])
    : failWith([...names.problems, ...twice])
}
