import type { Box } from '../geometry.js'

/** One drawing step of a path, its coordinates absolute, in mm. */
export interface PathStep {
  readonly command: 'M' | 'L' | 'Q' | 'C' | 'Z'
  readonly numbers: readonly number[]
}

const numbersTaken = { M: 2, L: 2, Q: 4, C: 6, Z: 0 } as const

type Command = keyof typeof numbersTaken

/**
 * Reads the path data that pieces are made of: absolute M, L, Q, C, Z, commands repeated or implied as SVG 2
 * (§9.3) allows. Anything else is a fault of ours and throws.
 */
export function readPath(d: string): readonly PathStep[] {
  const tokens = d.match(/[A-Za-z]|[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?/gi) ?? []
  const steps: PathStep[] = []
  let command: Command | undefined
  let at = 0
  while (at < tokens.length) {
    if (/^[A-Za-z]/.test(tokens[at]!)) command = commandNamed(tokens[at++]!, d)
    if (command === undefined) throw new Error(`path data without a command: ${d.slice(0, 40)}`)
    const numbers = tokens.slice(at, at + numbersTaken[command]).map(Number)
    if (numbers.length < numbersTaken[command] || numbers.some(Number.isNaN))
      throw new Error(`path data breaks off after ${command}: ${d.slice(0, 40)}`)
    steps.push({ command, numbers })
    at += numbersTaken[command]
    if (command === 'M') command = 'L'
    else if (command === 'Z') command = undefined
  }
  return steps
}

/** A box that holds the path; control points count, so it may be a little larger than the ink. */
export function pathBox(d: string): Box | undefined {
  let [left, top, right, bottom] = [
    Number.POSITIVE_INFINITY,
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
  ]
  for (const { numbers } of readPath(d))
    for (let index = 0; index < numbers.length; index += 2) {
      left = Math.min(left, numbers[index]!)
      right = Math.max(right, numbers[index]!)
      top = Math.min(top, numbers[index + 1]!)
      bottom = Math.max(bottom, numbers[index + 1]!)
    }
  return left > right ? undefined : { xMm: left, yMm: top, widthMm: right - left, heightMm: bottom - top }
}

function commandNamed(letter: string, d: string): Command {
  if (letter in numbersTaken) return letter as Command
  throw new Error(`path command ${letter} is not one of M L Q C Z: ${d.slice(0, 40)}`)
}
