/** Names: of keys, of what the vocabulary holds, of files. Capitals never matter, and `_`, `-` and space are the same. */

import { andThen, fail, present, succeed } from '../../outcomes.js'
import { errorAt, type Place } from '../../problems.js'
import { reading, type ValueReader } from '../keys/key.js'
import type { Takes } from '../keys/takes.js'
import { misfit } from '../yaml/entry.js'
import { foldName } from './fold-name.js'
import { inWords } from './in-words.js'
import { nearestAdvice, type OtherNames } from './nearest.js'

export interface NameKind {
  /** With its article: `a pattern`. */
  readonly what: string
  readonly known: readonly string[]
  /** Where all of them can be seen, a sentence of its own. */
  readonly where: string
  /** What to give to `oaktag list` for all of them. */
  readonly list?: string
  /** What it may have been taken for. */
  readonly others?: () => OtherNames
}

/** As word processors set them. */
const curlyQuotes = /^[\u2018-\u201F\u00AB]\s*(.*?)\s*[\u2018-\u201F\u00BB]$/

/** Reads one of the known names in any spelling, and gives it as the vocabulary spells it. */
export function nameReader({ what, known, where, list, others }: NameKind): ValueReader<string> {
  // Every key of a plan has its reader, and few of them are asked to read.
  let byFolded: ReadonlyMap<string, string> | undefined
  const called = (text: string): string | undefined => {
    byFolded ??= new Map(known.map(name => [foldName(name), name]))
    return byFolded.get(foldName(text))
  }
  const takes: Takes = { kind: 'names', what, names: known, ...present({ list }) }
  return reading(takes, entry => {
    if (entry.kind !== 'text') return misfit(entry, `the name of ${what}`, where)
    const name = called(entry.text)
    if (name !== undefined) return succeed(name)
    const bare = what.replace(/^an? /, '')
    const unquoted = called(entry.text.replace(curlyQuotes, '$1'))
    const advice =
      unquoted === undefined
        ? nearestAdvice({ name: entry.text, known, where, others })
        : `Take the curly quote marks away, or type straight ones: ${unquoted}.`
    return fail(errorAt(entry.place, `unknown ${bare} "${entry.text}"`, advice))
  })
}

/** A choice among a few words that need no list of their own; `synonyms` are taken too, each for its choice. */
export function choiceReader<const C extends string>(
  what: string,
  choices: readonly C[],
  synonyms: Readonly<Record<string, C>> = {},
  others?: () => OtherNames,
): ValueReader<C> {
  const known = [...choices, ...Object.keys(synonyms)]
  const where = `It can be ${inWords(choices)}.`
  const read = nameReader({ what, known, where, ...present({ others }) })
  const takes: Takes = { kind: 'names', what, names: choices, synonyms: Object.keys(synonyms) }
  return reading(takes, entry => andThen(read(entry), name => succeed(synonyms[name] ?? (name as C))))
}

/** Windows keeps these names for devices, whatever follows them after a dot. */
const deviceNames = /^(?:con|prn|aux|nul|com\d|lpt\d)$/i

/** Whether the text can be made a file name by turning its spaces into hyphens. */
export function isFileSafe(text: string): boolean {
  return /^[\p{L}\p{N}][\p{L}\p{M}\p{N} _-]*$/u.test(text) && text.length <= 60 && !deviceNames.test(text)
}

/** `Our bingo` → `Our-bingo`. Takes what `isFileSafe` accepts. */
export function fileSafeName(text: string): string {
  return text.normalize('NFC').trim().replaceAll(/\s+/g, '-')
}

/** Reads a name that a folder or a file is to be called by. */
export function fileNameReader(what: string): ValueReader<{ readonly text: string; readonly place: Place }> {
  const advice =
    'Use up to 60 letters, digits, spaces, hyphens or low lines, beginning with a letter or a digit.'
  const takes: Takes = {
    kind: 'form',
    what: 'a name that a file can have',
    samples: ['Otters', 'bingo for Friday'],
    pattern: String.raw`^\s*[\p{L}\p{N}][\p{L}\p{M}\p{N} _-]*$`,
    plain: ['number', 'boolean', 'null'],
  }
  return reading(takes, entry => {
    if (entry.kind !== 'text') return misfit(entry, what, advice)
    return isFileSafe(entry.text)
      ? succeed({ text: entry.text, place: entry.place })
      : fail(errorAt(entry.place, `"${entry.text}" cannot be a file's name`, advice))
  })
}
