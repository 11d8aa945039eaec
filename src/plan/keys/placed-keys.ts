/** All keys that can stand in a plan or a class file, each once for every place where it can stand. */
import { foldName } from '../values/fold-name.js'
import { inWords } from '../values/in-words.js'
import type { Key, KeysTaken, Takes } from './takes.js'

export interface PlacedKey {
  readonly name: string
  readonly key: Key<unknown>
  readonly place: KeyPlace
}

/** A group of keys, and the way to it from the top of the file. */
export interface KeyPlace {
  /** With its article: `a mark`, `an item of bingo`. */
  readonly what: string
  /** Of a key that items of this layout alone take. */
  readonly layout?: string
  readonly taken: KeysTaken
  /** A key with its value that stands beside most others there; empty where none is needed. */
  readonly beside: string
  /** From where the group stands; undefined at the top of the file. */
  readonly under?: { readonly key: string; readonly isList: boolean; readonly place: KeyPlace }
}

/** A group of keys that can stand at several places is told of at the first. */
export function placedKeys(top: KeysTaken): readonly PlacedKey[] {
  const found: PlacedKey[] = []
  const seen = new Set<string>()
  const enter = (place: KeyPlace): void => {
    if (seen.has(place.what)) return
    seen.add(place.what)
    const keys = Object.entries(place.taken.keys())
    found.push(...keys.map(([name, key]) => ({ name, key, place })))
    for (const [layout, options] of place.taken.layouts?.() ?? []) {
      const ofLayout: KeyPlace = {
        ...place,
        what: `an item of ${layout}`,
        layout,
        beside: `layout: ${layout}`,
      }
      found.push(...Object.entries(options).map(([name, key]) => ({ name, key, place: ofLayout })))
    }
    for (const [name, key] of keys)
      for (const { taken, isList } of groupsIn(key.takes, false)) {
        const { beside = '' } = taken
        enter({ what: taken.what, taken, beside, under: { key: name, isList, place } })
      }
  }
  enter({ what: top.what, taken: top, beside: '' })
  return found
}

/** The groups of keys that a value may be or hold. */
function groupsIn(
  takes: Takes,
  isList: boolean,
): readonly { readonly taken: KeysTaken; readonly isList: boolean }[] {
  switch (takes.kind) {
    case 'keys':
      return [{ taken: takes, isList }]
    case 'list':
      return groupsIn(takes.of, true)
    case 'any of':
      return takes.ways.flatMap(way => groupsIn(way, isList))
    default:
      return []
  }
}

/** The key in its place, as lines of a plan. */
export function exampleOf({ name, key, place }: PlacedKey): readonly string[] {
  const own = { name, beside: key.text.beside ?? place.beside, line: `${name}: ${key.text.example}` }
  return withinPlace([...linesBeside(own, place), own.line], place)
}

interface Beside {
  readonly name: string
  /** A key with its value; empty where none is needed. */
  readonly beside: string
}

/** Keys that must be there too: `layout` in an item, `distance` where `acuity` is. */
function linesBeside({ name, beside }: Beside, { taken, under }: KeyPlace): readonly string[] {
  if (under === undefined) return []
  const told = beside === '' || beside.startsWith(`${name}: `) ? [] : [beside]
  const given = [name, ...told.map(line => line.split(':', 1)[0])]
  const needed = taken.needed.flatMap(each => {
    const ways = [each].flat()
    return ways.some(way => given.includes(way)) ? [] : ways.slice(0, 1)
  })
  return [...told, ...needed.map(each => `${each}: ${taken.keys()[each]!.text.example}`)]
}

function withinPlace(lines: readonly string[], { under }: KeyPlace): readonly string[] {
  if (under === undefined) return lines
  const [first = '', ...more] = lines
  const inner = under.isList
    ? [`  - ${first}`, ...more.map(line => `    ${line}`)]
    : lines.map(line => `  ${line}`)
  const { place, key } = under
  const others = linesBeside({ name: key, beside: place.beside }, place)
  return withinPlace([...others, `${key}:`, ...inner], place)
}

/** Where keys stand, for one that is written elsewhere: folded names, each with a sentence. */
export function keysInSentences(keys: readonly PlacedKey[]): ReadonlyMap<string, string> {
  const byName = new Map<string, PlacedKey[]>()
  for (const placed of keys) {
    const folded = foldName(placed.name)
    byName.set(folded, [...(byName.get(folded) ?? []), placed])
  }
  return new Map([...byName].map(([folded, placed]) => [folded, sentenceOf(placed)] as const))
}

function sentenceOf(placed: readonly PlacedKey[]): string {
  const elsewhere = placed.filter(({ place }) => place.layout === undefined)
  const ofLayouts = placed.filter(({ place }) => place.layout !== undefined)
  const layouts = inWords(ofLayouts.map(({ place }) => place.layout!))
  // Layouts that take it are named together: there may be many.
  const places = [
    ...new Set([
      ...elsewhere.map(({ place }) => placeInWords(place)),
      ...ofLayouts.slice(0, 1).map(({ place }) => placeInWords({ ...place, what: `an item of ${layouts}` })),
    ]),
  ]
  const listed =
    places.length < 2 ? places.join('') : `${places.slice(0, -1).join(', of ')} and of ${places.at(-1)}`
  return `"${placed[0]!.name}" is a key of ${listed}.`
}

/** `a mark under "marks:"`; the plan itself is no place under another. */
export function placeInWords({ what, under }: KeyPlace): string {
  if (under === undefined) return what === 'a plan' ? 'the plan itself' : what
  return what.includes('"') ? what : `${what} under "${under.key}:"`
}
