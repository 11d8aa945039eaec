/** One item under `print:`: the keys that every item takes, and those of its layout. */

import { andThen, present, record, succeed } from '../../outcomes.js'
import type { Outcome, Place } from '../../problems.js'
import { reading, type ValueReader } from '../keys/key.js'
import type { Takes } from '../keys/takes.js'
import type { PrintItem } from '../plan.js'
import { foldName } from '../values/fold-name.js'
import { type Option, optionKeys } from '../values/options.js'
import { otherNames } from '../values/other-names.js'
import type { LayoutVocabulary, Vocabulary } from '../vocabulary.js'
import { type Entry, type MapEntry, misfit } from '../yaml/entry.js'
import { readKeys, valueAt } from '../yaml/keys.js'
import { divisionOf, type ItemContext, itemKeys, itemRules, itemTaken } from './item-keys.js'

/** An item before its name is settled; the name is the teacher's, where she gave one. */
export interface UnnamedItem {
  readonly item: Omit<PrintItem, 'name' | 'givenName'>
  readonly name?: { readonly text: string; readonly place: Place }
}

type ItemKeys = ReturnType<typeof itemKeys>

/** Reads an item with its keys, or the layout's name alone. */
export function printItemReader(context: ItemContext): ValueReader<UnnamedItem> {
  const keys = itemKeys(context)
  const takes: Takes = { kind: 'any of', ways: [keys.layout.takes, itemTaken(context)] }
  return reading(takes, entry => {
    if (entry.kind === 'map') return itemFromKeys(entry, keys, context)
    if (entry.kind !== 'text') {
      return misfit(entry, 'a thing to print', 'Write a layout, such as - layout: word-cards.')
    }
    return itemFromKeys(layoutAlone(entry), keys, context)
  })
}

function layoutAlone(entry: Entry): MapEntry {
  const { place } = entry
  return { kind: 'map', place, pairs: [{ key: 'layout', keyPlace: place, value: entry }] }
}

function itemFromKeys(map: MapEntry, readers: ItemKeys, context: ItemContext): Outcome<UnnamedItem> {
  const layout = layoutNamed(map, context.vocabulary)
  const own = layout?.options ?? anyOptions(context.vocabulary)
  const ownKeys = optionKeys(own)
  const what = layout ? 'this item' : 'an item'
  const others = otherNames('key', context.vocabulary)
  const [general, special] = parted(map, Object.keys(readers), Object.keys(own))
  const read = record({
    keys: readKeys(general, { what, readers, rules: itemRules(map), furtherKeys: Object.keys(own), others }),
    options: readKeys(special, { what, readers: ownKeys }),
  })
  return andThen(read, ({ keys, options }) => {
    const { name, across, down, card, margin, gap = 0, layout: layoutName, ...rest } = keys.values
    const fallbacks = Object.entries(own).map(([key, { fallback }]) => [key, fallback])
    const item: Omit<PrintItem, 'name' | 'givenName'> = {
      place: map.place,
      paper: layout?.paper ?? context.paper,
      copies: 1,
      order: 'rows',
      back: 'none',
      flip: 'long edge',
      cut: 'lines',
      key: 'cover',
      cover: true,
      ...rest,
      layout: layoutName!,
      division: divisionOf(present({ across, down, card })),
      gapMm: gap,
      ...present({ marginMm: margin }),
      options: { ...Object.fromEntries(fallbacks), ...options.values },
    }
    return succeed({ item, ...present({ name }) })
  })
}

/** The layout that the item names, if it can be told. */
function layoutNamed(map: MapEntry, { layouts }: Vocabulary): LayoutVocabulary | undefined {
  const value = valueAt(map, 'layout')
  if (value?.kind !== 'text') return undefined
  return [...layouts].find(([name]) => foldName(name) === foldName(value.text))?.[1]
}

/** Where the layout is unknown, a key that any layout knows is not held against the item. */
function anyOptions({ layouts }: Vocabulary): LayoutVocabulary['options'] {
  const accepted: Option<unknown> = {
    does: '',
    takes: { kind: 'text', longest: 0 },
    fallback: undefined,
    read: () => succeed(undefined),
    gives: (value): value is unknown => value === undefined,
  }
  const keys = [...layouts.values()].flatMap(({ options }) => Object.keys(options))
  return Object.fromEntries(keys.map(key => [key, accepted]))
}

/** The layout's own keys apart from all others; a key that is both is a general one. */
function parted(map: MapEntry, general: readonly string[], own: readonly string[]): [MapEntry, MapEntry] {
  const generalFolded = new Set(general.map(foldName))
  const ownFolded = new Set(own.map(foldName).filter(key => !generalFolded.has(key)))
  const isOwn = (key: string) => ownFolded.has(foldName(key))
  return [
    { ...map, pairs: map.pairs.filter(({ key }) => !isOwn(key)) },
    { ...map, pairs: map.pairs.filter(({ key }) => isOwn(key)) },
  ]
}
