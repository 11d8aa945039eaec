import { readFileSync } from 'node:fs'
import { planKeys, planNames, readPlan } from '../door/plans.js'
import { type CommandResult, resultOf } from './command-result.js'
import { completions } from './complete.js'

/** `oaktag complete WORD…`: what can stand for the last of them, a line each. Called by the completion scripts. */
export function completeCommand(typed: readonly string[]): CommandResult {
  const found = completions(typed, {
    keys: () => [...new Set(planKeys().map(({ name }) => name))],
    layouts: () => planNames().layouts.map(({ name }) => name),
    patterns: () => planNames().patterns.map(({ name }) => name),
    itemsOf,
  })
  return resultOf(found.join('\n'))
}

/** None where the plan cannot be read: completion is no place for problems. */
function itemsOf(planFile: string): readonly string[] {
  try {
    const plan = readPlan(readFileSync(planFile, 'utf8'), { file: planFile })
    return plan.ok ? plan.value.print.map(({ name }) => name) : []
  } catch {
    return []
  }
}
