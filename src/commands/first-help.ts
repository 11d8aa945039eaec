import { type CommandResult, resultOf } from './command-result.js'

export const commandNames: readonly string[] = [
  'make',
  'desk',
  'study',
  'find',
  'sorts',
  'check',
  'class',
  'new',
  'list',
  'help',
  'schema',
  'completion',
]

/** `oaktag` alone: what one would do next. */
export function whatNext(): CommandResult {
  return resultOf(
    [
      'oaktag makes word-study cards, boards and keys from one plan file. What next?',
      '',
      '  oaktag new week.yaml       write a plan to begin with; put your words in it',
      '  oaktag make week.yaml      make its sheets, and a page to print them from',
      '  oaktag desk week.yaml      the same by pointing, on a page in your browser',
      '  oaktag study reed marsh    see what words show: sounds, patterns, syllables',
      '  oaktag list layouts        see all that can be printed',
      '',
      'oaktag help shows every command; oaktag help NAME explains a command, a key of',
      'the plan, or a layout.',
    ].join('\n'),
  )
}
