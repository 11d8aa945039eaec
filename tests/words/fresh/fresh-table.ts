/** The hand-made tables of fresh words, each word beside the tool's analysis of it. */
import { readFileSync } from 'node:fs'
import type { Word } from '../../../src/words/word.js'
import { analysed } from '../gold/gold.js'

/** A pattern by name, of these letters, or of any where the table gives none. */
interface NamedPattern {
  readonly pattern: string
  readonly letters: string | undefined
}

export interface FreshWord {
  readonly text: string
  readonly graphemes: string
  readonly counts: readonly string[]
  readonly divisions: readonly string[]
  readonly present: readonly NamedPattern[]
  readonly absent: readonly NamedPattern[]
  readonly first: readonly string[]
  readonly contained: readonly string[]
  /** Empty for a word that is no noun, undefined where the table does not ask. */
  readonly plurals: readonly string[] | undefined
  readonly rules: readonly string[]
  readonly word: Word
}

export function readFreshWords(file: string): readonly FreshWord[] {
  return readFileSync(new URL(file, import.meta.url), 'utf8')
    .split('\n')
    .filter(line => line !== '' && !line.startsWith('#'))
    .map(readRow)
}

function readRow(line: string): FreshWord {
  const cells = line.split('\t')
  if (cells.length !== 10) throw new Error(`not ten cells: ${line}`)
  const [text, graphemes, counts, divisions, present, absent, first, contained, plurals, rules] = cells
  return {
    text: text!,
    graphemes: graphemes!,
    counts: waysOf(counts!),
    divisions: waysOf(divisions!),
    present: patternsOf(present!),
    absent: patternsOf(absent!),
    first: waysOf(first!),
    contained: contained === '-' ? [] : contained!.split(', '),
    plurals: plurals === '*' ? undefined : waysOf(plurals!),
    rules: waysOf(rules!),
    word: analysed(text!),
  }
}

function waysOf(cell: string): readonly string[] {
  return cell === '-' ? [] : cell.split('|')
}

function patternsOf(cell: string): readonly NamedPattern[] {
  return cell.split('; ').map(named => {
    const [pattern, letters] = named.split(' ')
    return { pattern: pattern!, letters }
  })
}

export function shows({ patterns }: Word, { pattern, letters }: NamedPattern): boolean {
  return patterns.some(
    found => found.pattern === pattern && (letters === undefined || found.letters === letters),
  )
}

export function nameOf({ pattern, letters }: NamedPattern): string {
  return letters === undefined ? pattern : `${pattern} ${letters}`
}
