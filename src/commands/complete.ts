/** What can stand next on a command line, for the shells' completion. */
import { shells } from './completion-shells.js'
import { commandNames } from './first-help.js'
import { listKinds } from './list-kinds.js'

/** Names that take a moment to gather, asked for only where they can stand. */
export interface CompletionNames {
  readonly keys: () => Promise<readonly string[]>
  readonly layouts: () => Promise<readonly string[]>
  readonly patterns: () => Promise<readonly string[]>
  /** What an unfinished or finished plan on the line prints, by name. */
  readonly itemsOf: (planFile: string) => Promise<readonly string[]>
}

/** @param typed the words behind `oaktag`, the unfinished one last */
export async function completions(
  typed: readonly string[],
  names: CompletionNames,
): Promise<readonly string[]> {
  const unfinished = typed.at(-1) ?? ''
  const found = await candidates(typed.slice(0, -1), unfinished, names)
  return found.filter(each => each.startsWith(unfinished))
}

async function candidates(
  before: readonly string[],
  unfinished: string,
  names: CompletionNames,
): Promise<readonly string[]> {
  const [command] = before
  if (command === undefined) return unfinished.startsWith('-') ? ['--help', '--version'] : commandNames
  if (unfinished.startsWith('-')) return (optionsOf[command] ?? []).concat('--help')
  const option = before.at(-1)!
  if (option.startsWith('--')) {
    if (option === '--only') return (await Promise.all(before.filter(isPlan).map(names.itemsOf))).flat()
    if (option === '--pattern') return names.patterns()
    const values = valuesOf[option]
    if (values !== undefined) return values
  }
  switch (command) {
    case 'list':
      return listKinds
    case 'completion':
      return shells
    case 'schema':
      return ['plan', 'class']
    case 'help':
      return [
        ...commandNames,
        ...(await names.keys()),
        ...(await names.layouts()),
        ...(await names.patterns()),
      ]
    default:
      return []
  }
}

const isPlan = (word: string): boolean => /\.ya?ml$/i.test(word)

const optionsOf: Readonly<Record<string, readonly string[]>> = {
  make: ['--out', '--only', '--format', '--dpi', '--jobs', '--seed', '--quiet'],
  desk: ['--out', '--no-open'],
  study: ['--file', '--why', '--arpabet', '--json'],
  find: [
    '--pattern',
    '--letters',
    '--place',
    '--sounds',
    '--syllables',
    '--level',
    '--like',
    '--taught',
    '--for',
    '--groups',
    '--count',
    '--json',
  ],
  sorts: ['--file', '--json'],
  check: ['--json', '--quiet'],
  class: ['--week', '--json'],
  list: ['--json'],
  schema: ['--out'],
}

const valuesOf: Readonly<Record<string, readonly string[]>> = {
  '--place': ['beginning', 'middle', 'end'],
  '--level': ['easy', 'middle', 'hard'],
  '--format': ['svg', 'png', 'pdf', 'svg,png', 'svg,png,pdf'],
}
