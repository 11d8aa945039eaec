/**
 * A class file of three groups (large print with words of its own; words beside the class's; the class's words), eight items for
 * the class and each group, old words in every week: all its weeks in one command. Run on its own, or by `npm run bench`.
 */
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { familiarWords, list } from './familiar-words.js'
import { type MeasuredRun, measured } from './measured-run.js'

const items = [
  'word-cards',
  'open-sort',
  'matching-pairs',
  'letter-tiles',
  'blank-list',
  'marked-list',
  'dictation',
  '{layout: bingo, boards: 12, grid: 3x3}',
]

export interface WeeksRow extends MeasuredRun {
  /** Sheets, each as SVG and as PNG at 300 DPI. */
  readonly sheets: number
}

export function benchWeeks(): readonly WeeksRow[] {
  const folder = mkdtempSync(join(tmpdir(), 'oaktag-bench-'))
  const words = familiarWords()
  const some = (from: number, count: number) => list(words.slice(from, from + count))
  try {
    return [1, 6].map(weeks => {
      const names = Array.from({ length: weeks }, (_, index) => `week-${index + 1}.yaml`)
      writeFileSync(
        join(folder, 'room-7.yaml'),
        `review: yes\ngroups: [{name: Otters, size: large}, {name: Terns}, {name: Herons, font: lexend}]\nweeks: [${list(names)}]\n`,
      )
      for (const [week, name] of names.entries())
        writeFileSync(
          join(folder, name),
          [
            'class file: room-7.yaml',
            `words: [${some(week * 30, 12)}]`,
            'clues: drafts',
            'marks: [{pattern: consonant-digraph}, {pattern: vowel-team}]',
            `groups: [{name: Otters, words: [${some(week * 30 + 12, 10)}]}, {name: Terns, more words: [${some(week * 30 + 22, 4)}]}, Herons]`,
            `print: [${list(items)}]`,
          ].join('\n'),
        )
      const run = measured(
        `make, ${weeks} of a class's weeks, 32 sets each`,
        ['make', 'room-7.yaml', '--quiet'],
        folder,
      )
      const made = readdirSync(join(folder, 'out'), { recursive: true, encoding: 'utf8' })
      return { ...run, sheets: made.filter(path => path.endsWith('.png')).length }
    })
  } finally {
    rmSync(folder, { recursive: true })
  }
}

if (process.argv[1] === import.meta.filename) console.table(benchWeeks())
