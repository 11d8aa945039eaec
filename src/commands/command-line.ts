/** What may be typed behind `oaktag`, and which command it calls. Commands are loaded only when called. */
import yargs from 'yargs'
import { version } from '../installation.js'
import type { CommandResult } from './command-result.js'
import { shells } from './completion-shells.js'
import { commandNames } from './first-help.js'
import { listKinds } from './list-kinds.js'
import { optionGivenTwice } from './usage-wording.js'

export interface CommandLine {
  /** Prints what a command leaves. */
  readonly run: (running: Promise<CommandResult>) => Promise<void>
  /** A message for wrong usage, or null and the error of the command itself. */
  readonly refuse: (message: string | null, error: Error | undefined) => never
}

const json = { type: 'boolean', default: false, describe: 'print JSON' } as const
const wordListFile = { type: 'string', requiresArg: true, describe: 'word list, .txt or .csv' } as const
const quiet = { type: 'boolean', default: false, describe: 'print problems alone' } as const
const planFiles = { type: 'string', array: true, default: [] as string[] } as const
const planFile = 'plan or class file, a pattern such as "weeks/*.yaml", or - for standard input'

/** What runs is told of the first Ctrl-C; the second ends the program as it always would. */
async function stoppable(start: (signal: AbortSignal) => Promise<CommandResult>): Promise<CommandResult> {
  const controller = new AbortController()
  const stop = () => controller.abort()
  process.once('SIGINT', stop)
  try {
    return await start(controller.signal)
  } finally {
    process.off('SIGINT', stop)
  }
}

