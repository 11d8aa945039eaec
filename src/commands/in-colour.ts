import { styleText } from 'node:util'

/** What of a stream tells whether it is a terminal. */
interface Stream {
  readonly isTTY?: boolean
}

/** Whether colours may be sent there: to a terminal alone, and never against NO_COLOR (no-color.org). */
export function takesColour(stream: Stream, env: NodeJS.ProcessEnv = process.env): boolean {
  return stream.isTTY === true && !env.NO_COLOR && env.TERM !== 'dumb'
}

/** Problems for a terminal: where each is stands out, and what kind it is. */
export function inColour(problems: string, stream: Stream, env: NodeJS.ProcessEnv = process.env): string {
  if (!takesColour(stream, env)) return problems
  return problems.replaceAll(/^(\S.*?: )(error|warning)(?=: )/gm, (_, place: string, kind: string) => {
    // The stream has been asked already; `styleText` would ask standard output.
    const styled = styleText(kind === 'error' ? ['red', 'bold'] : ['yellow', 'bold'], kind, {
      validateStream: false,
    })
    return `${place}${styled}`
  })
}
