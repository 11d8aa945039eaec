/** `groups:` of a class file: children who work on their own, named once for all weeks. */
import { andThen, failWith, outcomeOf, present, succeed, together } from '../../outcomes.js'
import { errorAt, type Outcome, type Problem } from '../../problems.js'
import { key, reading, type ValueReader } from '../keys/key.js'
import { tooMany } from '../most-entries.js'
import type { PlanGroup } from '../plan.js'
import { foldName } from '../values/fold-name.js'
import { fileNameReader } from '../values/names.js'
import { childrenReader } from '../values/numbers.js'
import { repetitions } from '../values/repetitions.js'
import { typeSizeReader } from '../values/type-size.js'
import { type Entry, misfit, type TextEntry } from '../yaml/entry.js'
import { readKeys, valueAt } from '../yaml/keys.js'
import { readContrast } from './contrast.js'
import { marksReader } from './marks.js'
import type { SettingsContext } from './settings-context.js'

/** What holds of a group in every week. */
export type ClassGroup = Omit<PlanGroup, 'words'>

export const groupForm = 'Begin each group with "- name:" and its name.'

/** What a group may say of itself, in a class file or in a plan. */
export function groupSettingKeys({ vocabulary, font }: SettingsContext) {
  return {
    marks: key('what is marked in its words, in place of the marks of the plan', marksReader(vocabulary), {
      usual: 'the marks of the plan',
    }),
    size: key('how large its words are at least', typeSizeReader(vocabulary), {
      example: 'large',
      usual: "the class's size",
    }),
    font: key('its typeface', font, { example: 'lexend', usual: 'the font of the plan' }),
    children: key('how many children are in it', childrenReader, { example: '6' }),
    contrast: key('its colours of ink and card', readContrast, { usual: 'those of the plan' }),
  }
}

export const groupNameKey = key("the group's name", fileNameReader("a group's name"), { example: 'Otters' })

const what = 'a group of a class file'

export function classGroupsReader(context: SettingsContext): ValueReader<readonly ClassGroup[]> {
  const keys = () => ({ name: groupNameKey, ...groupSettingKeys(context) })
  const readGroup = (entry: Entry): Outcome<ClassGroup> => {
    if (entry.kind !== 'map') return misfit(entry, 'a group', groupForm)
    const rules = [...nameless(entry), ...wordsOfOneWeek(entry)]
    const known = { ...entry, pairs: entry.pairs.filter(({ key }) => !isWords(key)) }
    const read = readKeys(known, { what, readers: keys(), rules })
    return andThen(read, ({ values: { name, ...rest } }) =>
      succeed({ name: name!.text, place: name!.place, ...present(rest) }),
    )
  }
  const of = { kind: 'keys', what, keys, needed: ['name'], beside: 'name: Otters' } as const
  return reading({ kind: 'list', of, alone: false, empty: true }, entry => {
    if (entry.kind === 'empty') return succeed([])
    if (entry.kind !== 'list') return misfit(entry, 'a list of groups', groupForm)
    return groupsOnce(entry.items, readGroup, entry)
  })
}

/** Groups whose names differ, whether or not each can be read. */
export function groupsOnce<T>(
  items: readonly Entry[],
  read: (entry: Entry) => Outcome<T>,
  list: Entry,
): Outcome<readonly T[]> {
  const tooLong = tooMany('groups', items, list.place)
  if (tooLong.length > 0) return failWith(tooLong)
  const groups = together(items.map(read))
  const problems = [...groups.problems, ...repeatedNames(items.flatMap(typedName))]
  return groups.ok ? outcomeOf(groups.value, problems) : failWith(problems)
}

/** The name as typed, alone or behind its key. */
export function typedName(group: Entry): readonly TextEntry[] {
  const name = group.kind === 'text' ? group : valueAt(group, 'name')
  return name?.kind === 'text' ? [name] : []
}

export function nameless(group: Entry): readonly Problem[] {
  return valueAt(group, 'name') ? [] : [errorAt(group.place, 'a group has no "name"', groupForm)]
}

function isWords(name: string): boolean {
  return ['words', 'more-words'].includes(foldName(name))
}

function wordsOfOneWeek(group: Entry): readonly Problem[] {
  const list = valueAt(group, 'words') ?? valueAt(group, 'more words')
  if (list === undefined) return []
  const advice = 'Write them in the plan of their week, at the group of the same name.'
  return [errorAt(list.place, 'a group of a class file has no words of its own', advice)]
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
