import type { Format } from '../door/make.js'
import { errorAt, type Problem } from '../door/problems.js'
import { commaList } from './comma-list.js'
import { type CommandResult, resultOf, wrongUsage } from './command-result.js'
import { type ProgressStream, progressLine } from './progress-line.js'
import type { Input } from './standard-input.js'

export interface MakeOptions {
  readonly plan: readonly string[]
  readonly out: string
  readonly only?: readonly string[] | undefined
  readonly format?: string | readonly string[] | undefined
  readonly dpi: number
  readonly jobs?: number | undefined
  readonly seed?: number | undefined
  /** Problems alone. */
  readonly quiet?: boolean
}

const formats: readonly Format[] = ['svg', 'png', 'pdf']

/** More would only open more files at once than a system allows. */
const MOST_JOBS = 1000

/** What a command has around it; the terminal's own where left out. */
export interface MakeAround {
  readonly input?: Input
  /** Where progress is shown. */
  readonly stream?: ProgressStream
  /** Aborted by Ctrl-C. */
  readonly signal?: AbortSignal
}

const stopped: CommandResult = {
  output: '',
  problems: 'oaktag: stopped; the last set is as it was',
  exitCode: 130,
}

/** `oaktag make`: every item of every plan; a plan with problems is left out and the others are made. */
export async function makeCommand(options: MakeOptions, around: MakeAround = {}): Promise<CommandResult> {
  const { input, stream = process.stderr, signal } = around
  const wanted = commaList([options.format ?? 'svg,png'].flat()).map(name => name.toLowerCase())
  const unknown = wanted.find(name => !formats.some(format => format === name))
  if (unknown !== undefined || wanted.length === 0)
    return wrongUsage(
      `"${unknown ?? ''}" is no format`,
      `--format takes ${formats.join(', ')}, with commas between.`,
    )
  if (!Number.isInteger(options.dpi) || options.dpi < 72 || options.dpi > 1200)
    return wrongUsage('--dpi is out of range', 'Give whole pixels per inch from 72 to 1200; 300 prints well.')
  if (!isWholeOrLeftOut(options.jobs, 1, MOST_JOBS))
    return wrongUsage('--jobs takes a whole number', `Give --jobs from 1 to ${MOST_JOBS}.`)
  if (options.out.trim() === '')
    return wrongUsage('--out names no folder', 'Write --out and a folder, such as --out week-3.')
  const { plans: given, only } = partPlansFromNames(options)
  if (given.length === 0)
    return wrongUsage('make needs a plan', 'Write oaktag make PLAN, such as oaktag make plan.yaml.')
  if (only?.length === 0)
    return wrongUsage('--only names no item', 'Write --only and the name of an item, such as --only bingo.')
  // What reads and draws is loaded only now: a slip in the command is told at once.
  const { make, LARGEST_SEED, stemOf, describeMade, planApart, plansToMake } = await import('./make-parts.js')
  if (!isWholeOrLeftOut(options.seed, 0, LARGEST_SEED))
    return wrongUsage('--seed takes a whole number', `Give --seed from 0 to ${LARGEST_SEED}.`)
  const output: string[] = []
  const { paths: plans, problems: ofPaths, files } = await plansToMake(given, input)
  const problems: Problem[] = [...ofPaths]
  const stems = new Map<string, string>()
  for (const planFile of plans) {
    const stem = stemOf(planFile).toLowerCase()
    const earlier = stems.get(stem)
    if (earlier !== undefined) {
      problems.push(fillsSameFolder(planFile, earlier))
      continue
    }
    stems.set(stem, planFile)
    const progress = options.quiet === true ? undefined : progressLine(stream)
    const making = () =>
      make({
        watching: {
          ...(signal === undefined ? {} : { signal }),
          ...(progress === undefined ? {} : { onProgress: progress.tell }),
        },
        plan: planFile,
        out: options.out,
        formats: formats.filter(format => wanted.includes(format)),
        dpi: options.dpi,
        ...(options.jobs === undefined ? {} : { jobs: options.jobs }),
        ...(options.seed === undefined ? {} : { seed: options.seed }),
        ...(only === undefined ? {} : { only }),
        ...(files === undefined ? {} : { files }),
      })
    const made = await planApart(planFile, making)
    progress?.end()
    if (!made.ok && signal?.aborted === true) return stopped
    for (const problem of made.problems) problems.push(problem)
    if (made.ok && options.quiet !== true) output.push(describeMade(made.value, planFile))
  }
  return resultOf(output.join('\n\n'), problems)
}

/** `--only bingo key plan.yaml` reads as three names; what ends as a plan file does is a plan. */
function partPlansFromNames({ plan, only }: MakeOptions): {
  plans: readonly string[]
  only?: readonly string[]
} {
  if (only === undefined) return { plans: plan }
  const names = commaList(only)
  const isPlan = (name: string) => /\.ya?ml$/i.test(name)
  return { plans: [...plan, ...names.filter(isPlan)], only: names.filter(name => !isPlan(name)) }
}

/** A plan's folder is called after its file, without the folders above it. */
function fillsSameFolder(planFile: string, earlier: string): Problem {
  return errorAt(
    { file: planFile },
    `its sheets would fill the same folder as those of "${earlier}"`,
    'Give one of the two plans another name, or make them apart with another --out.',
  )
}

function isWholeOrLeftOut(value: number | undefined, least: number, most: number): boolean {
  return value === undefined || (Number.isInteger(value) && value >= least && value <= most)
}
