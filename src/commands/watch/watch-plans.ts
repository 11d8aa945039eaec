/** `oaktag make --watch`: plans are made again whenever they, or a file that they name, are saved. */
import { resolve } from 'node:path'
import type { FileAccess } from '../../door/plans.js'
import { disk, type KeptWork, keepWork } from '../../door/watch.js'
import type { CommandResult } from '../command-result.js'
import { areChanged, type FilesRead, noted, untilChanged } from './files-read.js'
import { type ProofServer, serveProofs } from './proof-server.js'

export interface PlanToWatch {
  readonly file: string
  readonly stem: string
  /** Where its set is, or will be. */
  readonly folder: string
}

/** Makes a plan, with what is kept of the last time and a list of what is read. */
export type MakeAgain = (plan: PlanToWatch, kept: KeptWork, files: FileAccess) => Promise<CommandResult>

export interface PlansToWatch {
  readonly plans: readonly PlanToWatch[]
  readonly make: MakeAgain
  /** Prints what a run leaves. */
  readonly tell: (result: CommandResult) => Promise<void>
  readonly signal: AbortSignal
}

const endedWell: CommandResult = { output: 'Watching has ended.', problems: '', exitCode: 0 }

export async function watchPlans({ plans, make, tell, signal }: PlansToWatch): Promise<CommandResult> {
  const server = await serveProofs()
  try {
    const watched = plans.map(plan => ({ plan, kept: keepWork(), read: noted(disk).read }))
    for (const [index, each] of watched.entries()) {
      watched[index] = { ...each, read: await makeOnce(each, { make, tell, server }) }
      if (signal.aborted) return endedWell
    }
    const addresses = plans.map(({ stem }) => `  ${server.addressOf(stem)}`)
    await tell({
      output: [
        'Watching: save a plan, and its sheets and this page are new.',
        ...addresses,
        'Ctrl-C ends it.',
      ].join('\n'),
      problems: '',
      exitCode: 0,
    })
    for (;;) {
      await untilChanged(new Map(watched.flatMap(({ read }) => [...read])), signal)
      if (signal.aborted) return endedWell
      for (const [index, each] of watched.entries()) {
        if (!areChanged(each.read)) continue
        watched[index] = { ...each, read: await makeOnce(each, { make, tell, server }) }
        if (signal.aborted) return endedWell
      }
    }
  } finally {
    server.close()
  }
}

interface Watched {
  readonly plan: PlanToWatch
  readonly kept: KeptWork
  readonly read: FilesRead
}

/** A plan with an error leaves the last set as it was, and the page says so. */
async function makeOnce(
  { plan, kept }: Watched,
  { make, tell, server }: Pick<PlansToWatch, 'make' | 'tell'> & { readonly server: ProofServer },
): Promise<FilesRead> {
  const { files, read } = noted(disk)
  const result = await make(plan, kept, files)
  server.show(
    plan.stem,
    resolve(plan.folder),
    result.exitCode === 0 ? undefined : `${LAST_GOOD}\n\n${result.problems}`,
  )
  await tell(result)
  return read
}

const LAST_GOOD = 'The plan has a problem, so these are still the sheets from before:'
