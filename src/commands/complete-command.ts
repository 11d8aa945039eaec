import { readFileSync } from 'node:fs'
import { type CommandResult, resultOf } from './command-result.js'
import { completions } from './complete.js'

/** `oaktag complete WORD…`: what can stand for the last of them, a line each. Called by the completion scripts. */
export async function completeCommand(typed: readonly string[]): Promise<CommandResult> {
  // At each press of a key only what can stand there is loaded.
  const told = () => import('../door/plan-keys.js')
  const found = await completions(typed, {
    keys: async () => [...new Set((await told()).planKeys().map(({ name }) => name))],
    layouts: async () => (await (await told()).toldNames()).layouts.map(({ name }) => name),
    patterns: async () => (await (await told()).toldNames()).patterns.map(({ name }) => name),
    itemsOf,
  })
  return resultOf(found.join('\n'))
}

/** None where the plan cannot be read: completion is no place for problems. */
async function itemsOf(planFile: string): Promise<readonly string[]> {
  const { readPlan } = await import('../door/plans.js')
  try {
    const plan = readPlan(readFileSync(planFile, 'utf8'), { file: planFile })
    return plan.ok ? plan.value.print.map(({ name }) => name) : []
  } catch {
    return []
  }
}
