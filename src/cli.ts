#!/usr/bin/env node
import yargs from 'yargs'
import { hideBin } from 'yargs/helpers'
import type { CommandResult } from './commands/command-result.js'
import { faultReport } from './commands/fault-report.js'
import { findNotes } from './commands/find-notes.js'
import { withoutSteering } from './commands/plain-text.js'
import { inPlainWords, optionGivenTwice } from './commands/usage-wording.js'
import { version } from './installation.js'

/** Exit codes: 0 all well; 1 the input has a problem; 2 wrong usage. */
const WRONG_USAGE = 2

const planFiles = { type: 'string', array: true, demandOption: true, describe: 'plan file' } as const

/** A double dash before the words or the plan changes nothing: neither ever begins with a dash. */
const typed = hideBin(process.argv).filter(argument => argument !== '--')

process.on('uncaughtException', reportFault)
process.stdout.on('error', endWhenNobodyReads)
// Where complaints themselves cannot be written there is nobody to tell.
process.stderr.on('error', () => process.exit(1))

/** Commands are loaded only when called: `study` must not wait for the drawing libraries. */
const cli = yargs(typed)
  .scriptName('oaktag')
  .usage('$0 COMMAND\n\nWord-study cards, boards and keys from one plan file.')
  .command(
    'make [plan..]',
    'make every sheet of a plan',
    command =>
      command
        .positional('plan', { ...planFiles, demandOption: false, default: [] as string[] })
        .option('out', {
          type: 'string',
          default: 'out',
          requiresArg: true,
          describe: 'folder for the sheets',
        })
        .option('only', {
          type: 'string',
          array: true,
          requiresArg: true,
          describe: 'items to make, by name',
        })
        // No array: it would swallow a plan named behind it.
        .option('format', {
          type: 'string',
          requiresArg: true,
          describe: 'svg, png, pdf, with commas between (default: svg,png)',
        })
        .option('dpi', {
          type: 'number',
          default: 300,
          requiresArg: true,
          describe: 'pixels per inch of PNG sheets',
        })
        .option('jobs', { type: 'number', requiresArg: true, describe: 'how many sheets to work on at once' })
        .option('seed', { type: 'number', requiresArg: true, describe: 'another deal of boards and orders' }),
    async options => run((await import('./commands/make.js')).makeCommand(options)),
  )
  .command(
    'study [word..]',
    'what each word shows: sounds, patterns, syllables, plural, other forms',
    command =>
      command
        .positional('word', {
          type: 'string',
          array: true,
          default: [] as string[],
          describe: 'words to study, or a plan',
        })
        .option('file', { type: 'string', requiresArg: true, describe: 'word list, .txt or .csv' })
        .option('why', { type: 'boolean', default: false, describe: 'tell which rule found each pattern' })
        .option('arpabet', { type: 'boolean', default: false, describe: 'write sounds in ARPABET' })
        .option('json', { type: 'boolean', default: false, describe: 'print JSON' }),
    async options => run((await import('./commands/study.js')).studyCommand(options)),
  )
  .command(
    'find',
    'words that fit, the most familiar first',
    command =>
      command
        .option('pattern', { type: 'string', array: true, requiresArg: true, describe: 'pattern it shows' })
        .option('letters', { type: 'string', requiresArg: true, describe: 'letters it holds' })
        .option('place', {
          choices: ['beginning', 'middle', 'end'] as const,
          requiresArg: true,
          describe: 'where they stand',
        })
        .option('sounds', { type: 'number', requiresArg: true, describe: 'number of sounds, as taught' })
        .option('syllables', { type: 'number', requiresArg: true, describe: 'number of syllables' })
        .option('level', {
          choices: ['easy', 'middle', 'hard'] as const,
          requiresArg: true,
          describe: 'how hard (see below)',
        })
        .option('like', { type: 'string', requiresArg: true, describe: 'a word it is like' })
        .option('taught', {
          type: 'string',
          requiresArg: true,
          describe: 'list or class file: nothing that the class has not been taught',
        })
        .option('for', {
          type: 'string',
          requiresArg: true,
          describe: 'plan: words that show what it marks, as hard as its own',
        })
        .option('count', { type: 'number', default: 20, requiresArg: true, describe: 'how many' })
        .option('json', { type: 'boolean', default: false, describe: 'print JSON' })
        .epilogue(findNotes),
    async options => run((await import('./commands/find.js')).findCommand(options)),
  )
  .command(
    'sorts [plan]',
    'the sorts that the words of a plan or list support',
    command =>
      command
        .positional('plan', { type: 'string', describe: 'plan file' })
        .option('file', { type: 'string', requiresArg: true, describe: 'word list, .txt or .csv' })
        .option('json', { type: 'boolean', default: false, describe: 'print JSON' }),
    async options => run((await import('./commands/sorts.js')).sortsCommand(options)),
  )
  .command(
    'check <plan..>',
    'read a plan, report problems, count sheets and cuts; make nothing',
    command =>
      command
        .positional('plan', planFiles)
        .option('json', { type: 'boolean', default: false, describe: 'print JSON' }),
    async options => run((await import('./commands/check.js')).checkCommand(options)),
  )
  .command(
    'new [file]',
    'write a commented starter plan; never overwrites',
    command =>
      command.positional('file', { type: 'string', default: 'plan.yaml', describe: 'where to write it' }),
    async options => run((await import('./commands/new.js')).newCommand(options)),
  )
  .command(
    'list [kind]',
    'what may be named in a plan',
    command =>
      command.positional('kind', {
        choices: ['papers', 'fonts', 'patterns', 'layouts', 'lines', 'outlines'] as const,
        describe: 'one kind of name',
      }),
    async options => run((await import('./commands/list.js')).listCommand(options)),
  )
  .demandCommand(1, 'name a command')
  .recommendCommands()
  .check(options => optionGivenTwice(options) ?? true, true)
  .strict()
  .version(version)
  .help()
  .alias('help', 'h')
  .wrap(80)
  .fail(refuseUsage)

await cli.parse()

/** Writes a command's result; the only place that prints. */
async function run(running: Promise<CommandResult>): Promise<void> {
  const result = await running
  if (result.output !== '') process.stdout.write(`${withoutSteering(result.output)}\n`)
  if (result.problems !== '') process.stderr.write(`${withoutSteering(result.problems)}\n`)
  process.exitCode = result.exitCode
}

/** yargs passes a message for wrong usage, and none for an error of the command itself. */
function refuseUsage(message: string | null, error: Error | undefined): never {
  if (message === null) reportFault(error)
  const plain = inPlainWords(message)
  const help = plain.includes('command') ? 'oaktag --help' : `oaktag ${typed[0]} --help`
  process.stderr.write(`oaktag: ${withoutSteering(plain)}\n  ${help} shows what may be written.\n`)
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
