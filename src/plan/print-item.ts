/** One item under `print:`: the keys that every item takes, and those of its layout. */
import { errorAt, type Outcome, type Place } from '../problems.js'
import { readContrast } from './contrast.js'
import { divisionOf } from './division.js'
import { type Entry, type MapEntry, misfit, oneOrMore, type Reader } from './entry.js'
import { readKeys, valueAt } from './keys.js'
import { lengthReader, sizeReader } from './lengths.js'
import { choiceReader, fileNameReader, foldName, nameReader } from './names.js'
import { nearestAdvice } from './nearest.js'
import { wholeNumberReader } from './numbers.js'
import { andThen, fail, present, record, succeed, together } from './outcomes.js'
import { paperReader } from './papers.js'
import type { Paper, PrintItem } from './plan.js'
import { readTypeSize } from './type-size.js'
import type { LayoutVocabulary, Vocabulary } from './vocabulary.js'
import { sameWord, wordText } from './word-text.js'

export interface ItemContext {
  readonly vocabulary: Vocabulary
  readonly font: Reader<string>
  /** The plan's own paper, for items that name none. */
  readonly paper: Paper
  /** The plan's words; left out where the word list could not be read at all. */
  readonly words?: readonly string[]
  readonly groups: readonly string[]
}

/** An item before its name is settled; the name is the teacher's, where she gave one. */
export interface UnnamedItem {
  readonly item: Omit<PrintItem, 'name'>
  readonly name?: { readonly text: string; readonly place: Place }
}

const form = 'Begin each item with "- layout:" and a name, such as - layout: word-cards.'
const whereAreLayouts = '`oaktag list layouts` shows all of them.'

/** An item with its keys, or the layout's name alone. */
export function readPrintItem(entry: Entry, context: ItemContext): Outcome<UnnamedItem> {
  if (entry.kind === 'map') return itemFromKeys(entry, context)
  if (entry.kind !== 'text') return misfit(entry, 'a thing to print', form)
  const keyPlace = entry.place
  return itemFromKeys(
    { kind: 'map', place: keyPlace, pairs: [{ key: 'layout', keyPlace, value: entry }] },
    context,
  )
}

function generalReaders(context: ItemContext) {
  const { vocabulary, font } = context
  const count = wholeNumberReader('a number', 1, 20)
  return {
    layout: nameReader({ what: 'a layout', known: [...vocabulary.layouts.keys()], where: whereAreLayouts }),
    name: fileNameReader("an item's name"),
    paper: paperReader(vocabulary.papers),
    orientation: choiceReader('an orientation', ['portrait', 'landscape']),
    margin: lengthReader('the margin', { minMm: 0, maxMm: 100 }),
    across: count,
    down: count,
    card: sizeReader('the card', { minMm: 10, maxMm: 600 }),
    gap: lengthReader('the gap', { minMm: 0, maxMm: 50 }),
    copies: wholeNumberReader('a number', 1, 500),
    size: readTypeSize,
    font,
    marks: choiceReader('a choice of marks', ['all', 'none']),
    words: subsetReader(context),
    groups: groupsReader(context.groups),
    border: nameReader({
      what: 'a border',
      known: ['none', ...vocabulary.lines],
      where: '`oaktag list lines` shows all lines.',
    }),
    order: choiceReader('an order', ['rows', 'stack', 'child']),
    back: choiceReader('a back', ['none', 'name', 'answer', 'clue', 'picture', 'pattern']),
    flip: choiceReader('a flip', ['long edge', 'short edge']),
    cut: choiceReader('a way of cutting', ['lines', 'ticks', 'none']),
    contrast: readContrast,
  } as const
}

