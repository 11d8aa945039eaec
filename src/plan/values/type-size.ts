import { andThen, fail, succeed } from '../../outcomes.js'
import { errorAt, type Outcome } from '../../problems.js'
import { key, reading, type ValueReader } from '../keys/key.js'
import type { Takes } from '../keys/takes.js'
import type { TypeSize } from '../plan.js'
import type { Vocabulary } from '../vocabulary.js'
import { type Entry, type MapEntry, misfit, type Reader, type TextEntry } from '../yaml/entry.js'
import { readKeys } from '../yaml/keys.js'
import { acuityTakes, parseAcuity, readAcuitySize } from './acuity.js'
import { foldName } from './fold-name.js'
import { lengthReader, parseLength } from './lengths.js'
import { otherNames } from './other-names.js'

const form = 'Write normal, large, a type size such as 24 pt, or x-height 6 mm.'
const exactForm =
  'Write exactly 28 pt or exactly x-height 6 mm; normal and large leave the size to the sheet.'
/** Below 6 pt nothing is printed for children; above 400 pt a letter fills the page. */
const [smallestPt, largestPt] = [6, 400]
const xHeightRange = { minMm: 1, maxMm: 100 }

type MeasuredSize = Extract<TypeSize, { readonly kind: 'points' | 'x-height' }>

const xHeightLength = lengthReader('an x-height', xHeightRange)

const readXHeight = reading<MeasuredSize>(xHeightLength.takes, entry =>
  andThen(xHeightLength(entry), mm => succeed({ kind: 'x-height', mm })),
)

const readFor = reading<TypeSize>(acuityTakes, entry =>
  entry.kind === 'map'
    ? readAcuitySize(entry)
    : misfit(entry, 'an acuity and a distance', 'Write for: {acuity: 20/200, distance: 40 cm}.'),
)

const sizeKeys = {
  for: key('a size reckoned from what one child can read; the vision specialist decides', readFor, {
    example: '{acuity: 20/200, distance: 40 cm}',
  }),
  'x-height': key('the height of a small x', readXHeight),
}

const sizeTaken: Takes = {
  kind: 'any of',
  ways: [
    { kind: 'names', what: 'a size', names: ['normal', 'large'] },
    {
      kind: 'form',
      what: 'a type size or the height of a small x, "exactly" before it where it is to hold even if it is small',
      samples: ['24 pt', 'x-height 6 mm', 'exactly 28 pt'],
      pattern: String.raw`^(?:exactly\b[\s_-]*)?(?:x[\s_-]*height\s*:?\s*\S.*|[\d.]+\s*(?:pt|points?))$`,
    },
    { kind: 'keys', what: 'a size', keys: () => sizeKeys, needed: [] },
  ],
}

/** Reads a size; where it is none, says so with what the trade's words for sizes are here. */
export function typeSizeReader(vocabulary: Vocabulary): ValueReader<TypeSize> {
  return reading(sizeTaken, entry => {
    const outcome = readTypeSize(entry)
    if (outcome.ok || entry.kind !== 'text') return outcome
    const instead = otherNames('size', vocabulary)().get(foldName(entry.text))
    return instead === undefined
      ? outcome
      : fail(errorAt(entry.place, `"${entry.text}" is no type size`, instead))
  })
}

/**
 * `normal`, `large`, `24 pt`, `x-height 6 mm`, or a map with `for` or `x-height`; with `exactly` before a measure, for a
 * size that is no floor.
 */
const readTypeSize: Reader<TypeSize> = entry => {
  if (entry.kind === 'map') return sizeFromMap(entry)
  if (entry.kind !== 'text') return misfit(entry, 'a type size', form)
  const exactly = /^exactly\b[\s_-]*(.*)$/i.exec(entry.text)
  if (exactly) return exactSize({ ...entry, text: exactly[1]! }, entry.text)
  const folded = foldName(entry.text)
  if (folded === 'normal' || folded === 'large') return succeed({ kind: folded })
  return measuredSize(entry)
}

function measuredSize(entry: TextEntry): Outcome<MeasuredSize> {
  const xHeight = /^x[\s_-]*height\s*:?\s*(.+)$/i.exec(entry.text)
  if (xHeight) return readXHeight({ ...entry, text: xHeight[1]! })
  return pointSize(entry.text, entry)
}

function exactSize(entry: TextEntry, written: string): Outcome<TypeSize> {
  if (!/\d/.test(entry.text)) {
    return fail(errorAt(entry.place, `"${written}" names no size to hold`, exactForm))
  }
  return andThen(measuredSize(entry), size => succeed({ ...size, exactly: true }))
}

function pointSize(text: string, entry: Entry): Outcome<MeasuredSize> {
  const points = /^(\d+(?:\.\d+)?|\.\d+)\s*(?:pt|points?)$/i.exec(text)
  if (points) {
    const value = Number(points[1])
    if (value >= smallestPt && value <= largestPt) return succeed({ kind: 'points', points: value })
    const advice = `Give a size from ${smallestPt} pt to ${largestPt} pt.`
    return fail(errorAt(entry.place, `"${text}" is too ${value < smallestPt ? 'small' : 'large'}`, advice))
  }
  if (parseAcuity(text) !== null && /\//.test(text)) {
    const advice = `An acuity needs the distance at which the child reads: size: {for: {acuity: ${text}, distance: 40 cm}}.`
    return fail(errorAt(entry.place, `"${text}" is an acuity, and no type size by itself`, advice))
  }
  const bare = parseLength(text) === null ? null : text.replace(/[^\d.].*$/, '')
  const advice = bare
    ? `Write ${bare} pt for the type size, or x-height ${bare} mm for the height of an x.`
    : form
  return fail(errorAt(entry.place, `"${text}" is no type size`, advice))
}

function sizeFromMap(map: MapEntry): Outcome<TypeSize> {
  const keys = readKeys(map, { what: 'a size', readers: sizeKeys })
  return andThen(keys, ({ values }) => {
    const sizes = Object.values(values)
    return sizes.length === 1
      ? succeed(sizes[0]!)
      : fail(errorAt(map.place, 'a size must be said in one way', form))
  })
}
