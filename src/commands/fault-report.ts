export interface Fault {
  readonly error: unknown
  /** The command that was called, as typed. */
  readonly command: string | undefined
  /** Whether to show where in the program it happened. */
  readonly debug: boolean
}

/** A fault of the program's own, told in plain words: what it was doing, and what to do about it. */
export function faultReport({ error, command, debug }: Fault): string {
  const what = command === undefined ? 'oaktag' : `oaktag ${command}`
  const message = error instanceof Error ? error.message : String(error)
  const [first = 'no reason given'] = message.split('\n')
  const lines = [
    `oaktag: "${what}" stopped at a fault of its own: ${first}`,
    '  Please report it, with the plan or the words. With OAKTAG_DEBUG=1 set it shows where it happened.',
  ]
  const trace = debug && error instanceof Error && error.stack !== undefined ? [error.stack] : []
  return [...lines, ...trace].join('\n')
}
