/** Crosswords: the words of a list laid across one another, found by search. */
import type { Word } from '../../words/word.js'
import { type Generator, shuffle } from '../random.js'
import { type Extent, extentOf, extentWith, type Placed, sidesOf, sizeOf } from './crossword-places.js'
import { packSymmetric } from './symmetric-crossword.js'

export interface CrosswordEntry {
  readonly word: string
  /** From 0. */
  readonly row: number
  readonly column: number
  /** From top to bottom, or else from left to right. */
  readonly down: boolean
  /** As the clues are numbered: from 1, in reading order of where words begin. */
  readonly number: number
}

export interface Crossword {
  readonly columns: number
  readonly rows: number
  readonly entries: readonly CrosswordEntry[]
  /** Words for which no place was found. */
  readonly left: readonly string[]
}

export interface CluedEntry {
  readonly number: number
  readonly row: number
  readonly column: number
  readonly down: boolean
  readonly word: Word
  readonly clue: string
}

export interface CrosswordOnCard {
  /** `.` where no letter stands. */
  readonly rows: readonly string[]
  readonly entries: readonly CluedEntry[]
}

export interface CrosswordWanted {
  /** In small letters, each once. */
  readonly words: readonly string[]
  /** No grid is wider or higher. */
  readonly most: { readonly columns: number; readonly rows: number }
  /** Which side is to be the longer one; wide where the plan's page has clues below the grid. */
  readonly shape?: 'wide' | 'tall'
  /** How often the words are laid out anew; the best layout is taken. */
  readonly attempts?: number
}

const ATTEMPTS = 80
/** So many times as many while a word is left over: one list in eight needs them. */
const MORE_ATTEMPTS = 4
/** An attempt tries each word against each: up to forty words it is made as often as that, of hundreds a few times. */
const TRIED_IN_ALL = 320 * 40 * 40

/** The layout that holds most words; of those, the one of least extent and most crossings. */
export function packCrossword(
  { words, most, shape, attempts = ATTEMPTS }: CrosswordWanted,
  generator: Generator,
): Crossword {
  let best: Packing | undefined
  const isWhole = () => best?.placed.length === words.length
  const affordable = Math.max(1, Math.floor(TRIED_IN_ALL / words.length ** 2))
  const until = () => Math.min(affordable, isWhole() ? attempts : attempts * MORE_ATTEMPTS)
  for (let attempt = 0; attempt < until(); attempt++) {
    const packing = pack(words, most, generator)
    if (best === undefined || isBetter(packing, best)) best = packing
  }
  const packing = isWhole() ? symmetricOr(best!, { words, most }, generator) : best!
  return crosswordOf(laid(packing, shape, most), words)
}

/** So much larger a symmetric grid may be, as `sizeOf` counts: a cell more on one side. */
const LARGER = 2

/** The same words in a grid with a half-turn symmetry, as printed crosswords have by custom, where one is found. */
function symmetricOr(
  best: Packing,
  { words, most }: Pick<CrosswordWanted, 'words' | 'most'>,
  generator: Generator,
): Laid {
  const mostSize = sizeOf(best.extent) + LARGER
  const placed = packSymmetric({ words, most, mostSize }, generator)
  if (placed === undefined) return best
  return { placed, extent: extentOf(placed) }
}

/** Across and down are exchanged where the longer side is not the one that is wanted, and there is room for it. */
function laid(packing: Laid, shape: CrosswordWanted['shape'], most: CrosswordWanted['most']): Laid {
  const [height, width] = sidesOf(packing.extent)
  const isOther = shape === 'wide' ? height > width : shape === 'tall' && width > height
  if (!isOther || height > most.columns || width > most.rows) return packing
  const placed = packing.placed.map(
    ({ word, row, column, down }): Placed => ({ word, row: column, column: row, down: !down }),
  )
  return { placed, extent: extentOf(placed) }
}

interface Laid {
  readonly placed: readonly Placed[]
  readonly extent: Extent
}

interface Packing extends Laid {
  readonly crossings: number
}

/** Letters by place; the grid grows in every direction, so rows and columns may be negative. */
type Letters = Map<number, string>

/** From a place to the one below it: more than any grid and the words that are tried beyond its edges are wide. */
const ROW = 1 << 16

const placeAt = (row: number, column: number): number => row * ROW + column

/** The letter with this number of a word that begins there. */
const placeAlong = ({ row, column, down }: Placed, index: number): number =>
  placeAt(row, column) + index * (down ? ROW : 1)

