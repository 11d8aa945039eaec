import type { Box } from '../../geometry.js'
import { readNumber } from '../../pieces/art/path-numbers.js'

/** A path taken apart: its drawing steps by their commands (`MQQLZ`), and the numbers that these take, x and y by turns, in mm. */
export interface PathSteps {
  readonly commands: string
  readonly numbers: readonly number[]
}

export type PathCommand = 'M' | 'L' | 'Q' | 'C' | 'Z'

/** By the command. */
export const numbersTaken: Readonly<Record<string, number>> = { M: 2, L: 2, Q: 4, C: 6, Z: 0 }

/**
 * Reads the path data that pieces are made of: absolute M, L, Q, C, Z, commands repeated or implied as SVG 2
 * (§9.3) allows. Anything else is a fault of ours and throws. Thousands of steps make a page, so no step is an object.
 */
export function readPath(d: string): PathSteps {
  let commands = ''
  const numbers: number[] = []
  let at = skipGap(d, 0)
  let command: PathCommand | undefined
  let takes = 0
  while (at < d.length) {
    if (isLetter(d, at)) {
      command = commandAt(d, at)
      takes = numbersTaken[command]!
      at = skipGap(d, at + 1)
    } else if (command === undefined || command === 'Z')
      throw new Error(`number without a command: ${around(d, at)}`)
    for (let taken = takes; taken > 0; taken--) {
      const end = numberEnd(d, at)
      if (end === at) throw new Error(`number missing: ${around(d, at)}`)
      numbers.push(readNumber(d, at, end))
      at = skipGap(d, end)
    }
    commands += command
    if (command === 'M') command = 'L'
  }
  return { commands, numbers }
}

/** A box that holds the path; control points count, so it may be a little larger than the ink. */
export function pathBox(d: string): Box | undefined {
  let left = Number.POSITIVE_INFINITY
  let top = Number.POSITIVE_INFINITY
  let right = Number.NEGATIVE_INFINITY
  let bottom = Number.NEGATIVE_INFINITY
  const { numbers } = readPath(d)
  for (let index = 0; index < numbers.length; index += 2) {
    const x = numbers[index]!
    const y = numbers[index + 1]!
    if (x < left) left = x
    if (x > right) right = x
    if (y < top) top = y
    if (y > bottom) bottom = y
  }
  return left > right ? undefined : { xMm: left, yMm: top, widthMm: right - left, heightMm: bottom - top }
}

function commandAt(d: string, at: number): PathCommand {
  const letter = d[at]!
  if (letter in numbersTaken) return letter as PathCommand
  throw new Error(`path command ${letter} is not one of M L Q C Z: ${around(d, at)}`)
}

function isLetter(d: string, at: number): boolean {
  const code = d.charCodeAt(at) | 0x20
  return code >= 0x61 && code <= 0x7a
}

const COMMA = 0x2c
const SMALL_E = 0x65

/** Past spaces and commas. */
function skipGap(d: string, from: number): number {
  let at = from
  while (at < d.length && (d.charCodeAt(at) <= 0x20 || d.charCodeAt(at) === COMMA)) at++
  return at
}

/** Where the number that begins here ends: a sign, digits, one point, an exponent. */
function numberEnd(d: string, from: number): number {
  let at = from
  let points = 0
  for (; at < d.length; at++) {
    const code = d.charCodeAt(at)
    if (code >= 0x30 && code <= 0x39) continue
    if (code === 0x2e && points++ === 0) continue
    const exponent = code === SMALL_E && at > from
    const sign = (code === 0x2d || code === 0x2b) && (at === from || d.charCodeAt(at - 1) === SMALL_E)
    if (!exponent && !sign) break
  }
  return at
}

function around(d: string, at: number): string {
  return d.slice(Math.max(0, at - 10), at + 30)
}
