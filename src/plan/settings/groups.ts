/** `groups:`, other children in the same week, with words or a size of their own. */

import { andThen, fail, present, succeed } from '../../outcomes.js'
import { errorAt, type Outcome, type Problem } from '../../problems.js'
import { key, reading, type ValueReader } from '../keys/key.js'
import type { Takes } from '../keys/takes.js'
import type { PlanGroup, PlanWord } from '../plan.js'
import { type ReviewSetting, reviewReader } from '../review/review-key.js'
import { foldName } from '../values/fold-name.js'
import { nearestAdvice } from '../values/nearest.js'
import { otherNames } from '../values/other-names.js'
import { readWords, type TypedWord, typedWords } from '../words/list-words.js'
import type { WordContext } from '../words/word-entry.js'
import { wordEntries, wordListTaken } from '../words/word-list.js'
import { type Entry, type MapEntry, misfit, type TextEntry } from '../yaml/entry.js'
import { readKeys, valueAt } from '../yaml/keys.js'
import {
  type ClassGroup,
  groupForm,
  groupNameKey,
  groupSettingKeys,
  groupsOnce,
  nameless,
  typedName,
} from './class-groups.js'
import type { SettingsContext } from './settings-context.js'

export interface GroupContext extends SettingsContext {
  /** Those of the class file; none where it names none, undefined where it cannot be read. */
  readonly classGroups: readonly ClassGroup[] | undefined
}

export function groupListReader(context: GroupContext): ValueReader<readonly ReadGroup[]> {
  const keys: Takes = {
    kind: 'keys',
    what: 'a group',
    keys: () => groupKeys(context),
    needed: ['name'],
    beside: 'name: Otters',
  }
  const name: Takes = {
    kind: 'form',
    what: 'the name of a group of the class file',
    samples: ['Otters'],
    pattern: String.raw`^\s*[\p{L}\p{N}][\p{L}\p{M}\p{N} _-]*$`,
    plain: ['number', 'boolean', 'null'],
  }
  const list: Takes = { kind: 'list', of: { kind: 'any of', ways: [keys, name] }, alone: false, empty: true }
  const all: Takes = { kind: 'names', what: 'all of them', names: ['all'] }
  return reading({ kind: 'any of', ways: [list, all] }, entry => readGroups(entry, context))
}

function groupKeys(context: GroupContext) {
  return {
    name: groupNameKey,
    words: key('its own words', groupWordsReader(context), { usual: 'the words of the plan' }),
    'more words': key('its own words, beside the words of the plan', groupWordsReader(context), {
      example: '[hen, wing]',
    }),
    review: key(
      'which words of earlier weeks come back for it, in place of those of the plan',
      reviewReader(context),
      {
        example: 'no',
        usual: 'those of the plan; beside words of its own, those of the group of its name',
      },
    ),
    ...groupSettingKeys(context),
  }
}

function groupWordsReader(context: WordContext): ValueReader<readonly PlanWord[]> {
  return reading(wordListTaken(context, { empty: true }), list =>
    list.kind === 'list' && list.items.length === 0
      ? succeed([])
      : andThen(wordEntries(list, context), entries => readWords(entries, context)),
  )
}

function readGroups(entry: Entry, context: GroupContext): Outcome<readonly ReadGroup[]> {
  if (entry.kind === 'empty') return succeed([])
  if (isAll(entry)) return allGroups(entry, context)
  if (entry.kind !== 'list') return misfit(entry, 'a list of groups', groupForm)
  return groupsOnce(entry.items, item => readGroup(item, context), entry)
}

/** `groups: all`. */
function isAll(entry: Entry | undefined): entry is TextEntry {
  return entry?.kind === 'text' && foldName(entry.text) === 'all'
}

function allGroups({ place }: TextEntry, { classGroups }: GroupContext): Outcome<readonly ReadGroup[]> {
  if (classGroups?.length === 0)
    return fail(
      errorAt(
        place,
        'there are no groups of a class file to take',
        'Name them under groups: in the class file.',
      ),
    )
  return succeed((classGroups ?? []).map(group => ({ ...group, words: [] })))
}

/** A group as it is read: the words of the plan come to its own later. */
export interface ReadGroup extends PlanGroup {
  readonly moreWords?: readonly PlanWord[]
  readonly review?: ReviewSetting
}

function readGroup(entry: Entry, context: GroupContext): Outcome<ReadGroup> {
  if (entry.kind === 'text') return namedGroup(entry, context)
  if (entry.kind !== 'map') return misfit(entry, 'a group', groupForm)
  const keys = readKeys(entry, {
    what: 'a group',
    readers: groupKeys(context),
    others: otherNames('key', context.vocabulary),
    rules: [...nameless(entry), ...wordsTwice(entry)],
  })
  return andThen(keys, ({ values: { name, words = [], 'more words': moreWords, ...rest } }) => {
    const { text, place } = name!
    const ofClass = context.classGroups?.find(group => foldName(group.name) === foldName(text))
    return succeed({ ...ofClass, name: text, place, words, ...present({ moreWords }), ...present(rest) })
  })
}

/** A group that the class file tells of; any name where that cannot be read. */
function namedGroup(entry: TextEntry, { classGroups }: GroupContext): Outcome<ReadGroup> {
  const { text, place } = entry
  if (classGroups === undefined) return succeed({ name: text, place, words: [] })
  const group = classGroups.find(({ name }) => foldName(name) === foldName(text))
  if (group !== undefined) return succeed({ ...group, place, words: [] })
  if (classGroups.length === 0) return misfit(entry, 'a group', groupForm)
  const known = classGroups.map(({ name }) => name)
  const where = `The class file names ${known.join(', ')}; for another, begin with "- name:".`
  return fail(
    errorAt(place, `the class file has no group "${text}"`, nearestAdvice({ name: text, known, where })),
  )
}

function wordsTwice(group: MapEntry): readonly Problem[] {
  const more = valueAt(group, 'more words')
  if (more === undefined || valueAt(group, 'words') === undefined) return []
  return [
    errorAt(
      more.place,
      'a group has "words" and "more words"',
      'Write words: for words in place of those of the plan, or more words: for words beside them.',
    ),
  ]
}

/** Whether every group as typed has words of its own, so that the plan needs none. */
export function everyGroupHasWords(entry: Entry | undefined): boolean {
  if (entry?.kind !== 'list' || entry.items.length === 0) return false
  return entry.items.every(item =>
    ownWordLists(item).some(list => list.kind !== 'empty' && !isEmptyList(list)),
  )
}

function isEmptyList(entry: Entry): boolean {
  return entry.kind === 'list' && entry.items.length === 0
}

function ownWordLists(group: Entry): readonly Entry[] {
  return ['words', 'more words'].flatMap(key => valueAt(group, key) ?? [])
}

/** The words of all groups as typed; of a list that cannot be read, none. */
export function typedGroupWords(entry: Entry | undefined, context: WordContext): readonly TypedWord[] {
  if (entry?.kind !== 'list') return []
  return entry.items.flatMap(item => {
    return ownWordLists(item).flatMap(list => {
      const entries = wordEntries(list, context)
      return entries.ok ? typedWords(entries.value) : []
    })
  })
}

/** The names as typed, whether or not the group can be read. */
export function typedGroups(
  entry: Entry | undefined,
  classGroups: readonly ClassGroup[] = [],
): readonly string[] {
  if (isAll(entry)) return classGroups.map(({ name }) => name)
  if (entry?.kind !== 'list') return []
  return entry.items.flatMap(typedName).map(({ text }) => text)
}