function pack(words: readonly string[], most: CrosswordWanted['most'], generator: Generator): Packing {
  const letters: Letters = new Map()
  const placed: Placed[] = []
  let crossings = 0
  // Long words first, but not always in the same order.
  let waiting = shuffle(words, generator).sort((a, b) => b.length - a.length + (generator.below(5) - 2))
  for (let isGrowing = true; isGrowing; ) {
    isGrowing = false
    for (const word of waiting) {
      const places = placed.length === 0 ? [firstPlace(word)] : crossingPlaces(word, placed, letters)
      const extent = extentOf(placed)
      const fitting = places.filter(place => hasRoom(extentWith(extent, place), most))
      if (fitting.length === 0) continue
      const chosen = bestPlace(fitting, extent, letters, generator)
      crossings += crossedBy(chosen, letters)
      put(chosen, letters)
      placed.push(chosen)
      isGrowing = true
    }
    waiting = waiting.filter(word => !placed.some(each => each.word === word))
  }
  return { placed, crossings, extent: extentOf(placed) }
}

function firstPlace(word: string): Placed {
  return { word, row: 0, column: 0, down: false }
}

/** Where the word can cross one that stands, touching no other. Tried more often than anything else here. */
function crossingPlaces(word: string, placed: readonly Placed[], letters: Letters): readonly Placed[] {
  const own = [...word]
  const places: Placed[] = []
  for (const other of placed) {
    const down = !other.down
    for (const [at, letter] of [...other.word].entries()) {
      const [row, column] = [other.row + (down ? 0 : at), other.column + (down ? at : 0)]
      for (let index = own.indexOf(letter); index >= 0; index = own.indexOf(letter, index + 1)) {
        const place = { word, row: row - (down ? index : 0), column: column - (down ? 0 : index), down }
        if (canStand(place, own, letters)) places.push(place)
      }
    }
  }
  return places
}

function canStand(place: Placed, word: readonly string[], letters: Letters): boolean {
  const beside = place.down ? 1 : ROW
  if (letters.has(placeAlong(place, -1)) || letters.has(placeAlong(place, word.length))) return false
  return word.every((letter, index) => {
    const at = placeAlong(place, index)
    const standing = letters.get(at)
    // Two letters side by side are of a word that lies there already, as all lies in ball.
    if (standing !== undefined)
      return standing === letter && (index === 0 || !letters.has(placeAlong(place, index - 1)))
    return !letters.has(at - beside) && !letters.has(at + beside)
  })
}

/** Of least extent, then with most crossings; one of the best by chance. */
function bestPlace(
  places: readonly Placed[],
  extent: Extent,
  letters: Letters,
  generator: Generator,
): Placed {
  const rated = places.map(place => ({
    place,
    cost: sizeOf(extentWith(extent, place)) - 3 * crossedBy(place, letters),
  }))
  const least = Math.min(...rated.map(({ cost }) => cost))
  const good = rated.filter(({ cost }) => cost <= least + 1)
  return good[generator.below(good.length)]!.place
}

function crossedBy(place: Placed, letters: Letters): number {
  return [...place.word].filter((_, index) => letters.has(placeAlong(place, index))).length
}

function put(place: Placed, letters: Letters): void {
  for (const [index, letter] of [...place.word].entries()) letters.set(placeAlong(place, index), letter)
}

function hasRoom({ top, left, bottom, right }: Extent, { columns, rows }: CrosswordWanted['most']): boolean {
  return right - left <= columns && bottom - top <= rows
}

function isBetter(a: Packing, b: Packing): boolean {
  const byWords = a.placed.length - b.placed.length
  const bySize = sizeOf(b.extent) - sizeOf(a.extent)
  return byWords > 0 || (byWords === 0 && (bySize > 0 || (bySize === 0 && a.crossings > b.crossings)))
}

function crosswordOf({ placed, extent }: Laid, words: readonly string[]): Crossword {
  const { top, left, bottom, right } = extent
  const moved = placed
    .map(place => ({ ...place, row: place.row - top, column: place.column - left }))
    .sort((a, b) => a.row - b.row || a.column - b.column || Number(a.down) - Number(b.down))
  const starts = [...new Set(moved.map(({ row, column }) => `${row} ${column}`))]
  return {
    columns: right - left,
    rows: bottom - top,
    entries: moved.map(place => ({ ...place, number: starts.indexOf(`${place.row} ${place.column}`) + 1 })),
    left: words.filter(word => !placed.some(each => each.word === word)),
  }
}

/** The letters of the grid, row by row, `.` where none stands. */
export function crosswordRows({ columns, rows, entries }: Crossword): readonly string[] {
  const letters: Letters = new Map()
  for (const entry of entries) put(entry, letters)
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_cell, column) => letters.get(placeAt(row, column)) ?? '.').join(''),
  )
}
