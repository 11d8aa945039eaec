/** The hand-made tables of this folder, read, and the analysis that they are held against. */
import { readFileSync } from 'node:fs'
import { openLexicon } from '../../../src/words/lexicon/lexicon.js'
import { studyWord } from '../../../src/words/study.js'
import type { Word } from '../../../src/words/word.js'

const lexicon = openLexicon()

/** Rows of a table: cells divided by tabs, comment lines passed over. */
export function rowsOf(table: string): readonly (readonly string[])[] {
  return readFileSync(new URL(table, import.meta.url), 'utf8')
    .split('\n')
    .filter(line => line !== '' && !line.startsWith('#'))
    .map(line => line.split('\t'))
}

/** What a cell accepts: one of the ways divided by ` ~ `. */
export function waysOf(cell: string): readonly string[] {
  return cell.split(' ~ ')
}

export function analysed(text: string): Word {
  const place = { file: 'gold', line: 1, column: 1 }
  const outcome = studyWord({ text, place, overrides: {} }, lexicon)
  if (!outcome.ok) throw new Error(`${text} could not be studied`)
  return outcome.value
}

export function percent(part: number, whole: number): string {
  return `${((100 * part) / whole).toFixed(2)} % (${part} of ${whole})`
}

/** Figures and disagreements for the reader of the test's output. */
export function report(title: string, lines: readonly string[]): void {
  console.log([title, ...lines.map(line => `  ${line}`)].join('\n'))
}