function itemFromKeys(map: MapEntry, context: ItemContext): Outcome<UnnamedItem> {
  const general = generalReaders(context)
  const layout = layoutNamed(map, context.vocabulary)
  const optionReaders = Object.fromEntries(
    Object.entries(layout?.options ?? anyOptions(context.vocabulary)).map(([key, { read }]) => [key, read]),
  )
  const what = layout ? 'this item' : 'an item'
  const [generalMap, optionMap] = parted(map, Object.keys(general), Object.keys(optionReaders))
  const keys = readKeys(generalMap, { what, readers: general, furtherKeys: Object.keys(optionReaders) })
  const options = readKeys(optionMap, { what, readers: optionReaders })
  return andThen(record({ keys, options }), read => {
    const { values, places } = read.keys
    if (values.layout === undefined || !layout)
      return fail(errorAt(map.place, 'an item without its "layout"', form))
    const { name, across, down, card, margin, gap = 0, layout: layoutName, ...rest } = values
    const fallbacks = Object.entries(layout.options).map(([key, option]) => [key, option.fallback])
    return andThen(divisionOf(present({ across, down, card }), places.get('card')), division =>
      succeed({
        ...present({ name }),
        item: {
          place: map.place,
          paper: context.paper,
          copies: 1,
          order: 'rows' as const,
          back: 'none' as const,
          flip: 'long edge' as const,
          cut: 'lines' as const,
          ...rest,
          layout: layoutName,
          division,
          gapMm: gap,
          ...present({ marginMm: margin }),
          options: { ...Object.fromEntries(fallbacks), ...read.options.values },
        },
      }),
    )
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
  const accepted = { expects: '', fallback: undefined, read: () => succeed(undefined) }
  const keys = [...layouts.values()].flatMap(({ options }) => Object.keys(options))
  return Object.fromEntries(keys.map(key => [key, accepted]))
}

/** The layout's own keys apart from all others; a key that is both is a general one. */
function parted(map: MapEntry, general: readonly string[], own: readonly string[]): [MapEntry, MapEntry] {
  const ownFolded = new Set(own.map(foldName))
  for (const key of general) ownFolded.delete(foldName(key))
  const isOwn = (key: string) => ownFolded.has(foldName(key))
  return [
    { ...map, pairs: map.pairs.filter(({ key }) => !isOwn(key)) },
    { ...map, pairs: map.pairs.filter(({ key }) => isOwn(key)) },
  ]
}

/** Words of the plan, each once, as the plan spells them. */
function subsetReader({ words }: ItemContext): Reader<readonly string[]> {
  const known = new Map((words ?? []).map(word => [sameWord(word), word]))
  const readOne: Reader<string> = entry => {
    const advice = 'Write words of the plan, a dash and a word on each line.'
    if (entry.kind !== 'text') return misfit(entry, 'a word of the plan', advice)
    if (words === undefined) return wordText(entry.text, entry.place)
    const word = known.get(sameWord(entry.text))
    if (word !== undefined) return succeed(word)
    const nearest = nearestAdvice(
      sameWord(entry.text),
      [...known.values()],
      'An item prints words of the plan.',
    )
    return fail(errorAt(entry.place, `"${entry.text}" is not among the words of the plan`, nearest))
  }
  return entry => listOfNames(entry, readOne, 'word')
}

/** Groups of the plan, each once; `none` for the class alone. */
function groupsReader(groups: readonly string[]): Reader<readonly string[]> {
  const readOne = nameReader({ what: 'a group', known: groups, where: 'Groups are named under "groups:".' })
  return entry => {
    if (entry.kind === 'text' && foldName(entry.text) === 'none') return succeed([])
    return listOfNames(entry, readOne, 'group')
  }
}

function listOfNames(entry: Entry, readOne: Reader<string>, what: string): Outcome<readonly string[]> {
  const items = oneOrMore(entry)
  if (items.length === 0)
    return misfit(entry, `at least one ${what}`, `Write a ${what}, or take the key out.`)
  const seen = new Set<string>()
  return together(
    items.map(item =>
      andThen(readOne(item), name => {
        if (!seen.has(name)) return succeed(seen.add(name) && name)
        return fail<string>(errorAt(item.place, `"${name}" stands twice`, 'Take one of the two out.'))
      }),
    ),
  )
}
