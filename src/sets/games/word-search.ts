/** Word searches: words hidden in a grid of letters, each there once, and nothing there that should not be read. */

import { type Generator, shuffle } from '../random.js'
import type { LeftOut } from './left-out.js'
import {
  canStand,
  emptyGrid,
  everyWay,
  type LetterGrid,
  letterAlong,
  type Run,
  setAlong,
  standingsOf,
  type Way,
} from './letter-grid.js'

export const searchWays = ['across and down', 'slanting too', 'backwards too'] as const
export type SearchWays = (typeof searchWays)[number]

export interface SearchWanted {
  /** In small letters, none inside another: see `wordsToHide`. */
  readonly words: readonly string[]
  readonly columns: number
  readonly rows: number
  readonly ways: SearchWays
  /** What nobody should come upon by chance, lower case. */
  readonly unfit: ReadonlySet<string>
}

export interface HiddenWord extends Run {
  readonly word: string
}

export interface WordSearch {
  readonly grid: LetterGrid
  /** In the order of the words. */
  readonly placed: readonly HiddenWord[]
}

/** How often the words are laid out anew before a grid is given up. */
const ATTEMPTS = 60

/** Undefined where the words find no room in so many attempts. */
export function hideWords(wanted: SearchWanted, generator: Generator): WordSearch | undefined {
  if (wanted.words.some(word => word.length > Math.max(wanted.columns, wanted.rows))) return undefined
  const unfit = lookoutForUnfit(wanted.unfit)
  const barred = [unfit, lookoutFor(wanted.words)]
  for (let attempt = 0; attempt < ATTEMPTS; attempt++) {
    const search = placeWords(wanted, generator)
    if (search === undefined) continue
    if (fillUp(search, wanted.words, barred, generator) && isClean(search, unfit)) return search
  }
  return undefined
}

const waysOf: Readonly<Record<SearchWays, readonly Way[]>> = {
  'across and down': everyWay.filter(({ down, across }) => down >= 0 && across >= 0 && down + across === 1),
  'slanting too': everyWay.filter(({ across, down }) => across > 0 || (across === 0 && down > 0)),
  'backwards too': everyWay,
}

/** The longest first, in a place taken by chance among those that share the most letters or the next to most. */
function placeWords(
  { words, columns, rows, ways }: SearchWanted,
  generator: Generator,
): WordSearch | undefined {
  const grid = emptyGrid(columns, rows)
  const runs = new Map<string, Run>()
  for (const word of shuffle(words, generator).sort((a, b) => b.length - a.length)) {
    const places = placesFor(grid, word, waysOf[ways])
    if (places.length === 0) return undefined
    // Crossing words make room for more and are the more fun to find, but not all of them should cross.
    const crossing = places.filter(run => sharedLetters(grid, word, run) > 0)
    const among = crossing.length > 0 && generator.below(3) > 0 ? crossing : places
    const run = among[generator.below(among.length)]!
    runs.set(word, run)
    for (const [step, letter] of [...word].entries()) setAlong(grid, run, step, letter)
  }
  return { grid, placed: words.map(word => ({ word, ...runs.get(word)! })) }
}

function placesFor(grid: LetterGrid, word: string, ways: readonly Way[]): readonly Run[] {
  const places: Run[] = []
  for (let row = 0; row < grid.rows; row++)
    for (let column = 0; column < grid.columns; column++)
      for (const way of ways) {
        const run = { row, column, ...way }
        if (canStand(grid, word, run)) places.push(run)
      }
  return places
}

function sharedLetters(grid: LetterGrid, word: string, run: Run): number {
  return [...word].filter((letter, step) => letterAlong(grid, run, step) === letter).length
}

/** Fills the empty places with letters of the words, none of which completes a word that is hidden or unfit. */
function fillUp(
  { grid }: WordSearch,
  words: readonly string[],
  barred: readonly Lookout[],
  generator: Generator,
): boolean {
  const letters = [...words.join('')]
  const empty = grid.letters.flatMap((letter, place) => (letter === '' ? [place] : []))
  return shuffle(empty, generator).every(place => {
    const offered = [...new Set(shuffle(letters, generator)), ...shuffle(alphabet, generator)]
    return offered.some(letter => {
      grid.letters[place] = letter
      return !barred.some(each => completes(grid, place, each))
    })
  })
}

const alphabet = [...'abcdefghijklmnopqrstuvwxyz']

