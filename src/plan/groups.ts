/** `groups:`, other children in the same week, with words or a size of their own. */
import { errorAt, type Outcome, type Problem } from '../problems.js'
import { readContrast } from './contrast.js'
import { type Entry, misfit, type Reader, type TextEntry } from './entry.js'
import { readKeys, valueAt } from './keys.js'
import { readWords, type TypedWord, typedWords } from './list-words.js'
import { fileNameReader, foldName } from './names.js'
import { andThen, outcomeOf, present, succeed, together } from './outcomes.js'
import type { PlanGroup, PlanWord } from './plan.js'
import { repetitions } from './repetitions.js'
import { readTypeSize } from './type-size.js'
import type { WordContext } from './word-entry.js'
import { wordEntries } from './word-list.js'

const form = 'Begin each group with "- name:" and its name.'

export interface GroupContext extends WordContext {
  readonly font: Reader<string>
}

export function readGroups(entry: Entry, context: GroupContext): Outcome<readonly PlanGroup[]> {
  if (entry.kind === 'empty') return succeed([])
  if (entry.kind !== 'list') return misfit(entry, 'a list of groups', form)
  const groups = together(entry.items.map(item => readGroup(item, context)))
  const problems = [...groups.problems, ...repeatedNames(typedGroups(entry))]
  return groups.ok ? outcomeOf(groups.value, problems) : { ok: false, problems }
}

function readGroup(entry: Entry, context: GroupContext): Outcome<PlanGroup> {
  if (entry.kind !== 'map') return misfit(entry, 'a group', form)
  const readGroupWords: Reader<readonly PlanWord[]> = list =>
    list.kind === 'list' && list.items.length === 0
      ? succeed([])
      : andThen(wordEntries(list, context), entries => readWords(entries, context))
  const keys = readKeys(entry, {
    what: 'a group',
    readers: {
      name: fileNameReader("a group's name"),
      words: readGroupWords,
      size: readTypeSize,
      font: context.font,
      contrast: readContrast,
    },
    rules: valueAt(entry, 'name') ? [] : [errorAt(entry.place, 'a group has no "name"', form)],
  })
  return andThen(keys, ({ values: { name, words = [], ...rest } }) =>
    succeed({ name: name!.text, place: name!.place, words, ...present(rest) }),
  )
}

/** The words of all groups as typed; of a list that cannot be read, none. */
export function typedGroupWords(entry: Entry | undefined, context: WordContext): readonly TypedWord[] {
  if (entry?.kind !== 'list') return []
  return entry.items.flatMap(item => {
    const list = valueAt(item, 'words')
    const entries = list && wordEntries(list, context)
    return entries?.ok ? typedWords(entries.value) : []
  })
}

/** The names as typed, whether or not the group can be read. */
export function typedGroups(entry: Entry | undefined): readonly TextEntry[] {
  if (entry?.kind !== 'list') return []
  return entry.items.flatMap(item => {
    const value = valueAt(item, 'name')
    return value?.kind === 'text' ? [value] : []
  })
}

function repeatedNames(names: readonly TextEntry[]): readonly Problem[] {
  return repetitions(names, ({ text }) => foldName(text)).map(({ item, lines }) =>
    errorAt(
      item.place,
      `the group "${item.text}" stands twice${lines}`,
      'Give each group a name of its own.',
    ),
  )
}
