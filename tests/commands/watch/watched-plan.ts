import { join } from 'node:path'
import { onTestFinished } from 'vitest'
import type { CommandResult } from '../../../src/commands/command-result.js'
import { makeCommand } from '../../../src/commands/make.js'

export interface WatchedPlan {
  /** What the next run leaves, in the order of runs; the greeting with the page's address is the second of all. */
  readonly next: () => Promise<CommandResult>
  /** As Ctrl-C does; gives what the command leaves at its end. */
  readonly stop: () => Promise<CommandResult>
}

/** `oaktag make --watch` of a plan in this process, ended when the test is. */
export function watchPlan(planFile: string, out: string): WatchedPlan {
  const left: CommandResult[] = []
  let wake = (): void => {}
  const controller = new AbortController()
  const options = { plan: [planFile], out, format: 'svg,png', dpi: 72, watch: true }
  const running = makeCommand(options, {
    stream: { write: () => true },
    signal: controller.signal,
    tell: async result => {
      left.push(result)
      wake()
    },
  })
  const stop = (): Promise<CommandResult> => {
    controller.abort()
    return running
  }
  onTestFinished(async () => void (await stop()))
  return {
    next: async () => {
      while (left.length === 0)
        await new Promise<void>(done => {
          wake = done
        })
      return left.shift()!
    },
    stop,
  }
}

export function outOf(folder: string): string {
  return join(folder, 'out')
}
