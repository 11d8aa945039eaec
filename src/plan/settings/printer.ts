import { andThen, fail, present, succeed } from '../../outcomes.js'
import { errorAt, type Outcome, type Problem } from '../../problems.js'
import { key, reading } from '../keys/key.js'
import type { Takes } from '../keys/takes.js'
import type { PrinterSetting } from '../plan.js'
import { foldName } from '../values/fold-name.js'
import { parseLength } from '../values/lengths.js'
import { choiceReader } from '../values/names.js'
import { type MapEntry, misfit } from '../yaml/entry.js'
import { readKeys, valueAt } from '../yaml/keys.js'

type Shift = NonNullable<PrinterSetting['backShift']>

const form = 'Write back shift: 1.2 mm right, 0.8 mm down, as read off the calibration sheet.'
/** A printer that is further off needs its paper guides set, not a number. */
const farthestMm = 20

const directions: Readonly<Record<string, { readonly axis: keyof Shift; readonly sign: 1 | -1 }>> = {
  right: { axis: 'rightMm', sign: 1 },
  left: { axis: 'rightMm', sign: -1 },
  down: { axis: 'downMm', sign: 1 },
  up: { axis: 'downMm', sign: -1 },
}

/** How a pile goes back matters only to a printer that it goes back into. */
function pileRules(map: MapEntry): readonly Problem[] {
  const pile = valueAt(map, 'pile')
  const passes = valueAt(map, 'passes')
  const twice = passes?.kind === 'text' && foldName(passes.text) === 'two'
  if (pile === undefined || twice) return []
  const advice = 'Write passes: two beside it if you feed your card a second time for its backs.'
  return [errorAt(pile.place, '"pile" says nothing without "passes: two"', advice)]
}

/** Between braces YAML ends a value at the comma: what follows, a key with nothing behind it, belongs to the shift. */
function rejoined(map: MapEntry): MapEntry {
  const pairs: MapEntry['pairs'][number][] = []
  for (const pair of map.pairs) {
    const before = pairs.at(-1)
    if (pair.value.kind === 'empty' && before?.value.kind === 'text' && partOfShift(pair.key)) {
      const text = `${before.value.text}, ${pair.key}`
      pairs[pairs.length - 1] = { ...before, value: { ...before.value, text } }
    } else pairs.push(pair)
  }
  return { ...map, pairs }
}

function partOfShift(text: string): { readonly axis: keyof Shift; readonly mm: number } | null {
  const [, amount = '', word = ''] = /^(.*?)\s*(?:to the )?([a-z]+)$/i.exec(text.trim()) ?? []
  const direction = directions[word.toLowerCase()]
  const mm = parseLength(amount)
  return direction && mm !== null ? { axis: direction.axis, mm: direction.sign * mm } : null
}

const shiftForm = String.raw`\d.*\b(?:right|left|up|down)\b`

const shiftTaken: Takes = {
  kind: 'form',
  what: 'how far the backs are moved, as read off the calibration sheet',
  samples: ['1.2 mm right, 0.8 mm down'],
  pattern: shiftForm,
}

const readBackShift = reading<Shift>(shiftTaken, (entry): Outcome<Shift> => {
  if (entry.kind !== 'text') return misfit(entry, 'a shift', form)
  const parts = entry.text.split(/\s*,\s*|\s+and\s+/).map(partOfShift)
  const axes = new Set(parts.map(part => part?.axis))
  const fine = parts.every(part => part !== null) && axes.size === parts.length
  if (!fine) return fail(errorAt(entry.place, `"${entry.text}" is no shift to a side and up or down`, form))
  const shift = { rightMm: 0, downMm: 0, ...Object.fromEntries(parts.map(part => [part.axis, part.mm])) }
  if (Math.abs(shift.rightMm) <= farthestMm && Math.abs(shift.downMm) <= farthestMm) return succeed(shift)
  const advice = `A shift is at most ${farthestMm} mm; beyond that, set the printer's paper guides.`
  return fail(errorAt(entry.place, `the shift "${entry.text}" is too large`, advice))
})

const printerKeys = {
  'back shift': key('how far backs are moved so that they land behind their fronts', readBackShift, {
    usual: 'not moved',
  }),
  passes: key(
    'whether your card is fed a second time for its backs',
    choiceReader('a value of "passes"', ['one', 'two']),
    { example: 'two', usual: 'one' },
  ),
  pile: key(
    'which sheet the printer takes first when the pile is put back; with passes: two',
    choiceReader('a value of "pile"', ['in order', 'last sheet first']),
    { example: 'last sheet first', usual: 'in order', beside: 'passes: two' },
  ),
}

/** In one line; without the quotes it is read as well, but coloured by editors as two keys. */
export const printerExample = '{back shift: "1.2 mm right, 0.8 mm down"}'

const printerTaken: Takes = {
  kind: 'keys',
  what: 'the printer',
  keys: () => printerKeys,
  needed: [],
  cutOff: shiftForm,
}

/** `printer: {back shift: 1.2 mm right, 0.8 mm down, passes: two, pile: last sheet first}` */
export const readPrinter = reading<PrinterSetting>(printerTaken, entry => {
  if (entry.kind !== 'map') return misfit(entry, 'what is known of the printer', form)
  const keys = readKeys(rejoined(entry), {
    what: 'the printer',
    readers: printerKeys,
    rules: pileRules(entry),
  })
  return andThen(keys, ({ values }) => {
    const { passes, pile = 'in order' } = values
    const handFed = passes === 'two' ? { pile } : undefined
    return succeed(present({ backShift: values['back shift'], handFed }))
  })
})
