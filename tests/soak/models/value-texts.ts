/** Texts of values, as a plan's YAML writes them on one line, made from what the plan's own readers say they take. */
import fc from 'fast-check'
import { type KeysTaken, type Takes, usuallyNeeded } from '../../../src/plan/keys/takes.js'

/** How far from what is taken a text may be. */
export type Quality = 'valid' | 'nearly' | 'hostile'

/** Words of every kind that a list may hold: known, invented, with marks, short and long. */
export const words = [
  ...['reed', 'marsh', 'thrush', 'spring', 'gnat', 'wren', 'leaf', 'moth', 'frog', 'perch', 'knot', 'cake'],
  ...[
    'flipping',
    'market',
    'bird',
    'table',
    'box',
    'queen',
    'I',
    'a',
    "don't",
    'half-term',
    'café',
    'zibble',
  ],
  ...['March', 'no', 'on', 'null', 'true', 'strength', 'through', 'onomatopoeia', 'otter', 'heron', 'quay'],
]

const hostileTexts: readonly string[] = [
  ...['', ' ', '0', '-1', '1e9', '.inf', '.nan', '0x10', '1.5', '99999999999999999999', '5x', '5x5', '0x0'],
  ...['3 mm', '-3 mm', '1e99 mm', '9999 pt', '20/0', '#zzz', '#000', 'null', '~', 'true', 'no', '2026-11-25'],
  ...['[]', '{}', '[[]]', '{a: b}', '[reed, [marsh]]', '&a reed', '*a', '!!int 3', '!wow x', '? x', '- x'],
  ...['"', "'", '"reed', "'reed", '|', '>', '@', '%', '`', '#', '"\\u202Ereed"', '"\\u0000"', '"\\e[31m"'],
  ...[
    '"\\uD800"',
    '🐸',
    'ñandú',
    'Ж',
    'a b',
    'reed, marsh',
    '../../secret.png',
    '/dev/zero',
    'words.txt',
    'con',
  ],
  ...['a'.repeat(31), 'a'.repeat(400), '"x\\ny"', '"<script>alert(1)</script>"', '"&amp;"', '"]]>"', '“red”'],
]

/** @param most so large a number at most, where the reader takes more: a valid plan is one that can be printed soon */
export function valueText(takes: Takes, quality: Quality, most: number): fc.Arbitrary<string> {
  const taken = takenText(takes, quality, most)
  switch (quality) {
    case 'valid':
      return taken
    case 'nearly':
      return fc.oneof({ weight: 24, arbitrary: taken }, { weight: 1, arbitrary: slipped(taken) })
    case 'hostile':
      return fc.oneof(
        { weight: 3, arbitrary: taken },
        { weight: 1, arbitrary: fc.constantFrom(...hostileTexts) },
        { weight: 1, arbitrary: slipped(taken) },
        {
          weight: 1,
          arbitrary: fc.string({ unit: 'grapheme', maxLength: 12 }).map(text => JSON.stringify(text)),
        },
      )
  }
}

/** With one sign more, one less, or one turned: what fingers do. */
function slipped(text: fc.Arbitrary<string>): fc.Arbitrary<string> {
  return fc
    .tuple(text, fc.nat(), fc.constantFrom('', '', 'x', ' ', ',', ':', '-', '"', '[', '}', '1'))
    .map(([typed, place, sign]) => {
      const at = place % (typed.length + 1)
      return `${typed.slice(0, at)}${sign}${typed.slice(sign === '' ? at + 1 : at)}`
    })
}

function takenText(takes: Takes, quality: Quality, most: number): fc.Arbitrary<string> {
  switch (takes.kind) {
    case 'text':
      return fc
        .array(fc.constantFrom(...words), { minLength: 1, maxLength: 5 })
        .map(parts => JSON.stringify(parts.join(' ').slice(0, takes.longest)))
    case 'number': {
      const largest = quality === 'hostile' ? takes.most : Math.max(takes.least, Math.min(takes.most, most))
      return fc.integer({ min: takes.least, max: largest }).map(String)
    }
    case 'yes or no':
      return fc.constantFrom('yes', 'no')
    case 'names':
      return fc.constantFrom(...takes.names, ...(takes.synonyms ?? []))
    case 'form':
      return fc.constantFrom(...takes.samples)
    case 'list': {
      const of = valueText(takes.of, quality, most)
      const list = fc
        .array(of, { minLength: takes.empty ? 0 : 1, maxLength: 4 })
        .map(entries => `[${entries.join(', ')}]`)
      return takes.alone ? fc.oneof(of, list) : list
    }
    case 'keys':
      return keysText(takes, quality, most).map(lines => `{${lines.join(', ')}}`)
    case 'any of':
      return fc.oneof(...takes.ways.map(way => valueText(way, quality, most)))
  }
}

/** `key: value` for the keys that are needed and a few of the others, those of a layout among them. */
export function keysText(taken: KeysTaken, quality: Quality, most: number): fc.Arbitrary<readonly string[]> {
  const layouts = taken.layouts?.()
  if (layouts === undefined) return someKeys(taken.keys(), usuallyNeeded(taken), quality, most)
  return fc.constantFrom(...layouts).chain(([layout, own]) => {
    const { layout: _layout, name: _name, ...others } = taken.keys()
    return fc
      .tuple(someKeys(others, [], quality, most), someKeys(own, [], quality, most))
      .map(([common, ofLayout]) => [`layout: ${layout}`, ...common, ...ofLayout])
  })
}

function someKeys(
  keys: ReturnType<KeysTaken['keys']>,
  needed: readonly string[],
  quality: Quality,
  most: number,
): fc.Arbitrary<readonly string[]> {
  const names = Object.keys(keys)
  return fc
    .subarray(names, { maxLength: Math.min(names.length, quality === 'valid' ? 2 : 4) })
    .chain(chosen => {
      const lines = [...new Set([...needed, ...chosen])].map(name =>
        valueText(keys[name]!.takes, quality, most).map(value => `${name}: ${value}`),
      )
      return fc.tuple(...lines)
    })
}
