/**
 * What a plan's text holds, before it means anything: text, lists and keys, each with its place. YAML, .txt and
 * .csv files all become entries, so that one set of readers serves them.
 */

import { fail } from '../../outcomes.js'
import { errorAt, type Outcome, type Place } from '../../problems.js'

export type Entry = TextEntry | ListEntry | MapEntry | EmptyEntry

export interface TextEntry {
  readonly kind: 'text'
  /** In Unicode NFC, without white space at its ends; never empty. */
  readonly text: string
  readonly place: Place
  /** A comment on the same line, without its `#`: an unquoted colour ends up here. */
  readonly comment?: string
}

export interface ListEntry {
  readonly kind: 'list'
  readonly items: readonly Entry[]
  readonly place: Place
}

export interface MapEntry {
  readonly kind: 'map'
  readonly pairs: readonly Pair[]
  readonly place: Place
}

export interface Pair {
  readonly key: string
  readonly keyPlace: Place
  readonly value: Entry
}

/** A key or a dash with nothing behind it. */
export interface EmptyEntry {
  readonly kind: 'empty'
  readonly place: Place
  readonly comment?: string
}

/** Reads one value, and says what is wrong with it and where. */
export type Reader<T> = (entry: Entry) => Outcome<T>

/** Says that something else stands where `wanted` should: `fitting: 'a list of words'`. */
export function misfit<T>(entry: Entry, wanted: string, advice: string): Outcome<T> {
  const found = { text: `"${shortened(entry)}"`, list: 'a list', map: 'a group of keys', empty: 'nothing' }
  return fail(errorAt(entry.place, `expected ${wanted}, found ${found[entry.kind]}`, advice))
}

/** A text in one line of at most forty characters, for messages. */
function shortened(entry: Entry): string {
  const text = entry.kind === 'text' ? entry.text.replaceAll(/\s+/g, ' ') : ''
  return text.length > 40 ? `${text.slice(0, 39)}…` : text
}

/** The entries of a list; a single value stands for a list of one. */
export function oneOrMore(entry: Entry): readonly Entry[] {
  return entry.kind === 'list' ? entry.items : entry.kind === 'empty' ? [] : [entry]
}
