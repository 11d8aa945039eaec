/**
 * Ready-made readers for a layout's own options. A layout declares `{ boards: wholeNumber(1, 500, 24) }` and is given
 * the value, or the default where the teacher said nothing, under the same key: `options.boards`, a number.
 */

import type { ColumnsAndRows } from '../../geometry.js'
import { andThen, fail, present, succeed } from '../../outcomes.js'
import { errorAt, type Outcome } from '../../problems.js'
import { type Key, key, reading } from '../keys/key.js'
import type { Takes } from '../keys/takes.js'
import { type Entry, misfit } from '../yaml/entry.js'
import { foldName } from './fold-name.js'
import { inWords } from './in-words.js'
import { choiceReader } from './names.js'
import { wholeNumberReader } from './numbers.js'
import { textReader } from './texts.js'

export interface OptionReader<T> {
  readonly takes: Takes
  /** The value where the teacher wrote nothing; `undefined` where the layout decides. */
  readonly fallback: T
  readonly read: (entry: Entry) => Outcome<T>
  /** Whether a value is of the kind that is read, or the fallback. */
  readonly gives: (value: unknown) => value is T
}

/** An option with what a teacher is told of it. */
export interface Option<T> extends OptionReader<T> {
  /** What it does, a clause that begins small and has no full stop. */
  readonly does: string
  /** A value as it may be written; one that is taken, where left out. */
  readonly example?: string
  /** What holds where it is left out, where that is no value. */
  readonly usual?: string
}

/** The options of a layout, each with the reader of its value. */
export type OptionReaders = Readonly<Record<string, Option<unknown>>>

export function option<R extends OptionReader<unknown>>(
  does: string,
  reader: R,
  told: Pick<Option<unknown>, 'example' | 'usual'> = {},
): R & Pick<Option<unknown>, 'does' | 'example' | 'usual'> {
  return { ...reader, does, ...told }
}

/** Options as keys of an item. */
export function optionKeys(options: OptionReaders): Readonly<Record<string, Key<unknown>>> {
  return Object.fromEntries(
    Object.entries(options).map(([name, { does, takes, read, fallback, ...told }]) => [
      name,
      key(does, reading(takes, read), { ...usualOf(fallback), ...present(told) }),
    ]),
  )
}

function usualOf(fallback: unknown): { readonly usual?: string } {
  if (typeof fallback === 'boolean') return { usual: fallback ? 'yes' : 'no' }
  return typeof fallback === 'string' || typeof fallback === 'number' ? { usual: String(fallback) } : {}
}

/** The values that a layout declaring these readers is given. */
export type OptionsOf<R extends OptionReaders> = {
  readonly [K in keyof R]: R[K] extends OptionReader<infer T> ? T : never
}

/** Whether each value is one that its reader gives: the plan keeps the options of all layouts under one type. */
export function areOptions<R extends OptionReaders>(readers: R, values: unknown): values is OptionsOf<R> {
  if (typeof values !== 'object' || values === null) return false
  const named = new Map<string, unknown>(Object.entries(values))
  return Object.entries(readers).every(([name, { gives }]) => gives(named.get(name)))
}

export function wholeNumber<T extends number | undefined>(
  min: number,
  max: number,
  fallback: T,
): OptionReader<number | T> {
  return {
    takes: { kind: 'number', least: min, most: max },
    fallback,
    read: wholeNumberReader('a whole number', min, max),
    gives: (value): value is number | T => typeof value === 'number' || value === fallback,
  }
}

/** One of a few whole numbers, such as 1, 2 or 4. */
export function oneOfNumbers<T extends number | undefined>(
  numbers: readonly number[],
  fallback: T,
): OptionReader<number | T> {
  const told = inWords(numbers.map(String))
  return {
    takes: {
      kind: 'form',
      what: told,
      samples: [String(numbers.at(-1))],
      pattern: `^(?:${numbers.join('|')})$`,
      plain: ['number'],
    },
    fallback,
    read: entry => {
      const advice = `Write ${told}.`
      if (entry.kind !== 'text') return misfit(entry, 'a whole number', advice)
      const number = numbers.find(each => String(each) === entry.text)
      return number === undefined
        ? fail(errorAt(entry.place, `"${entry.text}" is not ${told}`, advice))
        : succeed(number)
    },
    gives: (value): value is number | T => numbers.some(each => each === value) || value === fallback,
  }
}

