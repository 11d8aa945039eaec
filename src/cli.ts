#!/usr/bin/env node
import { hideBin } from 'yargs/helpers'
import { commandLine } from './commands/command-line.js'
import type { CommandResult } from './commands/command-result.js'
import { faultReport } from './commands/fault-report.js'
import { whatNext } from './commands/first-help.js'
import { inColour } from './commands/in-colour.js'
import { withoutSteering } from './commands/plain-text.js'
import { STANDARD_INPUT } from './commands/standard-input.js'
import { refusal } from './commands/usage-wording.js'

/** Exit codes: 0 all well; 1 the input has a problem; 2 wrong usage. */
const WRONG_USAGE = 2

/** A double dash before the words or the plan changes nothing: neither ever begins with a dash. */
const typed = hideBin(process.argv)
  .filter(argument => argument !== '--')
  // yargs passes over a dash alone.
  .map(argument => (argument === '-' ? STANDARD_INPUT : argument))

process.on('uncaughtException', reportFault)
process.stdout.on('error', endWhenNobodyReads)
// Where complaints themselves cannot be written there is nobody to tell.
process.stderr.on('error', () => process.exit(1))

// No waiting here: the module must be one that `require` can load, too. What is refused is told as uncaught.
void answer()

async function answer(): Promise<void> {
  if (typed.length === 0) return run(Promise.resolve(whatNext()))
  // What is being typed behind `complete` may hold options, which are not its own.
  if (typed[0] === 'complete') return run(completion(typed.slice(1)))
  await commandLine(typed, { run, refuse: refuseUsage }).parse()
}

async function completion(words: readonly string[]): Promise<CommandResult> {
  return (await import('./commands/complete-command.js')).completeCommand(words)
}

/** Writes a command's result; the only place that prints. */
async function run(running: Promise<CommandResult>): Promise<void> {
  const result = await running
  if (result.output !== '') process.stdout.write(`${withoutSteering(result.output)}\n`)
  if (result.problems !== '')
    process.stderr.write(`${inColour(withoutSteering(result.problems), process.stderr)}\n`)
  process.exitCode = result.exitCode
}

/** yargs passes a message for wrong usage, and none for an error of the command itself. */
function refuseUsage(message: string | null, error: Error | undefined): never {
  if (message === null) reportFault(error)
  process.stderr.write(refusal(message, typed[0]))
  process.exit(WRONG_USAGE)
}

/** Nothing that can be mended by the teacher: one line instead of a page of program. */
function reportFault(error: unknown): never {
  process.stderr.write(
    `${faultReport({ error, command: typed[0], debug: process.env.OAKTAG_DEBUG === '1' })}\n`,
  )
  process.exit(1)
}

/** `oaktag list | head` closes the pipe when it has seen enough. */
function endWhenNobodyReads(error: NodeJS.ErrnoException): never {
  if (error.code === 'EPIPE') process.exit()
  const why = error.code === 'ENOSPC' ? 'the disk is full' : (error.code ?? error.message)
  process.stderr.write(
    `oaktag: what was to be printed could not be written: ${why}\n  Send it somewhere else.\n`,
  )
  process.exit(1)
}
