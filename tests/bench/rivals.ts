/**
 * General tools that draw the same boards: a native typesetter to PDF and SVG and then MuPDF to PNG, and a browser without a
 * window to PDF and then poppler to PNG. They know nothing of words and marks: what they are given is the finished boards.
 * Each is measured where it is installed.
 */
import { spawn } from 'node:child_process'
import { existsSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { delimiter, join } from 'node:path'
import { thirtyWords } from './reference-job.js'

export interface Rival {
  readonly name: string
  /** On how many boards it is measured, and which part of its time is the goal. */
  readonly boards: readonly number[]
  readonly goals: readonly string[]
  /** What has to be installed for it, and is not. */
  readonly missing: readonly string[]
  /** Draws so many boards and one sheet of call cards in the folder; gives its processor time in ms, of all its processes. */
  readonly draw: (boards: number, folder: string) => Promise<number>
}

const TYPESETTER = '@myriaddreamin/typst-ts-node-compiler'

export function rivals(): readonly Rival[] {
  const typesetter = packagePath(TYPESETTER)
  return [
    {
      name: `typesetter to PDF and SVG, two mutool draw`,
      boards: [30, 100],
      goals: ['≤ 0.7', '≤ 0.3'],
      missing: [
        ...(typesetter === undefined ? [`npm install --no-save ${TYPESETTER}`] : []),
        ...(hasCommand('mutool') ? [] : ['mutool (mupdf-tools)']),
      ],
      draw: async (boards, folder) => {
        writeFileSync(join(folder, 'boards.txt'), typesetPages(boards))
        const typeset = await run(
          process.execPath,
          ['--input-type=module', '-e', typesetting(typesetter!)],
          folder,
        )
        const drawn = await both(boards + 1, (first, last, half) =>
          run(
            'mutool',
            ['draw', '-q', '-r', '300', '-o', `m${half}-%d.png`, 'boards.pdf', `${first}-${last}`],
            folder,
          ),
        )
        return typeset + drawn
      },
    },
    {
      name: 'Chromium to PDF, two pdftoppm',
      // A hundred would take minutes.
      boards: [30],
      goals: ['≤ 0.1'],
      missing: ['chromium', 'pdftoppm'].filter(command => !hasCommand(command)),
      draw: async (boards, folder) => {
        writeFileSync(join(folder, 'boards.html'), htmlPages(boards))
        const quiet = ['--headless', '--no-sandbox', '--disable-gpu', '--no-pdf-header-footer']
        const laidOut = await run(
          'chromium',
          [
            ...quiet,
            `--user-data-dir=${join(folder, 'browser')}`,
            '--print-to-pdf=boards.pdf',
            'boards.html',
          ],
          folder,
        )
        const drawn = await both(boards + 1, (first, last, half) =>
          run(
            'pdftoppm',
            ['-png', '-r', '300', '-f', String(first), '-l', String(last), 'boards.pdf', `p${half}`],
            folder,
          ),
        )
        return laidOut + drawn
      },
    },
  ]
}

/** Two processes, each with half of the pages. */
async function both(
  pages: number,
  draw: (first: number, last: number, half: number) => Promise<number>,
): Promise<number> {
  const middle = Math.ceil(pages / 2)
  const [one, other] = await Promise.all([draw(1, middle, 1), draw(middle + 1, pages, 2)])
  return one + other
}

/** Runs it to its end under a shell, which tells what processor time its processes took (`times`, POSIX); in ms. */
function run(command: string, args: readonly string[], cwd: string): Promise<number> {
  return new Promise((done, failed) => {
    const shell = spawn(
      'sh',
      ['-c', '"$@" >/dev/null 2>&1; ended=$?; times; exit $ended', 'sh', command, ...args],
      {
        cwd,
        stdio: ['ignore', 'pipe', 'ignore'],
      },
    )
    let told = ''
    shell.stdout.setEncoding('utf8').on('data', text => {
      told += text
    })
    shell.on('error', failed)
    shell.on('close', code =>
      code === 0 ? done(processorMs(told)) : failed(new Error(`${command} ended with ${code}`)),
    )
  })
}

/** From the second line, `0m1.250s 0m0.410s`: of the shell's children, in user code and in the system. */
function processorMs(times: string): number {
  const children = times.split('\n')[1] ?? ''
  return [...children.matchAll(/(\d+)m([\d.]+)s/g)].reduce(
    (sum, [, minutes, seconds]) => sum + Number(minutes) * 60_000 + Number(seconds) * 1000,
    0,
  )
}

/** The board's words, so turned that no two boards are alike; the call cards are a page of all of them. */
function boardWords(board: number): readonly string[] {
  return Array.from({ length: 25 }, (_, place) => thirtyWords[(place * 7 + board) % thirtyWords.length]!)
}

function typesetPages(boards: number): string {
  const page = (words: readonly string[], size: string) =>
    `#page(width: 215.9mm, height: 279.4mm, margin: 12mm)[#table(columns: (1fr,) * 5, rows: ${size}, align: center + horizon, ${words.map(word => `[#text(size: 22pt)[${word}]]`).join(', ')})]`
  const all = Array.from({ length: boards }, (_, board) => page(boardWords(board), '50mm'))
  return [...all, page(thirtyWords, '42mm')].join('\n')
}

function typesetting(typesetter: string): string {
  return `
    import { createRequire } from 'node:module'
    import { readFileSync, writeFileSync } from 'node:fs'
    const { NodeCompiler } = createRequire(import.meta.url)(${JSON.stringify(typesetter)})
    const compiler = NodeCompiler.create()
    const source = { mainFileContent: readFileSync('boards.txt', 'utf8') }
    writeFileSync('boards.pdf', compiler.pdf(source))
    writeFileSync('boards.svg', compiler.plainSvg(source))`
}

function htmlPages(boards: number): string {
  const page = (words: readonly string[]) =>
    `<section>${words.map(word => `<p>${word}</p>`).join('')}</section>`
  const all = Array.from({ length: boards }, (_, board) => page(boardWords(board)))
  const style =
    '@page { size: 215.9mm 279.4mm; margin: 12mm } body { margin: 0; font: 22pt sans-serif } ' +
    'section { display: grid; grid-template-columns: repeat(5, 1fr); height: 255mm; break-after: page } ' +
    'p { margin: 0; border: 1px solid; display: grid; place-items: center }'
  return `<!doctype html><style>${style}</style>${[...all, page(thirtyWords)].join('')}`
}

function packagePath(name: string): string | undefined {
  try {
    return createRequire(import.meta.url).resolve(name)
  } catch {
    return undefined
  }
}

function hasCommand(name: string): boolean {
  return (process.env.PATH ?? '').split(delimiter).some(folder => existsSync(join(folder, name)))
}