export function commandLine(typed: readonly string[], { run, refuse }: CommandLine) {
  return (
    yargs([...typed])
      .scriptName('oaktag')
      // What yargs itself says, in the language of all the rest.
      .locale('en')
      .usage('$0 COMMAND\n\nWord-study cards, boards and keys from one plan file.')
      .command(
        'make [plan..]',
        'make every sheet of a plan',
        command =>
          command
            .positional('plan', { ...planFiles, describe: planFile })
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
            .option('jobs', {
              type: 'number',
              requiresArg: true,
              describe: 'how many sheets to work on at once',
            })
            .option('seed', {
              type: 'number',
              requiresArg: true,
              describe: 'another deal of boards and orders',
            })
            .option('watch', {
              type: 'boolean',
              default: false,
              describe: 'make again at every save',
            })
            .option('quiet', quiet)
            .example('$0 make week.yaml', 'all its sheets, in out/week')
            .example('$0 make week.yaml --only bingo --format pdf', 'the bingo alone, as a PDF'),
        async options => {
          const { makeCommand } = await import('./make.js')
          const tell = (result: CommandResult) => run(Promise.resolve(result))
          await run(stoppable(signal => makeCommand(options, { signal, tell })))
        },
      )
      .command(
        'desk [plan]',
        'a page to write a plan on by pointing, with its sheets beside it',
        command =>
          command
            .positional('plan', { type: 'string', describe: 'plan file (default: a new one)' })
            .option('out', {
              type: 'string',
              default: 'out',
              requiresArg: true,
              describe: 'folder for the files that you save',
            })
            .option('open', {
              type: 'boolean',
              default: true,
              describe: 'open the browser; --no-open prints the address alone',
            })
            .example('$0 desk week.yaml', 'the plan in your browser; Ctrl-C ends it'),
        async options => {
          const { deskCommand } = await import('./desk.js')
          const tell = (result: CommandResult) => run(Promise.resolve(result))
          await run(stoppable(signal => deskCommand(options, { signal, tell })))
        },
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
            .option('file', wordListFile)
            .option('why', {
              type: 'boolean',
              default: false,
              describe: 'tell which rule found each pattern',
            })
            .option('arpabet', { type: 'boolean', default: false, describe: 'write sounds in ARPABET' })
            .option('json', json)
            .option('csv', {
              type: 'boolean',
              default: false,
              describe: 'print a word list for a spreadsheet',
            })
            .example('$0 study marsh thrush --why', 'two words, with the reasons')
            .example('$0 study week.yaml', 'the words of a plan'),
        async options => run((await import('./study.js')).studyCommand(options)),
      )
      .command(
        'find',
        'words that fit, the most familiar first',
        command =>
          command
            .option('pattern', {
              type: 'string',
              array: true,
              requiresArg: true,
              describe: 'pattern it shows',
            })
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
              describe: 'how hard',
            })
            .option('like', { type: 'string', requiresArg: true, describe: 'a word it is like' })
            .option('taught', {
              type: 'string',
              requiresArg: true,
              describe: 'list or class file of what is taught',
            })
            .option('for', { type: 'string', requiresArg: true, describe: 'plan: words that it could take' })
            .option('groups', {
              type: 'number',
              requiresArg: true,
              describe: 'so many lists, from short words to long',
            })
            .option('count', { type: 'number', default: 20, requiresArg: true, describe: 'how many' })
            .option('json', json)
            .example('$0 find --pattern digraph-blend --place beginning --level easy', '')
            .epilogue('oaktag help wishes tells what these mean.'),
        async options => run((await import('./find.js')).findCommand(options)),
      )
      .command(
        'sorts [plan]',
        'the sorts that the words of a plan or list support',
        command =>
          command
            .positional('plan', { type: 'string', describe: 'plan file' })
            .option('file', wordListFile)
            .option('json', json)
            .example('$0 sorts week.yaml', 'ranked, each with its columns'),
        async options => run((await import('./sorts.js')).sortsCommand(options)),
      )
      .command(
        'check [plan..]',
        'read a plan, report problems, count sheets and cuts; make nothing',
        command =>
          command
            .positional('plan', { ...planFiles, describe: planFile })
            .option('json', json)
            .option('quiet', quiet)
            .example('$0 check week.yaml', 'pages, sheets of card, cuts, and how to save some'),
        async options => run((await import('./check.js')).checkCommand(options)),
      )
      .command(
        'class [file]',
        'the weeks of a class: what is taught, which words are due, what is new',
        command =>
          command
            .positional('file', { type: 'string', describe: 'class file, or a plan that names one' })
            .option('week', { type: 'number', requiresArg: true, describe: 'the week to tell in full' })
            .option('json', json)
            .example('$0 class room-7.yaml', 'all weeks in short, the last in full')
            .example('$0 class week-3.yaml', 'the same, with the week of that plan in full'),
        async options => run((await import('./class.js')).classCommand(options)),
      )
      .command(
        'new [file]',
        'write a commented starter plan; never overwrites',
        command =>
          command
            .positional('file', { type: 'string', default: 'plan.yaml', describe: 'where to write it' })
            .example('$0 new week-3.yaml', 'then: oaktag make week-3.yaml'),
        async options => run((await import('./new.js')).newCommand(options)),
      )
      .command(
        'list [kind]',
        'what may be named in a plan',
        command =>
          command
            .positional('kind', { choices: listKinds, describe: 'one kind of name' })
            .option('json', json)
            .example('$0 list layouts', 'all that can be printed')
            .example('$0 list keys', 'all that can be said in a plan'),
        async options => run((await import('./list.js')).listCommand(options)),
      )
      .command(
        'help [what..]',
        'one command, or one key or name of a plan, explained',
        command =>
          command
            .positional('what', {
              type: 'string',
              array: true,
              default: [] as string[],
              describe: 'KEY or COMMAND',
            })
            .example('$0 help part of speech', 'a key of the plan')
            .example('$0 help bingo', 'a layout, with its own keys'),
        async ({ what }) => {
          const [name = ''] = what
          const isCommand = what.length === 1 && commandNames.includes(name)
          if (what.length === 0 || isCommand) await commandLine([...what, '--help'], { run, refuse }).parse()
          else await run((await import('./help.js')).helpCommand({ what }))
        },
      )
      .command(
        'schema [of]',
        'the JSON Schema of a plan, for editors',
        command =>
          command
            .positional('of', {
              choices: ['plan', 'class'] as const,
              default: 'plan' as const,
              describe: 'which file',
            })
            .option('out', { type: 'string', requiresArg: true, describe: 'file to write it to' })
            .example('$0 schema --out plan.schema.json', 'for an editor that asks for it'),
        async options => run((await import('./schema.js')).schemaCommand(options)),
      )
      .command(
        'completion <shell>',
        'a script with which the shell completes what is typed',
        command =>
          command
            .positional('shell', { choices: shells, demandOption: true, describe: 'which shell' })
            .example('$0 completion bash >> ~/.bashrc', 'from the next terminal on'),
        async options => run((await import('./completion.js')).completionCommand(options)),
      )
      .demandCommand(1, 'name a command')
      .recommendCommands()
      .check(options => optionGivenTwice(options) ?? true, true)
      .strict()
      .version(version)
      .alias('version', 'v')
      .help()
      .alias('help', 'h')
      .wrap(80)
      .fail(refuse)
  )
}
