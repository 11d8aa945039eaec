/** `oaktag make --watch`: plans are made again whenever they, or a file that they name, are saved. */
import { resolve } from 'node:path'
import type { Watching } from '../../door/make.js'
import type { FileAccess } from '../../door/plans.js'
import {
  collectSoonerWhileOpen,
  collectWhileWaiting,
  disk,
  type KeptWork,
  keepWork,
  openWritingThread,
} from '../../door/watch.js'
import type { CommandResult } from '../command-result.js'
import { areAtRest, areChanged, type FilesRead, noted, untilChanged } from './files-read.js'
import { type ProofServer, serveProofs } from './proof-server.js'

export interface PlanToWatch {
  readonly file: string
  readonly stem: string
  /** Where its set is, or will be. */
  readonly folder: string
}

/** Makes a plan, with what is kept of the last time and a list of what is read. */
export type MakeAgain = (
  plan: PlanToWatch,
  kept: KeptWork,
  files: FileAccess,
  watching: Pick<Watching, 'signal' | 'beforeInPlace'>,
) => Promise<CommandResult>

export interface PlansToWatch {
  readonly plans: readonly PlanToWatch[]
  readonly make: MakeAgain
  /** Prints what a run leaves. */
  readonly tell: (result: CommandResult) => Promise<void>
  readonly signal: AbortSignal
}

/** Whoever saves twice in haste does not wait for anything else. */
const A_MOMENT_MS = 100

const endedWell: CommandResult = { output: 'Watching has ended.', problems: '', exitCode: 0 }

export async function watchPlans({ plans, make, tell, signal }: PlansToWatch): Promise<CommandResult> {
  collectSoonerWhileOpen()
  const server = await serveProofs()
  const writingThread = openWritingThread()
  writingThread.start()
  const around = { make, tell, server, signal }
  try {
    const watched = plans.map((plan): Watched => ({ plan, kept: keepWork(writingThread), read: undefined }))
    const makeAgain = async (index: number): Promise<void> => {
      const each = watched[index]!
      watched[index] = { ...each, read: await makeOnce(each, around) }
    }
    for (const index of watched.keys()) {
      await makeAgain(index)
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
      const waiting = setTimeout(collectWhileWaiting, A_MOMENT_MS)
      await untilChanged(new Map(watched.flatMap(({ read = [] }) => [...read])), signal)
      clearTimeout(waiting)
      for (const [index, { read }] of watched.entries()) {
        if (signal.aborted) return endedWell
        if (read !== undefined && areChanged(read)) await makeAgain(index)
      }
      if (signal.aborted) return endedWell
    }
  } finally {
    server.close()
    await writingThread.end()
  }
}

interface Watched {
  readonly plan: PlanToWatch
  readonly kept: KeptWork
  /** Nothing before the first time. */
  readonly read: FilesRead | undefined
}

type Around = Omit<PlansToWatch, 'plans'> & { readonly server: ProofServer }

/**
 * A plan with an error leaves the last set as it was, and the page says so. What was saved is made at once, while it is seen
 * whether its files are at rest: nothing is put in place or told before; where one changes again, it is made anew.
 */
async function makeOnce(
  { plan, kept, read: before }: Watched,
  { make, tell, server, signal }: Around,
): Promise<FilesRead> {
  for (;;) {
    const { files, read } = noted(disk)
    const moved = new AbortController()
    const atRest = before === undefined ? Promise.resolve(true) : areAtRest(before, read)
    const looked = atRest.then(isSo => {
      if (!isSo) moved.abort()
    })
    const either = AbortSignal.any([signal, moved.signal])
    const result = await make(plan, kept, files, {
      signal: either,
      beforeInPlace: async () => {
        await looked
        either.throwIfAborted()
      },
    })
    if (signal.aborted) return read
    if (!(await atRest)) continue
    const trouble = result.exitCode === 0 ? undefined : `${LAST_GOOD}\n\n${result.problems}`
    server.show(plan.stem, resolve(plan.folder), trouble)
    await tell(result)
    return read
  }
}

const LAST_GOOD = 'The plan has a problem, so these are still the sheets from before:'
