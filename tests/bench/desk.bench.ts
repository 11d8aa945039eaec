/** The desk as the page waits for it: the true command, asked over HTTP as a browser asks. `node .build/tests/bench/desk.bench.js` */
import { type ChildProcess, spawn } from 'node:child_process'
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { get, type IncomingMessage, request } from 'node:http'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { performance } from 'node:perf_hooks'
import { gzipSync } from 'node:zlib'
import { buildFolder } from '../../src/installation.js'
import { changesOnScreen } from './desk-on-screen.js'
import { boardsPlan, weekPlan } from './reference-job.js'

export interface DeskRow {
  readonly measure: string
  readonly measured: string
}

/** An hour of a change every seven seconds. */
const changesOfAnHour = 500
const lines = ['wavy', 'dotted', 'double', 'dashed', 'thick']
/** None of them is on the list of the plan: a word that stands twice is an error, and no sheets are made of it. */
const words = ['string', 'thrush', 'finch', 'beach', 'gnat', 'wren', 'lake', 'shrub', 'otter', 'reach']
const wordsOnScreen = ['willow', 'brook', 'swan', 'ditch', 'trout']

/** More than the list has places, so that there is always one that is not on it. */
const pool = [
  ...words,
  ...wordsOnScreen,
  ...'reed marsh thread knot boat frog pond mud heron shell fish duck nest wing path bridge light night stream'.split(
    ' ',
  ),
]

export async function benchDesk(changes = changesOfAnHour): Promise<readonly DeskRow[]> {
  const folder = mkdtempSync(join(tmpdir(), 'oaktag-bench-desk-'))
  const started = performance.now()
  const desk = deskOn(
    boardsPlan(30).replace('consonant-digraph', 'consonant-digraph\n    line: single'),
    folder,
  )
  try {
    const page = await openPage(desk)
    const first = page.firstMs - started
    const sheets = await page.sheets()
    const firstSheets = performance.now() - started
    await page.fetched(firstBoard(sheets))
    const keys: number[] = []
    for (const typed of ['s', 'st', 'str', 'stri', 'strin', 'string', 'strings']) {
      const start = performance.now()
      const [told] = JSON.parse(await page.posted('/study', { words: [typed] }))
      if (told.picture !== undefined) await page.fetched(told.picture)
      keys.push(performance.now() - start)
    }
    const word = (value: string) => ({ kind: 'set', path: ['words', 0], value })
    const line = (value: string) => ({ kind: 'set', path: ['marks', 0, 'line'], value })
    const changed = async (change: object): Promise<number> => {
      const start = performance.now()
      const from = page.version()
      const told = page.nextSheets()
      const { version } = JSON.parse(await page.posted('/step', { from, says: 'bench', changes: [change] }))
      // What is there already changes nothing, and is refused no less quickly.
      if (version !== undefined && version !== from) await page.fetched(firstBoard(await told))
      return performance.now() - start
    }
    const byWord: number[] = []
    const byLine: number[] = []
    for (const value of words) byWord.push(await changed(word(value)))
    for (const value of lines) byLine.push(await changed(line(value)))
    const seen = await changesOnScreen(page.address, { words: wordsOnScreen, lines: lines.slice(0, -1) })
    const before = residentMb(desk)
    const draw = dice()
    for (let count = 0; count < changes; count += 1) await changed(anyChange(draw, page.words()))
    const after = residentMb(desk)
    return [
      { measure: 'from the start to the first page with its words', measured: inMs([first]) },
      { measure: 'from the start to its sheets', measured: inMs([firstSheets]) },
      { measure: 'a key in a word to its study and its picture', measured: inMs(keys) },
      { measure: 'a changed word to the first of 30 boards', measured: inMs(byWord) },
      { measure: 'a changed line to the first of 30 boards', measured: inMs(byLine) },
      {
        measure: 'in Chromium, a word and Enter to the first sheet in view',
        measured: seen === undefined ? 'no Chromium here' : inMs(seen.byWordMs),
      },
      {
        measure: 'in Chromium, a line picked to the first sheet in view',
        measured: seen === undefined ? 'no Chromium here' : inMs(seen.byLineMs),
      },
      ...(await wholeWeekOnScreen()),
      {
        measure: `memory before and after ${changes} changes of any kind`,
        measured: `${before} and ${after}`,
      },
      { measure: 'the page: script, style and markup, packed', measured: pageWeight() },
    ]
  } finally {
    desk.kill('SIGINT')
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 })
  }
}

