import { relative } from 'node:path'
import type { Format } from '../files/item-paths.js'
import type { WrittenPlan } from '../files/write-plan.js'
import { makePlan } from '../pipeline.js'
import type { Problem } from '../problems.js'
import { commaList } from './comma-list.js'
import { type CommandResult, resultOf, wrongUsage } from './command-result.js'

export interface MakeOptions {
  readonly plan: readonly string[]
  readonly out: string
  readonly only?: readonly string[] | undefined
  readonly format?: readonly string[] | undefined
  readonly dpi: number
  readonly jobs?: number | undefined
  readonly seed?: number | undefined
}

const formats: readonly Format[] = ['svg', 'png', 'pdf']

/** `oaktag make`: every item of every plan; a plan with problems is left out and the others are made. */
export async function makeCommand(options: MakeOptions): Promise<CommandResult> {
  const wanted = commaList(options.format ?? ['svg', 'png']).map(name => name.toLowerCase())
  const unknown = wanted.find(name => !formats.some(format => format === name))
  if (unknown !== undefined || wanted.length === 0)
    return wrongUsage(
      `"${unknown ?? ''}" is no format`,
      `--format takes ${formats.join(', ')}, with commas between.`,
    )
  if (!Number.isFinite(options.dpi) || options.dpi < 72 || options.dpi > 1200)
    return wrongUsage('--dpi is out of range', 'Give whole pixels per inch from 72 to 1200; 300 prints well.')
  if (!isWholeOrLeftOut(options.jobs, 1) || !isWholeOrLeftOut(options.seed, 0))
    return wrongUsage('--jobs and --seed take a whole number', 'For example --jobs 2 --seed 12.')
  const output: string[] = []
  const problems: Problem[] = []
  for (const planFile of options.plan) {
    const made = await makePlan({
      planFile,
      outFolder: options.out,
      formats: formats.filter(format => wanted.includes(format)),
      dpi: options.dpi,
      ...(options.jobs === undefined ? {} : { jobs: options.jobs }),
      ...(options.seed === undefined ? {} : { seed: options.seed }),
      ...(options.only === undefined ? {} : { only: commaList(options.only) }),
    })
    problems.push(...made.problems)
    if (made.ok) output.push(describe(made.value))
  }
  return resultOf(output.join('\n\n'), problems)
}

function isWholeOrLeftOut(value: number | undefined, least: number): boolean {
  return value === undefined || (Number.isSafeInteger(value) && value >= least)
}

/** What was made and where to look, in lines of at most 80 columns where the paths allow it. */
function describe({ folder, indexFile, manifest }: WrittenPlan): string {
  const nameWidth = Math.max(...manifest.items.map(item => item.name.length))
  const lines = manifest.items.map(item => {
    const pieces = item.pages.reduce((sum, page) => sum + (page.side === 'front' ? page.pieces.length : 0), 0)
    const sheets = `${item.pages.length} ${item.pages.length === 1 ? 'page' : 'pages'}`
    return `  ${item.name.padEnd(nameWidth)}  ${sheets}${pieces === 0 ? '' : `, ${pieces} pieces`}`
  })
  const shown = (path: string) => relative('', path) || '.'
  return [
    `${manifest.title}: made in ${shown(folder)}`,
    ...lines,
    `Look it over and print: ${shown(indexFile)}`,
  ].join('\n')
}
