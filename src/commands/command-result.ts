import { aHundredOfAKind, formatProblem, hasErrors, type Problem } from '../door/problems.js'

/** What a command leaves: text for standard output, problems for standard error, an exit code. */
export interface CommandResult {
  readonly output: string
  readonly problems: string
  /** 0 all well; 1 the input has a problem; 2 wrong usage; 130 stopped by Ctrl-C, as shells tell it. */
  readonly exitCode: 0 | 1 | 2 | 130
}

export function resultOf(output: string, problems: readonly Problem[] = []): CommandResult {
  return {
    output,
    problems: aHundredOfAKind(problems).map(formatProblem).join('\n'),
    exitCode: hasErrors(problems) ? 1 : 0,
  }
}

/** The command was called in a way it does not know. */
export function wrongUsage(message: string, advice: string): CommandResult {
  return { output: '', problems: `oaktag: ${message}\n  ${advice}`, exitCode: 2 }
}