/** The sheet that she looks at, of a week with everything in it. */
async function wholeWeekOnScreen(): Promise<readonly DeskRow[]> {
  const folder = mkdtempSync(join(tmpdir(), 'oaktag-bench-desk-'))
  const desk = deskOn(weekPlan({ whole: true }).replace('digraph, ', 'digraph, line: single, '), folder)
  try {
    const seen = await changesOnScreen(await addressOf(desk), {
      words: wordsOnScreen,
      lines: lines.slice(0, -1),
    })
    return [
      {
        measure: 'a whole week, in Chromium: a word and Enter to the first sheet in view',
        measured: seen === undefined ? 'no Chromium here' : inMs(seen.byWordMs),
      },
      {
        measure: 'a whole week, in Chromium: a line picked to the first sheet in view',
        measured: seen === undefined ? 'no Chromium here' : inMs(seen.byLineMs),
      },
    ]
  } finally {
    desk.kill('SIGINT')
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 })
  }
}

function deskOn(plan: string, folder: string): ChildProcess {
  writeFileSync(join(folder, 'week.yaml'), plan)
  const command = [join(buildFolder, 'src/start.cjs'), 'desk', 'week.yaml', '--no-open']
  return spawn(process.execPath, command, { cwd: folder, stdio: ['ignore', 'pipe', 'inherit'] })
}

type Draw = (sides: number) => number

/** The same each time: a linear congruential generator (Knuth, The Art of Computer Programming 2, 3.2.1; constants of ANSI C's example). */
function dice(): Draw {
  let state = 7
  return sides => {
    state = (state * 1103515245 + 12345) % 2 ** 31
    return Math.floor((state / 2 ** 31) * sides)
  }
}

/** What a teacher does in an hour, in no order. */
function anyChange(draw: Draw, used: readonly string[]): object {
  switch (draw(6)) {
    case 0:
      return { kind: 'set', path: ['marks', 0, 'line'], value: lines[draw(lines.length)] }
    case 1:
      return { kind: 'move', path: ['words'], from: draw(30), to: draw(30) }
    case 2:
      return { kind: 'set', path: ['title'], value: `Along the marsh ${draw(9)}` }
    case 3:
      return { kind: 'set', path: ['print', 1, 'boards'], value: `${20 + draw(11)}` }
    case 4:
      return { kind: 'set', path: ['seed'], value: `${draw(1000)}` }
    default:
      return {
        kind: 'set',
        path: ['words', draw(30)],
        value: anyOf(
          pool.filter(each => !used.includes(each)),
          draw,
        ),
      }
  }
}

function anyOf(list: readonly string[], draw: Draw): string {
  return list[draw(list.length)]!
}

interface Page {
  readonly words: () => readonly string[]
  readonly address: string
  /** When all of it was there but the sheets. */
  readonly firstMs: number
  readonly version: () => string
  readonly sheets: () => Promise<Sheets>
  /** Those that are told from now on. */
  readonly nextSheets: () => Promise<Sheets>
  readonly fetched: (address: string) => Promise<string>
  readonly posted: (path: string, body: object) => Promise<string>
}

interface Told {
  readonly version: string
  readonly words: readonly { readonly text: string }[]
}

interface Sheets {
  readonly busy: boolean
  readonly items: readonly {
    readonly sheets: readonly { readonly address: string; readonly kind: string }[]
  }[]
}

