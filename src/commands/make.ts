import { join } from 'node:path'
import type { Format, Making, Watching } from '../door/make.js'
import { errorAt, hasErrors, type Problem } from '../door/problems.js'
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
  /** Whether to go on, and make again what is saved. */
  readonly watch?: boolean
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
  /** Prints what one of several runs leaves. */
  readonly tell?: (result: CommandResult) => Promise<void>
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
  const { paths, problems: ofPaths, files: ofInput } = await plansToMake(given, input)
  const problems: Problem[] = [...ofPaths]
  const stems = new Map<string, string>()
  for (const planFile of paths) {
    const stem = stemOf(planFile).toLowerCase()
    const earlier = stems.get(stem)
    if (earlier === undefined) stems.set(stem, planFile)
    else problems.push(fillsSameFolder(planFile, earlier))
  }
  const plans = [...stems.values()]
  const makeOne: MakeOne = async (plan, { watching, ...more }) => {
    const progress = options.quiet === true ? undefined : progressLine(stream)
    const making = () =>
      make({
        watching: {
          ...(signal === undefined ? {} : { signal }),
          ...(progress === undefined ? {} : { onProgress: progress.tell }),
          ...watching,
        },
        plan,
        out: options.out,
        formats: formats.filter(format => wanted.includes(format)),
        dpi: options.dpi,
        ...(options.jobs === undefined ? {} : { jobs: options.jobs }),
        ...(options.seed === undefined ? {} : { seed: options.seed }),
        ...(only === undefined ? {} : { only }),
        ...more,
      })
    const made = await planApart(plan, making)
    progress?.end()
    const output = made.ok && options.quiet !== true ? [describeMade(made.value, plan)] : []
    return { problems: made.problems, output, isStopped: !made.ok && signal?.aborted === true }
  }
  if (options.watch === true) {
    if (ofInput !== undefined)
      return wrongUsage('standard input cannot be watched', 'Save the plan in a file, and name that.')
    if (hasErrors(problems)) return resultOf('', problems)
    return watch(plans, { ...around, out: options.out, stemOf, makeOne })
  }
  const output: string[] = []
  for (const plan of plans) {
    const made = await makeOne(plan, ofInput === undefined ? {} : { files: ofInput })
    if (made.isStopped) return stopped
    for (const problem of made.problems) problems.push(problem)
    output.push(...made.output)
  }
  return resultOf(output.join('\n\n'), problems)
}

interface MadeOne {
  readonly problems: readonly Problem[]
  readonly output: readonly string[]
  readonly isStopped: boolean
}

type MakeOne = (
  plan: string,
  more: Pick<Making, 'kept' | 'files'> & { readonly watching?: Watching },
) => Promise<MadeOne>

interface ToWatch extends MakeAround {
  readonly out: string
  readonly stemOf: (plan: string) => string
  readonly makeOne: MakeOne
}

/** From one save to the next, until it is stopped. */
async function watch(
  plans: readonly string[],
  { out, stemOf, makeOne, tell = async () => {}, signal = new AbortController().signal }: ToWatch,
): Promise<CommandResult> {
  const { watchPlans } = await import('./watch/watch-plans.js')
  return watchPlans({
    plans: plans.map(file => ({ file, stem: stemOf(file), folder: join(out, stemOf(file)) })),
    make: async ({ file }, kept, files, watching) => {
      const { output, problems } = await makeOne(file, { kept, files, watching })
      return resultOf(output.join('\n'), problems)
    },
    tell,
    signal,
  })
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