/** `5x4`: five columns, four rows; each from `min` to `max`. */
export function gridSize<T extends ColumnsAndRows | undefined>(
  min: number,
  max: number,
  fallback: T,
): OptionReader<ColumnsAndRows | T> {
  const advice = `Write columns x rows, such as 5x5, each from ${min} to ${max}.`
  return {
    takes: {
      kind: 'form',
      what: `columns x rows, each from ${min} to ${max}`,
      samples: ['4x4'],
      pattern: String.raw`^\d+\s*(?:[x×*]|by)\s*\d+$`,
    },
    fallback,
    read: entry => {
      if (entry.kind !== 'text') return misfit(entry, 'a grid', advice)
      const match = /^(\d+)\s*(?:[x×*]|by)\s*(\d+)$/i.exec(entry.text)
      const [columns, rows] = [Number(match?.[1]), Number(match?.[2])]
      const fits = [columns, rows].every(count => count >= min && count <= max)
      if (fits) return succeed({ columns, rows })
      const message = match ? `a grid of ${columns} by ${rows} is not made` : `"${entry.text}" is no grid`
      return fail(errorAt(entry.place, message, advice))
    },
    gives: (value): value is ColumnsAndRows | T => isGrid(value) || value === fallback,
  }
}

function isGrid(value: unknown): value is ColumnsAndRows {
  return (
    typeof value === 'object' &&
    value !== null &&
    'columns' in value &&
    'rows' in value &&
    typeof value.columns === 'number' &&
    typeof value.rows === 'number'
  )
}

/** @param synonyms are taken too, each for its choice */
export function choice<const C extends string, const T extends C | undefined>(
  choices: readonly C[],
  fallback: T,
  synonyms: Readonly<Record<string, C>> = {},
): OptionReader<C | T> {
  return {
    takes: { kind: 'names', what: 'a choice', names: choices, synonyms: Object.keys(synonyms) },
    fallback,
    read: choiceReader('a choice', choices, synonyms),
    gives: (value): value is C | T => choices.some(each => each === value) || value === fallback,
  }
}

/**
 * `clue and plural`: two of the names; one alone goes with `usual`.
 * @param named are taken too, each for its two
 */
export function twoOf<const C extends string>(
  names: readonly C[],
  usual: NoInfer<C>,
  named: Readonly<Record<string, readonly [NoInfer<C>, NoInfer<C>]>>,
  fallback: readonly [NoInfer<C>, NoInfer<C>],
): OptionReader<readonly [C, C]> {
  const whole = new Map(Object.entries(named).map(([name, two]) => [foldName(name), two]))
  const one = choiceReader('a choice', names)
  const isOne = (value: unknown): boolean => names.some(name => name === value)
  return {
    takes: {
      kind: 'any of',
      ways: [
        { kind: 'names', what: 'a choice', names: [...Object.keys(named), ...names] },
        {
          kind: 'form',
          what: 'two of these with “and” between',
          samples: [`${names.at(-2)} and ${names.at(-1)}`],
          pattern: String.raw`^\S.*\sand\s.*\S$`,
        },
      ],
    },
    fallback,
    read: entry => {
      if (entry.kind !== 'text') return misfit(entry, 'a choice', `It can be ${inWords(names)}.`)
      const known = whole.get(foldName(entry.text))
      if (known !== undefined) return succeed(known)
      const parts = entry.text.split(/\s+and\s+/i)
      if (parts.length > 2)
        return fail(
          errorAt(entry.place, `"${entry.text}" names more than two`, 'Name two, with “and” between.'),
        )
      const [first, second] = parts.map(text => one({ ...entry, text }))
      if (first === undefined || !first.ok) return first ?? misfit(entry, 'a choice', '')
      if (second === undefined) return succeed([usual, first.value])
      return andThen(second, value => succeed([first.value, value]))
    },
    gives: (value): value is readonly [C, C] =>
      Array.isArray(value) && value.length === 2 && value.every(isOne),
  }
}

export function yesNo<T extends boolean | undefined>(fallback: T): OptionReader<boolean | T> {
  const meanings: Readonly<Record<string, boolean>> = {
    yes: true,
    true: true,
    on: true,
    no: false,
    false: false,
    off: false,
  }
  return {
    takes: { kind: 'yes or no' },
    fallback,
    read: entry => {
      if (entry.kind !== 'text') return misfit(entry, 'yes or no', 'Write yes or no.')
      const meaning = meanings[entry.text.toLowerCase()]
      return meaning === undefined
        ? fail(errorAt(entry.place, `"${entry.text}" is neither yes nor no`, 'Write yes or no.'))
        : succeed(meaning)
    },
    gives: (value): value is boolean | T => typeof value === 'boolean' || value === fallback,
  }
}

export function text<T extends string | undefined>(fallback: T, longest = 200): OptionReader<string | T> {
  return {
    takes: { kind: 'text', longest },
    fallback,
    read: textReader('the text', longest),
    gives: (value): value is string | T => typeof value === 'string' || value === fallback,
  }
}
