/** The most memory that a whole process held, for plans far larger than a week's. Run on its own, or by `npm run bench`. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { familiarWords, list } from './familiar-words.js'
import { type MeasuredRun, measured } from './measured-run.js'

export function benchMemory(): readonly MeasuredRun[] {
  const folder = mkdtempSync(join(tmpdir(), 'oaktag-bench-'))
  const words = familiarWords()
  const items = (count: number) =>
    Array.from({ length: count }, (_, index) => {
      const own = words.slice((index * 12) % 3000, ((index * 12) % 3000) + 12)
      return `{layout: word-cards, name: set ${index + 1}, words: [${list(own)}]}`
    })
  const row = (what: string, command: readonly string[], count: number, print: readonly string[]) => {
    const lines = print.map(item => `  - ${item}\n`).join('')
    const marks = 'marks: [{pattern: consonant-digraph}, {pattern: vowel-team}]\n'
    writeFileSync(
      join(folder, 'many.yaml'),
      `words: [${list(words.slice(0, count))}]\n${marks}print:\n${lines}`,
    )
    return measured(what, [...command, 'many.yaml'], folder)
  }
  try {
    return [
      row('make, 1,200 word cards', ['make'], 1200, ['word-cards']),
      row('make, 60 words in 150 copies', ['make'], 60, ['{layout: word-cards, copies: 150}']),
      row('make, 9,000 word cards', ['make'], 9000, ['word-cards']),
      row('make, 200 sets of 12 cards', ['make'], 3012, items(200)),
      row('make, 100 bingo boards', ['make'], 30, ['{layout: bingo, boards: 100}']),
      row('make, 1,000 bingo boards', ['make'], 30, ['{layout: bingo, boards: 1000}']),
      row('check, 500 sets of 12 cards', ['check'], 3012, items(500)),
      // At most 2 s and 250 MB is asked of it.
      row('sorts, 9,000 words', ['sorts'], 9000, ['word-cards']),
    ]
  } finally {
    rmSync(folder, { recursive: true })
  }
}

if (process.argv[1] === import.meta.filename) console.table(benchMemory())
