import { Worker } from 'node:worker_threads'
import { errorOf } from './step-failure.js'
import type { StepResult, WritingAnswer, WritingStep, WritingSteps } from './writing-steps.js'
import { WritingThreadEnded } from './writing-thread.js'

/** How steps reach the thread that takes them, and how its answers come back. */
export interface ThreadChannel {
  readonly start: () => void
  readonly isReady: () => boolean
  /**
   * Resolved when the steps are taken; rejected with what went wrong with one, behind which none is taken.
   * @param each told what each gave, by its place among them
   */
  readonly post: (steps: WritingSteps, each: (result: StepResult, index: number) => void) => Promise<void>
  readonly isAnswerDue: () => boolean
  /** Resolved when the next answer is there, or none will come. */
  readonly nextAnswer: () => Promise<void>
  /** When all answers are there that anybody needs. */
  readonly end: () => Promise<void>
}

/** Steps that were handed over. */
interface Posted {
  /** Whether anything is amiss where they are not taken any more. */
  readonly isNeeded: boolean
  readonly answered: (answer: WritingAnswer) => void
  readonly ended: () => void
}

/** @param module what runs in the thread, and @param memory what both threads share */
export function threadChannel(module: string, memory: SharedArrayBuffer): ThreadChannel {
  let worker: Worker | undefined
  let state: 'not started' | 'starting' | 'ready' | 'ended' = 'not started'
  /** They are answered in their order. */
  const posted: Posted[] = []
  let waiting: (() => void)[] = []

  function heard(answer: WritingAnswer | 'ready'): void {
    if (answer === 'ready') state = 'ready'
    else {
      posted.shift()?.answered(answer)
      if (posted.length === 0) worker?.unref()
      wake()
    }
  }

  function ended(): void {
    state = 'ended'
    for (const each of posted.splice(0)) each.ended()
    wake()
  }

  function wake(): void {
    const woken = waiting
    waiting = []
    for (const each of woken) each()
  }

  const isAnswerDue = (): boolean => posted.length > 0
  const nextAnswer = (): Promise<void> => new Promise(resolve => waiting.push(resolve))

  return {
    start: () => {
      if (state !== 'not started') return
      state = 'starting'
      // How Node was started is nothing to it.
      worker = new Worker(module, { execArgv: [], workerData: memory })
      worker.unref()
      worker.on('message', heard)
      // What went wrong in it is of no use to a teacher: her sets are written without it.
      worker.on('error', ended)
      worker.on('exit', ended)
    },
    isReady: () => state === 'ready',
    post: (steps, each) =>
      new Promise((done, failed) => {
        if (state !== 'ready' || worker === undefined) return failed(new WritingThreadEnded())
        // The program goes on as long as something is under way here, and no longer.
        if (posted.length === 0) worker.ref()
        posted.push({
          isNeeded: steps.steps.some(isNeeded),
          answered: ({ results, failure }) => {
            results.forEach(each)
            if (failure === undefined) done()
            else failed(errorOf(failure))
          },
          ended: () => failed(new WritingThreadEnded()),
        })
        worker.postMessage(steps, steps.steps.flatMap(memoryOf))
      }),
    isAnswerDue,
    nextAnswer,
    end: async () => {
      while (posted.some(each => each.isNeeded)) await nextAnswer()
      state = 'ended'
      await worker?.terminate()
    },
  }
}

/** What bears on its memory alone is lost with it. */
function isNeeded({ kind }: WritingStep): boolean {
  return kind !== 'draw ahead' && kind !== 'let go'
}

/** It goes over as it is, and is not copied. */
function memoryOf(step: WritingStep): readonly ArrayBuffer[] {
  return 'page' in step && step.page !== undefined ? [step.page.drawings.buffer] : []
}
