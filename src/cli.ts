#!/usr/bin/env node
import yargs, { type Argv } from 'yargs'
import { hideBin } from 'yargs/helpers'
import type { CommandResult } from './commands/command-result.js'
import { version } from './installation.js'

/** Exit codes: 0 all well; 1 the input has a problem; 2 wrong usage. */
const WRONG_USAGE = 2

/** Commands are loaded only when called: `study` must not wait for the drawing libraries. */
const cli = yargs(hideBin(process.argv))
  .scriptName('oaktag')
  .usage('$0 COMMAND\n\nWord-study cards, boards and keys from one plan file.')
  .command(
    'make <plan..>',
    'make every sheet of a plan',
    command =>
      command
        .positional('plan', { type: 'string', array: true, demandOption: true, describe: 'plan file' })
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
        .option('format', {
          type: 'string',
          array: true,
          requiresArg: true,
          describe: 'svg, png, pdf (default: svg,png)',
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
    'what each word shows: sounds, patterns, syllables, plural',
    command =>
      command
        .positional('word', {
          type: 'string',
          array: true,
          default: [] as string[],
          describe: 'words to study',
        })
        .option('file', { type: 'string', requiresArg: true, describe: 'word list, .txt or .csv' })
        .option('why', { type: 'boolean', default: false, describe: 'tell which rule found each pattern' })
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
        .option('place', { choices: ['beginning', 'middle', 'end'] as const, describe: 'where they stand' })
        .option('sounds', { type: 'number', requiresArg: true, describe: 'number of sounds' })
        .option('syllables', { type: 'number', requiresArg: true, describe: 'number of syllables' })
        .option('like', { type: 'string', requiresArg: true, describe: 'a word it is like' })
        .option('count', { type: 'number', default: 20, requiresArg: true, describe: 'how many' })
        .option('json', { type: 'boolean', default: false, describe: 'print JSON' }),
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
        .positional('plan', { type: 'string', array: true, demandOption: true, describe: 'plan file' })
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
  .demandCommand(1, 'Name a command.')
  .recommendCommands()
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
  if (result.output !== '') process.stdout.write(`${result.output}\n`)
  if (result.problems !== '') process.stderr.write(`${result.problems}\n`)
  process.exitCode = result.exitCode
}

function refuseUsage(message: string | null, error: Error | undefined, program: Argv): void {
  if (error !== undefined && message === null) throw error
  process.stderr.write(
    `oaktag: ${message ?? error?.message}\n  oaktag ${program.parsed ? '' : ''}--help lists the commands.\n`,
  )
  process.exit(WRONG_USAGE)
}
