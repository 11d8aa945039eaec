import { errorAt, failWith, type Outcome } from '../door/problems.js'

/** A fault of the program's own, met at one plan, is told there and takes no other plan of the call with it. */
export async function planApart<T>(
  plan: string,
  run: () => Promise<Outcome<T>>,
  debug = process.env.OAKTAG_DEBUG === '1',
): Promise<Outcome<T>> {
  try {
    return await run()
  } catch (error) {
    if (debug) throw error
    const reason = error instanceof Error ? error.message : String(error)
    const problem = errorAt(
      { file: plan },
      `oaktag stopped at a fault of its own: ${reason}`,
      'Please report it, with this plan. With OAKTAG_DEBUG=1 set it shows where it happened.',
    )
    return failWith([problem])
  }
}
