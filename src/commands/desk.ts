/** `oaktag desk`: a plan on a page in this machine's browser, until it is closed there or by Ctrl-C. */
import { spawn } from 'node:child_process'
import { existsSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { emptyPlan } from '../door/plan-keys.js'
import { errorAt } from '../door/problems.js'
import { buildFolder } from '../installation.js'
import { type CommandResult, resultOf } from './command-result.js'
import { newCommand } from './new.js'

/** As much as a plan may hold when it is made. */
const MOST_BYTES = 1_000_000

export interface DeskOptions {
  readonly plan?: string | undefined
  readonly out: string
  /** Whether the browser is opened. */
  readonly open: boolean
}

export interface DeskAround {
  /** Aborted by Ctrl-C. */
  readonly signal: AbortSignal
  /** Prints what is to be known while the desk is open. */
  readonly tell: (result: CommandResult) => Promise<void>
}

export async function deskCommand(
  { plan, out, open }: DeskOptions,
  { signal, tell }: DeskAround,
): Promise<CommandResult> {
  const begun = plan === undefined ? await newPlan() : { file: plan, told: '' }
  if ('exitCode' in begun) return begun
  const { file, told } = begun
  if (!existsSync(file) || !statSync(file).isFile()) {
    const advice = 'Check the name and the folder, or begin a plan: oaktag desk, without a name.'
    return resultOf('', [errorAt({ file }, 'the plan is not there', advice)])
  }
  const { size } = statSync(file)
  if (size > MOST_BYTES) {
    const message = `the plan has ${(size / 1e6).toFixed(1)} million bytes`
    return resultOf('', [
      errorAt({ file }, message, 'Up to 1 million are read; check that it is the file you mean.'),
    ])
  }
  const { serveDesk } = await import('../desk/server/serve-desk.js')
  const { collectSoonerWhileOpen } = await import('../door/held-plan.js')
  collectSoonerWhileOpen()
  const desk = await serveDesk({ plan: file, out, pageFolder: join(buildFolder, 'desk') })
  signal.addEventListener('abort', desk.close)
  if (signal.aborted) desk.close()
  const lines = [`The desk is open: ${desk.address}`, 'Close it on the page, or press Ctrl-C here.']
  await tell(resultOf([told, ...lines].filter(line => line !== '').join('\n')))
  if (open) openBrowser(desk.address)
  await desk.closed
  return resultOf(`The desk is closed. ${file} holds all that you did.`)
}

/** Never over a file that is there. */
async function newPlan(): Promise<{ readonly file: string; readonly told: string } | CommandResult> {
  const names = ['plan.yaml', ...Array.from({ length: 98 }, (_, index) => `plan-${index + 2}.yaml`)]
  const file = names.find(name => !existsSync(name)) ?? 'plan-100.yaml'
  const made = await newCommand({ file, text: emptyPlan })
  return made.exitCode === 0 ? { file, told: made.output.split('\n')[0] ?? '' } : made
}

/** The address is printed in any case: where no browser can be opened, nothing is lost. */
function openBrowser(address: string): void {
  const [command, ...args] =
    process.platform === 'darwin'
      ? ['open', address]
      : process.platform === 'win32'
        ? ['rundll32', 'url.dll,FileProtocolHandler', address]
        : ['xdg-open', address]
  spawn(command!, args, { stdio: 'ignore', detached: true })
    .on('error', () => undefined)
    .unref()
}
