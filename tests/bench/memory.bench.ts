/** The most memory that a whole process held, for plans far larger than a week's. Run on its own, or by `npm run bench`. */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { buildFolder } from '../../src/installation.js'

export interface MemoryRow {
  readonly what: string
  readonly peakMb: number
  /** Processor time over all cores. */
  readonly seconds: number
}

const cli = join(buildFolder, 'src/start.cjs')

/** Tells on standard error, when the process ends, what the system has counted. */
const counting =
  'data:text/javascript,process.on("exit",()=>{const{maxRSS,userCPUTime,systemCPUTime}=process.resourceUsage();' +
  'process.stderr.write("\\n"+JSON.stringify({peakKb:maxRSS,microseconds:userCPUTime+systemCPUTime}))})'

export function benchMemory(): readonly MemoryRow[] {
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

function measured(what: string, args: readonly string[], cwd: string): MemoryRow {
  const run = spawnSync(process.execPath, ['--import', counting, cli, ...args], {
    cwd,
    encoding: 'utf8',
    maxBuffer: 2 ** 28,
  })
  if (run.status !== 0) throw new Error(run.stderr)
  const { peakKb, microseconds } = JSON.parse(run.stderr.slice(run.stderr.lastIndexOf('\n')))
  return { what, peakMb: Math.round(peakKb / 1024), seconds: Math.round(microseconds / 1e5) / 10 }
}

/** Those that `find` offers, the most frequent first, quoted, since some of them are signs in YAML. */
function familiarWords(): readonly string[] {
  const offered = readFileSync(join(buildFolder, 'offered-words.txt'), 'utf8')
  return [...new Set([...offered.matchAll(/^\d{4}([a-z]{3,9})\t/gm)].map(match => `"${match[1]}"`))]
}

function list(words: readonly string[]): string {
  return words.join(', ')
}

if (process.argv[1] === import.meta.filename) console.table(benchMemory())
