/** `groups:`, other children in the same week, with words or a size of their own. */

import { andThen, failWith, outcomeOf, present, succeed, together } from '../../outcomes.js'
import { errorAt, type Outcome, type Problem } from '../../problems.js'
import { key, reading, type ValueReader } from '../keys/key.js'
import type { Takes } from '../keys/takes.js'
import { tooMany } from '../most-entries.js'
import type { PlanGroup, PlanWord } from '../plan.js'
import { type ReviewSetting, reviewReader } from '../review/review-key.js'
import { foldName } from '../values/fold-name.js'
import { fileNameReader } from '../values/names.js'
import { otherNames } from '../values/other-names.js'
import { repetitions } from '../values/repetitions.js'
import { typeSizeReader } from '../values/type-size.js'
import type { Vocabulary } from '../vocabulary.js'
import { readWords, type TypedWord, typedWords } from '../words/list-words.js'
import type { WordContext } from '../words/word-entry.js'
import { wordEntries, wordListTaken } from '../words/word-list.js'
import { type Entry, type MapEntry, misfit, type TextEntry } from '../yaml/entry.js'
import { readKeys, valueAt } from '../yaml/keys.js'
import { readContrast } from './contrast.js'
import { marksReader } from './marks.js'

const form = 'Begin each group with "- name:" and its name.'

export interface GroupContext extends WordContext {
  readonly font: ValueReader<string>
  readonly vocabulary: Vocabulary
}

export function groupListReader(context: GroupContext): ValueReader<readonly ReadGroup[]> {
  const of: Takes = {
    kind: 'keys',
    what: 'a group',
    keys: () => groupKeys(context),
    needed: ['name'],
    beside: 'name: Otters',
  }
  const takes: Takes = { kind: 'list', of, alone: false, empty: true }
  return reading(takes, entry => readGroups(entry, context))
}

function groupKeys(context: GroupContext) {
  const { vocabulary, font } = context
  return {
    name: key("the group's name", fileNameReader("a group's name"), { example: 'Otters' }),
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
    marks: key('what is marked in its words, in place of the marks of the plan', marksReader(vocabulary), {
      usual: 'the marks of the plan',
    }),
    size: key('how large its words are at least', typeSizeReader(vocabulary), {
      example: 'large',
      usual: "the class's size",
    }),
    font: key('its typeface', font, { example: 'lexend', usual: 'the font of the plan' }),
    contrast: key('its colours of ink and card', readContrast, { usual: 'those of the plan' }),
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
  if (entry.kind !== 'list') return misfit(entry, 'a list of groups', form)
  const tooLong = tooMany('groups', entry.items, entry.place)
  if (tooLong.length > 0) return failWith(tooLong)
  const groups = together(entry.items.map(item => readGroup(item, context)))
  const problems = [...groups.problems, ...repeatedNames(typedGroups(entry))]
  return groups.ok ? outcomeOf(groups.value, problems) : failWith(problems)
}

/** A group as it is read: the words of the plan come to its own later. */
export interface ReadGroup extends PlanGroup {
  readonly moreWords?: readonly PlanWord[]
  readonly review?: ReviewSetting
}

function readGroup(entry: Entry, context: GroupContext): Outcome<ReadGroup> {
  if (entry.kind !== 'map') return misfit(entry, 'a group', form)
  const keys = readKeys(entry, {
    what: 'a group',
    readers: groupKeys(context),
    others: otherNames('key', context.vocabulary),
    rules: [
      ...(valueAt(entry, 'name') ? [] : [errorAt(entry.place, 'a group has no "name"', form)]),
      ...wordsTwice(entry),
    ],
  })
  return andThen(keys, ({ values: { name, words = [], 'more words': moreWords, ...rest } }) =>
    succeed({ name: name!.text, place: name!.place, words, ...present({ moreWords }), ...present(rest) }),
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
