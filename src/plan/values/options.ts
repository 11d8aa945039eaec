/**
 * Ready-made readers for a layout's own options. A layout declares `{ boards: wholeNumber(1, 500, 24) }` and is given
 * the value, or the default where the teacher said nothing, under the same key: `options.boards`, a number.
 */

import type { ColumnsAndRows } from '../../geometry.js'
import { fail, succeed } from '../../outcomes.js'
import { errorAt, type Outcome } from '../../problems.js'
import { type Entry, misfit } from '../yaml/entry.js'
import { inWords } from './in-words.js'
import { choiceReader } from './names.js'
import { wholeNumberReader } from './numbers.js'
import { textReader } from './texts.js'

export interface OptionReader<T> {
  /** What may be written, for `oaktag list layouts`: `a whole number from 1 to 500`. */
  readonly expects: string
  /** The value where the teacher wrote nothing; `undefined` where the layout decides. */
  readonly fallback: T
  readonly read: (entry: Entry) => Outcome<T>
  /** Whether a value is of the kind that is read, or the fallback. */
  readonly gives: (value: unknown) => value is T
}

/** The options of a layout, each with the reader of its value. */
export type OptionReaders = Readonly<Record<string, OptionReader<unknown>>>

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
    expects: `a whole number from ${min} to ${max}`,
    fallback,
    read: wholeNumberReader('a whole number', min, max),
    gives: (value): value is number | T => typeof value === 'number' || value === fallback,
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
    expects: `columns x rows, each from ${min} to ${max}`,
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
export function choice<C extends string, T extends C | undefined>(
  choices: readonly C[],
  fallback: T,
  synonyms: Readonly<Record<string, C>> = {},
): OptionReader<C | T> {
  return {
    expects: inWords(choices),
    fallback,
    read: choiceReader('a choice', choices, synonyms),
    gives: (value): value is C | T => choices.some(each => each === value) || value === fallback,
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
    expects: 'yes or no',
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
    expects: `a text of up to ${longest} characters`,
    fallback,
    read: textReader('the text', longest),
    gives: (value): value is string | T => typeof value === 'string' || value === fallback,
  }
}
