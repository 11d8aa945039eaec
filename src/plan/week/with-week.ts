/** The items of a plan that has the week's whole set made: its parts, less those left out, and what `print:` names. */
import { andThen, fail, present, succeed, together } from '../../outcomes.js'
import { errorAt, type Outcome, type Place } from '../../problems.js'
import type { ItemContext } from '../items/item-keys.js'
import { printItemReader } from '../items/print-item.js'
import { unusedItemName } from '../items/print-list.js'
import type { PrintItem } from '../plan.js'
import { foldName } from '../values/fold-name.js'
import type { MapEntry, Pair } from '../yaml/entry.js'
import type { WeekWish } from './week-key.js'
import { type WeekPart, weekParts } from './week-parts.js'
import { weekDays } from './week-place.js'

export interface WeekRequest {
  readonly week: WeekWish
  /** What the plan prints beside it. */
  readonly print: readonly PrintItem[]
  readonly context: ItemContext
  /** Whether the class has words of its own, beside those of its groups. */
  readonly classHasWords: boolean
  /** Whether the teacher writes that nothing is marked. */
  readonly marksNothing: boolean
}

/**
 * In the order of the week's days. An item of the plan that is what a part would be stands in its place: so the teacher
 * changes one.
 */
export function withWeek({
  week,
  print,
  context,
  classHasWords,
  marksNothing,
}: WeekRequest): Outcome<readonly PrintItem[]> {
  const { layouts } = context.vocabulary
  const left = weekParts.filter(
    part => layouts.has(part.layout) && !isLeftOut(part, week) && !(marksNothing && part.ofMarks),
  )
  if (left.length === 0 && print.length === 0) {
    const advice = 'Leave fewer parts out, or write print: and what to print.'
    return fail(errorAt(week.place, 'the week goes without all of its parts', advice))
  }
  const taken = [...print]
  const read = printItemReader(context)
  const parts = left.map((part): Outcome<readonly PrintItem[]> => {
    const hers = print.filter(item => standsFor(item, part))
    if (hers.length > 0) return succeed(hers)
    return andThen(read(partEntry(part, week.place, classHasWords)), ({ item }) => {
      const name = unusedItemName(part.name, taken, context.groups)
      const made = { ...item, name, ...present({ givenName: part.title }), ofWeek: true as const }
      taken.push(made)
      return succeed([made])
    })
  })
  return andThen(together(parts), found => {
    const items = [...new Set([...found.flat(), ...print])]
    const dayOf = ({ layout }: PrintItem) => weekDays.indexOf(layouts.get(layout)?.inWeek.day ?? 'storing')
    return succeed(items.toSorted((a, b) => dayOf(a) - dayOf(b)))
  })
}

function isLeftOut({ name, layout }: WeekPart, { without }: WeekWish): boolean {
  return without.includes(name) || without.includes(layout)
}

function standsFor(item: PrintItem, { layout, keys = {} }: WeekPart): boolean {
  if (item.layout !== layout) return false
  return Object.entries(keys).every(([key, value]) => {
    const chosen = item.options[key]
    return typeof chosen === 'string' && foldName(chosen) === foldName(value)
  })
}

function partEntry(part: WeekPart, place: Place, classHasWords: boolean): MapEntry {
  const { layout, keys, settings, forClass } = part
  const forGroups = forClass === true && classHasWords ? { groups: 'none' } : {}
  const pairs = Object.entries({ layout, ...keys, ...settings, ...forGroups }).map(
    ([key, text]): Pair => ({ key, keyPlace: place, value: { kind: 'text', text, place } }),
  )
  return { kind: 'map', place, pairs }
}
