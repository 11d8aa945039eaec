import { planKeys, type ToldKey, toldNames } from '../door/plan-keys.js'
import { type CommandResult, resultOf } from './command-result.js'
import type { ListKind } from './list-kinds.js'
import { wrapLine } from './wrap-line.js'

export interface ListOptions {
  readonly kind?: ListKind | undefined
  readonly json: boolean
}

/** `oaktag list`: what may be named in a plan, each name with a line that says what it is. */
export async function listCommand({ kind, json }: ListOptions): Promise<CommandResult> {
  if (kind === 'keys') {
    const keys = planKeys()
    return resultOf(json ? JSON.stringify(keys, null, 2) : describeKeys(keys))
  }
  const names = await toldNames()
  if (kind !== undefined) {
    return resultOf(json ? JSON.stringify(names[kind], null, 2) : listed(names[kind]).join('\n'))
  }
  if (json) return resultOf(JSON.stringify(names, null, 2))
  const blocks = Object.entries(names).map(([each, entries]) =>
    [each, ...listed(entries).map(line => `  ${line}`)].join('\n'),
  )
  return resultOf([...blocks, 'The keys of a plan: oaktag list keys'].join('\n\n'))
}

/** By place; `help` tells more of each. */
function describeKeys(keys: readonly ToldKey[]): string {
  const places = [...new Set(keys.map(({ place }) => place))]
  const blocks = places.map(place => {
    const own = keys.filter(key => key.place === place)
    const entries = own.map(({ name, does }) => ({ name, summary: does }))
    return [`keys of ${place}`, ...listed(entries).map(line => `  ${line}`)].join('\n')
  })
  return [...blocks, 'More of each, with an example: oaktag help KEY'].join('\n\n')
}

interface Listed {
  readonly name: string
  readonly summary: string
  readonly options?: string
}

function listed(entries: readonly Listed[]): readonly string[] {
  const width = Math.max(...entries.map(({ name }) => name.length))
  return entries.flatMap(({ name, summary, options }) =>
    aligned(name.padEnd(width), options === undefined ? summary : `${summary} ${options}`),
  )
}

/** The name, and beside it its summary broken within 78 columns. */
function aligned(name: string, summary: string): readonly string[] {
  const [first = '', ...more] = wrapLine(summary, Math.max(30, 76 - name.length))
  return [`${name}  ${first}`, ...more.map(line => `${' '.repeat(name.length + 2)}${line.trimStart()}`)]
}