/** As a browser opens it: the address, the page, its script and style, then what is told of the plan. */
async function openPage(desk: ChildProcess): Promise<Page> {
  const address = await addressOf(desk)
  const { origin, search } = new URL(address)
  const [cookie = ''] = (await answer(`${origin}/${search}`, {})).headers['set-cookie'] ?? []
  const headers = { cookie: cookie.split(';')[0] ?? '' }
  const fetched = async (path: string) => textOf(await answer(`${origin}${path}`, headers))
  for (const path of ['/', '/page.js', '/page.css', '/names']) await fetched(path)
  let version = ''
  let words: readonly string[] = []
  let firstMs = 0
  let told: Sheets | undefined
  const waiting = new Set<(sheets: Sheets) => void>()
  const events = await answer(`${origin}/changes`, headers)
  let heard = ''
  await new Promise<void>(done => {
    events.setEncoding('utf8').on('data', (text: string) => {
      heard += text
      const whole = heard.split('\n\n')
      heard = whole.pop() ?? ''
      for (const each of whole) {
        const [, name, data = ''] = /^event: (\w+)\ndata: (.*)$/.exec(each) ?? []
        if (name === 'plan') {
          const plan: Told = JSON.parse(data)
          version = plan.version
          words = plan.words.map(({ text }) => text)
          firstMs ||= performance.now()
          done()
        }
        if (name !== 'sheets') continue
        const sheets: Sheets = JSON.parse(data)
        if (sheets.busy) continue
        told = sheets
        for (const wake of waiting) wake(sheets)
        waiting.clear()
      }
    })
  })
  const nextSheets = () => new Promise<Sheets>(done => waiting.add(done))
  return {
    address,
    firstMs,
    words: () => words,
    version: () => version,
    sheets: async () => told ?? nextSheets(),
    nextSheets,
    fetched,
    posted: (path, body) =>
      new Promise((done, failed) => {
        const sent = request(
          `${origin}${path}`,
          { method: 'POST', headers: { ...headers, origin, 'content-type': 'application/json' } },
          response => done(textOf(response)),
        )
        sent.on('error', failed).end(JSON.stringify(body))
      }),
  }
}

/** As it prints it. */
function addressOf(desk: ChildProcess): Promise<string> {
  let printed = ''
  return new Promise<string>(done => {
    desk.stdout?.setEncoding('utf8').on('data', (text: string) => {
      printed += text
      const found = /http:\S+/.exec(printed)?.[0]
      if (found !== undefined) done(found)
    })
  })
}

function answer(url: string, headers: Readonly<Record<string, string>>): Promise<IncomingMessage> {
  return new Promise((done, failed) => get(url, { headers }, done).on('error', failed))
}

async function textOf(response: IncomingMessage): Promise<string> {
  let text = ''
  for await (const part of response.setEncoding('utf8')) text += part
  return text
}

function firstBoard({ items }: Sheets): string {
  return items[0]!.sheets.find(({ kind }) => kind === 'pieces')!.address
}

/** What the system counts for a process; only some systems tell. */
function residentMb({ pid }: ChildProcess): string {
  try {
    const kb = /VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1]
    return `${Math.round(Number(kb) / 1024)} MB`
  } catch {
    return 'not told here'
  }
}

function pageWeight(): string {
  const folder = join(buildFolder, 'desk')
  const files = readdirSync(folder).filter(name => name.startsWith('page.'))
  const bytes = files.reduce((sum, name) => sum + gzipSync(readFileSync(join(folder, name))).length, 0)
  return `${(bytes / 1000).toFixed(1)} kB`
}

function inMs(values: readonly number[]): string {
  const sorted = values.toSorted((a, b) => a - b)
  return `${Math.round(sorted[Math.floor(sorted.length / 2)]!)} ms`
}

if (process.argv[1] === import.meta.filename) console.table(await benchDesk())