/** Words to look out for, and how they begin: most readings end after two letters. */
interface Lookout {
  readonly words: ReadonlySet<string>
  readonly beginnings: ReadonlySet<string>
  readonly longest: number
}

/** Thousands of words, the same for every grid of a run. */
const unfitLookouts = new WeakMap<ReadonlySet<string>, Lookout>()

function lookoutForUnfit(unfit: ReadonlySet<string>): Lookout {
  const lookout = unfitLookouts.get(unfit) ?? lookoutFor(unfit)
  unfitLookouts.set(unfit, lookout)
  return lookout
}

function lookoutFor(words: Iterable<string>): Lookout {
  const all = new Set(words)
  const beginnings = new Set<string>()
  let longest = 0
  for (const word of all) {
    longest = Math.max(longest, word.length)
    for (let end = 1; end <= word.length; end++) beginnings.add(word.slice(0, end))
  }
  return { words: all, beginnings, longest }
}

/** Whether a word that is looked out for can be read through the place. */
function completes(grid: LetterGrid, place: number, barred: Lookout): boolean {
  const [row, column] = [Math.floor(place / grid.columns), place % grid.columns]
  return everyWay.some(({ down, across }) => {
    for (let back = 0; back < barred.longest; back++) {
      const run = { row: row - down * back, column: column - across * back, down, across }
      const first = letterAlong(grid, run, 0)
      if (first === undefined || first === '') return false
      if (readings(grid, run, barred).some(word => word.length > back)) return true
    }
    return false
  })
}

/** The words that are looked out for and begin the run. */
function readings(grid: LetterGrid, run: Run, { words, beginnings }: Lookout): readonly string[] {
  const found: string[] = []
  let text = ''
  for (let step = 0; ; step++) {
    const letter = letterAlong(grid, run, step)
    if (letter === undefined || letter === '') return found
    text += letter
    if (!beginnings.has(text)) return found
    if (words.has(text)) found.push(text)
  }
}

/** Each word stands once, and what is unfit at most inside a word of the list (the rat of a pirate is nobody's fault). */
function isClean({ grid, placed }: WordSearch, unfit: Lookout): boolean {
  if (placed.some(({ word }) => standingsOf(grid, word).length !== 1)) return false
  return grid.letters.every((_, place) =>
    everyWay.every(way => {
      const run = { row: Math.floor(place / grid.columns), column: place % grid.columns, ...way }
      return readings(grid, run, unfit).every(text => placed.some(word => isInside(run, text.length, word)))
    }),
  )
}

/** Whether all places of the run are places of the word. */
function isInside(run: Run, length: number, { word, ...hidden }: HiddenWord): boolean {
  const own = new Set([...word].map((_, step) => placeAlong(hidden, step)))
  return Array.from({ length }, (_, step) => placeAlong(run, step)).every(place => own.has(place))
}

function placeAlong({ row, column, down, across }: Run, steps: number): string {
  return `${row + down * steps} ${column + across * steps}`
}

/** Whether every sign of it has a place of its own in a grid. */
export function isLettersAlone(text: string): boolean {
  return /^\p{L}+$/u.test(text)
}

export const noPlaceForSigns = 'a grid has no place for an apostrophe or a hyphen'

/** Of a text's letters; fewer would be found everywhere. */
const LEAST_LETTERS = 3

/** Texts that can be hidden beside one another, as letters, and those that cannot: too short, or found inside another. */
export function wordsToHide(texts: readonly string[]): {
  readonly words: readonly { readonly text: string; readonly letters: string }[]
  readonly leftOut: readonly LeftOut[]
} {
  const all = texts.map(text => ({ text, letters: text.toLowerCase() }))
  const whyNot = (letters: string, index: number): string | undefined => {
    if (!isLettersAlone(letters)) return noPlaceForSigns
    if (letters.length < LEAST_LETTERS) return `it has fewer than ${LEAST_LETTERS} letters`
    const readable = [letters, [...letters].reverse().join('')]
    const around = all.find(
      (other, at) =>
        (other.letters.length > letters.length || at < index) &&
        readable.some(way => other.letters.includes(way)),
    )
    return around === undefined ? undefined : `it can be read in "${around.text}" as well`
  }
  const judged = all.map((each, index) => ({ ...each, why: whyNot(each.letters, index) }))
  return {
    words: judged.flatMap(({ text, letters, why }) => (why === undefined ? [{ text, letters }] : [])),
    leftOut: judged.flatMap(({ text, why }) => (why === undefined ? [] : [{ text, why }])),
  }
}
