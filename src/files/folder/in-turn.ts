/**
 * Runs the tasks, at most `limit` of them under way at once, started in their order. After a failure no other
 * task is started; the failure is thrown when those under way have come to rest.
 */
export async function runInTurn(tasks: readonly (() => Promise<void>)[], limit: number): Promise<void> {
  const waiting = [...tasks].reverse()
  async function work(): Promise<void> {
    for (let task = waiting.pop(); task; task = waiting.pop())
      try {
        await task()
      } catch (error) {
        waiting.length = 0
        throw error
      }
  }
  const workers = Array.from({ length: Math.max(1, Math.min(limit, tasks.length)) }, work)
  for (const result of await Promise.allSettled(workers))
    if (result.status === 'rejected') throw result.reason
}
