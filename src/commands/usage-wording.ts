import { withoutSteering } from './plain-text.js'

/** What the argument reader says, and the same in plain words. */
const wordings: readonly (readonly [said: RegExp, plain: string])[] = [
  [/^Not enough non-option arguments: .*$/, 'a plan file is missing'],
  [/^Unknown arguments?: (.*)$/, '$1 is not understood here'],
  [/^Unknown commands?: (.*)$/, 'there is no command $1'],
  [/^Not enough arguments following: (.*)$/, '--$1 needs a value after it'],
  [/^Invalid values:\s+Argument: (.*), Given: (.*), Choices: (.*)$/, '$1 cannot be $2, only $3'],
  [/^Did you mean (.*)\?$/, 'there is no such command; did you mean $1?'],
]

/** What is said of a command line that cannot be understood. */
export function refusal(message: string, command: string | undefined): string {
  const plain = inPlainWords(message)
  const help = plain.includes('command') ? 'oaktag --help' : `oaktag ${command} --help`
  return `oaktag: ${withoutSteering(plain)}\n  ${help} shows what may be written.\n`
}

function inPlainWords(message: string): string {
  const wording = wordings.find(([said]) => said.test(message))
  return wording === undefined ? message : message.replace(...wording)
}

const singleOptions = [
  'out',
  'dpi',
  'jobs',
  'seed',
  'file',
  'letters',
  'place',
  'sounds',
  'syllables',
  'level',
  'like',
  'taught',
  'for',
  'count',
] as const

/** What to say of an option that takes one value and got several; `undefined` where all is well. */
export function optionGivenTwice(options: Readonly<Record<string, unknown>>): string | undefined {
  const twice = singleOptions.find(name => Array.isArray(options[name]))
  return twice === undefined ? undefined : `--${twice} is given twice`
}
