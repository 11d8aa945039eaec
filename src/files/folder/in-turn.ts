/** Something to be done, begun when there is a hand free. */
export type Task = () => Promise<void>

/**
 * Does the tasks, at most `limit` of them under way at once, begun in their order. A task is asked for only when there is a
 * hand free for it, so that what it needs is made no earlier. After a failure no other is asked for; the failure is thrown
 * when those under way have come to rest.
 */
export async function runInTurn(tasks: AsyncGenerator<Task>, limit: number): Promise<void> {
  let failed = false
  async function work(): Promise<void> {
    while (!failed)
      try {
        const next = await tasks.next()
        if (next.done === true) return
        await next.value()
      } catch (error) {
        failed = true
        throw error
      }
  }
  const results = await Promise.allSettled(Array.from({ length: Math.max(1, limit) }, work))
  for (const result of results) if (result.status === 'rejected') throw result.reason
}
