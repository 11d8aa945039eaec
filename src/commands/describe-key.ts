/** What `help` prints of a key of the plan. */
import type { ToldKey } from '../door/plan-keys.js'
import { wrapLine } from './wrap-line.js'

const WIDTH = 80

/** The key at each place where it can stand; places at which the same is to be told share it. */
export function describeKey(places: readonly ToldKey[]): string {
  const kinds = new Map<string, ToldKey[]>()
  for (const told of places) {
    const same = JSON.stringify([told.does, told.takes, told.usual])
    kinds.set(same, [...(kinds.get(same) ?? []), told])
  }
  return [...kinds.values()].map(describeOne).join('\n\n')
}

function describeOne(places: readonly ToldKey[]): string {
  const [told] = places
  const { name, does, takes, usual, example } = told!
  const where = places.map(({ place }) => place).join(', ')
  return [
    ...wrapLine(`${name}, of ${where}:`, WIDTH),
    ...wrapLine(`  ${does}.`, WIDTH),
    ...labelled('takes', takes),
    ...(usual === undefined ? [] : labelled('left out', usual)),
    '  for example',
    ...example.split('\n').map(line => `    ${line}`),
  ].join('\n')
}

function labelled(label: string, text: string): readonly string[] {
  const column = 12
  const [first = '', ...more] = wrapLine(text, WIDTH - column)
  return [
    `  ${label.padEnd(column - 2)}${first}`,
    ...more.map(line => `${' '.repeat(column)}${line.trimStart()}`),
  ]
}
