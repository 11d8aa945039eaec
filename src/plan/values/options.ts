/**
 * Ready-made readers for a layout's own options. A layout declares `{ boards: wholeNumber(1, 500, 24) }` and finds
 * the value, or the default where the teacher said nothing, under the same key in `PrintItem.options`.
 */

import type { ColumnsAndRows } from '../../geometry.js'
import { andThen, fail, succeed, together } from '../../outcomes.js'
import { errorAt, type Outcome } from '../../problems.js'
import { type Entry, misfit, oneOrMore } from '../yaml/entry.js'
import { type LengthRange, lengthReader } from './lengths.js'
import { choiceReader, inWords } from './names.js'
import { wholeNumberReader } from './numbers.js'
import { textReader } from './texts.js'

export interface OptionReader<T> {
  /** What may be written, for `oaktag list layouts`: `a whole number from 1 to 500`. */
  readonly expects: string
  /** The value where the teacher wrote nothing; `undefined` where the layout decides. */
  readonly fallback: T
  readonly read: (entry: Entry) => Outcome<T>
}

/** The options that a layout declaring these readers will find. */
export type OptionsOf<R extends Readonly<Record<string, OptionReader<unknown>>>> = {
  readonly [K in keyof R]: R[K] extends OptionReader<infer T> ? T : never
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
  }
}

export function choice<C extends string, T extends C | undefined>(
  choices: readonly C[],
  fallback: T,
): OptionReader<C | T> {
  return { expects: inWords(choices), fallback, read: choiceReader('a choice', choices) }
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
  }
}

export function text<T extends string | undefined>(fallback: T, longest = 200): OptionReader<string | T> {
  return { expects: `a text of up to ${longest} characters`, fallback, read: textReader('the text', longest) }
}

/** One text or a list of them. */
export function texts<T extends readonly string[] | undefined>(
  fallback: T,
  longest = 60,
): OptionReader<readonly string[] | T> {
  const read = textReader('the text', longest)
  return {
    expects: 'a text or a list of texts',
    fallback,
    read: entry => {
      const items = oneOrMore(entry)
      if (items.length === 0) return misfit(entry, 'a text or a list of texts', 'Write at least one.')
      return together(items.map(read))
    },
  }
}

/** mm. */
export function length<T extends number | undefined>(
  range: LengthRange,
  fallback: T,
): OptionReader<number | T> {
  return {
    expects: `a length from ${range.minMm} mm to ${range.maxMm} mm`,
    fallback,
    read: lengthReader('a length', range),
  }
}

/** An option of a layout's own making: what another reader gives, turned into something else or refused. */
export function refined<T, U>(
  option: OptionReader<T>,
  fallback: U,
  next: (value: T, entry: Entry) => Outcome<U>,
): OptionReader<U> {
  return {
    expects: option.expects,
    fallback,
    read: entry => andThen(option.read(entry), value => next(value, entry)),
  }
}
