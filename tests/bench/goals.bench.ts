/**
 * The goals, each with what was measured in this one run: rounds in which all take turns, so that what else the machine does
 * falls on all alike, and ratios of what they took. Run on its own, or by `npm run bench`.
 */
import { spawnSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { performance } from 'node:perf_hooks'
import { buildFolder } from '../../src/installation.js'
import { familiarWords, list } from './familiar-words.js'
import { measured } from './measured-run.js'
import { boardsPlan } from './reference-job.js'
import { type Rival, rivals } from './rivals.js'
import { type Times, watchedChanges } from './watched-changes.js'

export interface GoalRow {
  readonly measure: string
  readonly goal: string
  readonly measured: string
}

const rounds = 2
const cli = join(buildFolder, 'src/start.cjs')
const tenWords = ['reed', 'marsh', 'shrub', 'thrush', 'stream', 'spring', 'gnat', 'wren', 'leaf', 'moth']

export async function benchGoals(): Promise<readonly GoalRow[]> {
  const folder = mkdtempSync(join(tmpdir(), 'oaktag-bench-'))
  try {
    writeFileSync(join(folder, 'one.yaml'), `words: [${list(tenWords)}]\nprint: [word-cards]\n`)
    for (const boards of [30, 100]) writeFileSync(join(folder, `boards-${boards}.yaml`), boardsPlan(boards))
    const present = rivals().filter(({ missing }) => missing.length === 0)
    const oaktag = (...args: readonly string[]) => command([cli, ...args], folder)
    const taken = await inTurns({
      node: command(['-e', '0'], folder),
      help: oaktag('help'),
      list: oaktag('list', 'papers'),
      study: oaktag('study', ...tenWords),
      'one sheet': oaktag('make', 'one.yaml', '--quiet'),
      'check 30': oaktag('check', 'boards-30.yaml'),
      'make 30': oaktag('make', 'boards-30.yaml', '--quiet'),
      'make 100': oaktag('make', 'boards-100.yaml', '--quiet'),
      ...Object.fromEntries(
        present.flatMap(rival =>
          rival.boards.map(boards => [`${rival.name} ${boards}`, drawing(rival, boards, folder)]),
        ),
      ),
    })
    const ratio = (of: string, to: string) => {
      const [a, b] = [taken.get(of)!, taken.get(to)!]
      const processor =
        b.processorMs > 0 ? `, of processor time ${(a.processorMs / b.processorMs).toFixed(2)}` : ''
      return `${(a.ms / b.ms).toFixed(2)}${processor}`
    }
    const [few, many] = [taken.get('make 30')!, taken.get('make 100')!]
    const watched = [await watchedChanges(folder, false), await watchedChanges(folder, true)]
    return [
      ...rivals().flatMap(rival => againstRival(rival, ratio)),
      row(
        'a page more, svg and png: processor',
        '≤ 2 ms',
        `${((many.processorMs - few.processorMs) / 70).toFixed(1)} ms`,
      ),
      row('study of ten words, of bare node', '≤ 2', ratio('study', 'node')),
      row('make of one sheet and its cover, of bare node', '≤ 6', ratio('one sheet', 'node')),
      row('help, of bare node', '≤ 1.8', ratio('help', 'node')),
      row('list, of bare node', '≤ 1.8', ratio('list', 'node')),
      row('check of the boards, of make', '≤ 0.5', ratio('check 30', 'make 30')),
      ...watched.flatMap(({ sheets, word, color }) => [
        row(`--watch, ${sheets} sheets, another word`, '≤ 300 ms', inTimes(word)),
        row(`--watch, ${sheets} sheets, another colour`, '≤ 300 ms', inTimes(color)),
      ]),
      ...longLists(folder),
      // Node reads the certificates that this names before anything else: 30 of 50 ms.
      row(
        `bare node, here${process.env.NODE_EXTRA_CA_CERTS === undefined ? '' : ', with NODE_EXTRA_CA_CERTS'}`,
        '',
        `${Math.round(taken.get('node')!.ms)} ms`,
      ),
    ]
  } finally {
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 })
  }
}

function againstRival(
  { name, missing, boards, goals }: Rival,
  ratio: (of: string, to: string) => string,
): readonly GoalRow[] {
  return boards.map((count, index) =>
    row(
      `${count} boards, of: ${name}`,
      goals[index]!,
      missing.length === 0
        ? ratio(`make ${count}`, `${name} ${count}`)
        : `not installed: ${missing.join(', ')}`,
    ),
  )
}

function longLists(folder: string): readonly GoalRow[] {
  const words = familiarWords()
  const plan = (count: number) => {
    const marks = 'marks: [{pattern: consonant-digraph}, {pattern: vowel-team}]\n'
    writeFileSync(
      join(folder, 'many.yaml'),
      `words: [${list(words.slice(0, count))}]\n${marks}print: [word-cards]\n`,
    )
  }
  plan(1200)
  const cards = measured('cards', ['make', 'many.yaml', '--quiet'], folder)
  plan(9000)
  const sorts = measured('sorts', ['sorts', 'many.yaml'], folder)
  return [
    row(
      '1,200 word cards, the most memory',
      '≤ 250 MB',
      `${cards.peakMb} MB, ${cards.processorSeconds} s of the processor`,
    ),
    row('sorts of 9,000 words', '≤ 2 s, 250 MB', `${sorts.wallSeconds} s, ${sorts.peakMb} MB`),
  ]
}

interface Taken {
  readonly ms: number
  /** 0 where the system does not tell it. */
  readonly processorMs: number
}

/** The least of all rounds for each; the first round, which brings files into memory, is not counted. */
async function inTurns(
  all: Readonly<Record<string, () => Promise<Taken>>>,
): Promise<ReadonlyMap<string, Taken>> {
  const least = new Map<string, Taken>()
  for (let round = 0; round <= rounds; round++)
    for (const [name, run] of Object.entries(all)) {
      const taken = await run()
      const before = round <= 1 ? taken : least.get(name)!
      least.set(name, {
        ms: Math.min(taken.ms, before.ms),
        processorMs: Math.min(taken.processorMs, before.processorMs),
      })
    }
  return least
}

/** Node tells of itself what it took. */
const counting =
  'data:text/javascript,process.on("exit",()=>{const{userCPUTime,systemCPUTime}=process.resourceUsage();' +
  'process.stderr.write("\\n"+(userCPUTime+systemCPUTime)/1000)})'

function command(args: readonly string[], cwd: string): () => Promise<Taken> {
  return async () => {
    const start = performance.now()
    const run = spawnSync(process.execPath, ['--import', counting, ...args], { cwd, encoding: 'utf8' })
    const ms = performance.now() - start
    if (run.status !== 0) throw new Error(run.stderr)
    return { ms, processorMs: Number(run.stderr.slice(run.stderr.lastIndexOf('\n'))) }
  }
}

function drawing(rival: Rival, boards: number, folder: string): () => Promise<Taken> {
  return async () => {
    const own = join(folder, `rival-${boards}`)
    rmSync(own, { recursive: true, force: true, maxRetries: 5 })
    mkdirSync(own)
    const start = performance.now()
    const processorMs = await rival.draw(boards, own)
    return { ms: performance.now() - start, processorMs }
  }
}

function row(measure: string, goal: string, value: string): GoalRow {
  return { measure, goal, measured: value }
}

if (process.argv[1] === import.meta.filename) console.table(await benchGoals())

function inTimes({ median, most }: Times): string {
  return `${Math.round(median)} ms, at most ${Math.round(most)}`
}
