/** From the save of a plan that is watched until its set and its proof page are new, as whoever looks at the page waits. */
import { spawn } from 'node:child_process'
import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { performance } from 'node:perf_hooks'
import { buildFolder } from '../../src/installation.js'
import { whatIsTold } from '../commands/watch/what-is-told.js'
import { weekPlan } from './reference-job.js'

export interface WatchedChanges {
  readonly sheets: number
  /** Milliseconds. */
  readonly word: Times
  readonly color: Times
}

export interface Times {
  readonly median: number
  readonly most: number
}

const words = ['goat', 'crane', 'stork', 'heron', 'toad', 'swan', 'crab', 'newt', 'owl']
const colors = ['#1a5a8a', '#225522', '#663388', '#884400', '#005a5a']

/** @param whole whether the plan makes the whole week's set */
export async function watchedChanges(folder: string, whole: boolean): Promise<WatchedChanges> {
  const file = join(folder, 'week.yaml')
  writeFileSync(file, weekPlan({ whole }))
  const cli = join(buildFolder, 'src/start.cjs')
  const watching = spawn(process.execPath, [cli, 'make', 'week.yaml', '--watch'], {
    cwd: folder,
    stdio: ['ignore', 'pipe', 'ignore'],
  })
  const { text, until, forget } = whatIsTold([watching.stdout])
  const saved = async (plan: string): Promise<number> => {
    forget()
    const start = performance.now()
    writeFileSync(file, plan)
    await until('Look it over and print')
    return performance.now() - start
  }
  try {
    await until('Ctrl-C ends it')
    // Of each item, not of all together.
    const sheets = [...text().matchAll(/^ {2}\S+ +(\d+) pages?/gm)].reduce(
      (sum, [, pages]) => sum + Number(pages),
      0,
    )
    const byWord: number[] = []
    for (const word of words) byWord.push(await saved(weekPlan({ word, whole })))
    const byColor: number[] = []
    for (const color of colors) byColor.push(await saved(weekPlan({ word: words.at(-1)!, color, whole })))
    return { sheets, word: timesOf(byWord), color: timesOf(byColor) }
  } finally {
    watching.kill('SIGINT')
  }
}

function timesOf(ms: readonly number[]): Times {
  const sorted = ms.toSorted((a, b) => a - b)
  return { median: sorted[Math.floor(ms.length / 2)]!, most: sorted.at(-1)! }
}
