/** Kills real runs, at any time and at the very moment of locks and renames, and looks at what they leave. */
import { type ChildProcess, spawn, spawnSync } from 'node:child_process'
import {
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  watch,
  writeFileSync,
} from 'node:fs'
import { join } from 'node:path'
import { installationFolder } from '../../src/installation.js'

const program = join(installationFolder, '.build/src/start.cjs')

const planOf = (words: string) => `title: Along the marsh
words: [reed, marsh, thrush, spring, ${words}]
print: [word-cards, key]
marks: [{letters: ee}]
`

/** When a run is killed: after some time, or when a file of that kind is seen beside the set. */
export type Aim =
  | { readonly afterMs: number }
  | { readonly at: 'lock' | 'new' | 'old' | 'gone'; readonly seen: number }

export interface Killing {
  readonly faults: readonly string[]
  /** Whether the kill came before the run had ended by itself. */
  readonly hit: boolean
  /** What it left beside the set. */
  readonly left: readonly string[]
  /** How long the next run took. */
  readonly nextMs: number
}

export interface Ground {
  readonly home: string
  readonly out: string
  /** The files of the two sets between which the runs go to and fro. */
  readonly sets: readonly Readonly<Record<string, string>>[]
}

export function prepareGround(home: string): Ground {
  mkdirSync(home, { recursive: true })
  const sets = ['wren, leaf', 'gnat, moth'].map((words, index) => {
    mkdirSync(join(home, `plan-${index}`))
    writeFileSync(join(home, `plan-${index}`, 'week.yaml'), planOf(words))
    const apart = join(home, `apart-${index}`)
    const { status, stderr } = spawnSync(process.execPath, argumentsFor(home, index, apart))
    if (status !== 0) throw new Error(String(stderr))
    return contentsOf(join(apart, 'week'))
  })
  return { home, out: join(home, 'out'), sets }
}

/** Begins with the one set in place, kills the run that makes the other, and makes it again. */
export async function killOnce({ home, out, sets }: Ground, aim: Aim, index: number): Promise<Killing> {
  const next = index % 2
  if (!existsSync(join(out, 'week')))
    cpSync(join(home, `apart-${1 - next}`, 'week'), join(out, 'week'), { recursive: true })
  const child = spawn(process.execPath, argumentsFor(home, next, out), { stdio: 'ignore' })
  const hit = await killed(child, aim, out)
  const left = readdirSync(out).filter(name => name !== 'week')
  const faults: string[] = []
  const whole = existsSync(join(out, 'week'))
  if (whole && !sets.some(set => same(set, contentsOf(join(out, 'week'))))) faults.push('the set is partial')
  if (!whole && !left.some(name => name.endsWith('.old'))) faults.push('the set is lost')
  const began = Date.now()
  const again = spawnSync(process.execPath, argumentsFor(home, next, out), { encoding: 'utf8' })
  const nextMs = Date.now() - began
  if (again.status !== 0) faults.push(`the next run: ${again.stderr}`)
  if (again.stderr !== '') faults.push(`the next run says: ${again.stderr}`)
  const names = readdirSync(out)
  if (names.join() !== 'week') faults.push(`left behind: ${names.join(', ')}`)
  if (!same(sets[next]!, contentsOf(join(out, 'week')))) faults.push('the next set is not as it should be')
  return { faults, hit, left, nextMs }
}

function argumentsFor(home: string, index: number, out: string): readonly string[] {
  return [
    program,
    'make',
    join(home, `plan-${index}`, 'week.yaml'),
    '--out',
    out,
    '--format',
    'svg',
    '--quiet',
  ]
}

function killed(child: ChildProcess, aim: Aim, out: string): Promise<boolean> {
  return new Promise(resolve => {
    const kill = () => void child.kill('SIGKILL')
    let seen = 0
    const watching =
      'at' in aim
        ? watch(out, (_, name) => {
            if (name?.endsWith(`.${aim.at}`) && ++seen === aim.seen) kill()
          })
        : undefined
    const timer = 'afterMs' in aim ? setTimeout(kill, aim.afterMs) : undefined
    child.on('exit', (_, signal) => {
      watching?.close()
      clearTimeout(timer)
      resolve(signal === 'SIGKILL')
    })
  })
}

export function contentsOf(folder: string): Readonly<Record<string, string>> {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter(entry => entry.isFile())
  const paths = files.map(entry => join(entry.parentPath, entry.name)).sort()
  return Object.fromEntries(paths.map(path => [path.slice(folder.length + 1), readFileSync(path, 'base64')]))
}

function same(a: Readonly<Record<string, string>>, b: Readonly<Record<string, string>>): boolean {
  return JSON.stringify(a) === JSON.stringify(b)
}

/** Two runs at once, each with process numbers of its own that are the same as the other's; undefined where the system has none. */
export async function pairInContainers({ home, out, sets }: Ground): Promise<readonly string[] | undefined> {
  const apart = ['--fork', '--pid', '--mount-proc']
  if (spawnSync('unshare', [...apart, 'true']).status !== 0) return undefined
  rmSync(out, { recursive: true, force: true })
  const runs = [0, 1].map(index => {
    const child = spawn('unshare', [...apart, process.execPath, ...argumentsFor(home, index, out)])
    let told = ''
    child.stderr.on('data', (data: Buffer) => {
      told += data.toString()
    })
    return new Promise<string[]>(resolve => {
      child.on('exit', code => resolve(code === 0 ? [] : [`a run of a pair ended with ${code}: ${told}`]))
    })
  })
  const faults = (await Promise.all(runs)).flat()
  const names = readdirSync(out)
  if (names.join() !== 'week') faults.push(`left behind by a pair: ${names.join(', ')}`)
  if (!sets.some(set => same(set, contentsOf(join(out, 'week'))))) faults.push('a pair left a mixed set')
  return faults
}
