/**
 * What may stand as a value, as data: each reader carries it, and help, the plan reference and the JSON Schema are made
 * from nothing else, so that none of them can say what is not read.
 */
import type { Outcome } from '../../problems.js'
import type { Entry } from '../yaml/entry.js'

export type Takes =
  | { readonly kind: 'text'; readonly longest: number }
  | { readonly kind: 'number'; readonly least: number; readonly most: number }
  | { readonly kind: 'yes or no' }
  | NamesTaken
  | FormTaken
  | ListTaken
  | KeysTaken
  | { readonly kind: 'any of'; readonly ways: readonly Takes[] }

/** One of some names, in any spelling. */
export interface NamesTaken {
  readonly kind: 'names'
  /** With its article: `a pattern`. */
  readonly what: string
  readonly names: readonly string[]
  /** Taken too, each for one of the names. */
  readonly synonyms?: readonly string[]
  /** What to give to `oaktag list` for all of them, with what each is. */
  readonly list?: string
}

/** A text or number of a form of its own. */
export interface FormTaken {
  readonly kind: 'form'
  /** With its article: `a length`. */
  readonly what: string
  readonly samples: readonly string[]
  /** Of a text: a regular expression (ECMA-262) that every text which is read fits, whatever its capitals. */
  readonly pattern: string
  /** What of it YAML may take for something else than a text: `6`, `no`. */
  readonly plain?: readonly ('number' | 'boolean' | 'null')[]
}

export interface ListTaken {
  readonly kind: 'list'
  readonly of: Takes
  /** Whether one may stand without a list round it. */
  readonly alone: boolean
  readonly empty: boolean
}

/** A group of keys with their values. */
export interface KeysTaken {
  readonly kind: 'keys'
  /** What the keys belong to, with its article: `a mark`. */
  readonly what: string
  readonly keys: () => Readonly<Record<string, Key<unknown>>>
  /** Where one of several will do, these in a list, the usual one first. */
  readonly needed: readonly (string | readonly string[])[]
  /** For an example: a key with its value that stands beside most others. */
  readonly beside?: string
  /** Other spellings of keys, each with the key it stands for. */
  readonly synonyms?: Readonly<Record<string, string>>
  /**
   * The form (ECMA-262) of what YAML cuts off one of the values and takes for a key with nothing behind it: between braces a
   * value ends at its comma.
   */
  readonly cutOff?: string
  /** Of an item: its layouts, each with the keys that it takes beside the others. */
  readonly layouts?: () => ReadonlyMap<string, Readonly<Record<string, Key<unknown>>>>
}

/** A reader that says what it takes. */
export interface ValueReader<T> {
  (entry: Entry): Outcome<T>
  readonly takes: Takes
}

/** What a teacher is told of a key. */
export interface KeyText {
  /** What it does, a clause that begins small and has no full stop. */
  readonly does: string
  /** A value as it may be written, on one line. */
  readonly example: string
  /** What holds where the key is left out, as a clause; undefined where nothing follows from it. */
  readonly usual?: string
  /** For an example: a key with its value that stands beside this one; empty where none does. */
  readonly beside?: string
  /** The version that brought it. */
  readonly since: string
}

/** A key of a plan: how its value is read, and what is told of it. No key is read without its text. */
export interface Key<T> extends ValueReader<T> {
  readonly text: KeyText
}

/** The keys without which it is not read, in the usual way where there are several. */
export function usuallyNeeded({ needed }: Pick<KeysTaken, 'needed'>): readonly string[] {
  return needed.flatMap(each => [each].flat().slice(0, 1))
}
