import { planNames } from '../door/plans.js'
import { type CommandResult, resultOf } from './command-result.js'
import { wrapLine } from './wrap-line.js'

export type ListKind = 'papers' | 'fonts' | 'patterns' | 'layouts' | 'lines' | 'outlines'

/** `oaktag list`: what may be named in a plan, each name with a line that says what it is. */
export async function listCommand({
  kind,
}: {
  readonly kind?: ListKind | undefined
}): Promise<CommandResult> {
  const names = planNames()
  const kinds = kind === undefined ? (Object.keys(names) as ListKind[]) : [kind]
  const blocks = kinds.map(each => {
    const entries = names[each]
    const width = Math.max(...entries.map(entry => entry.name.length))
    const lines = entries.flatMap(entry => aligned(entry.name.padEnd(width), entry.summary))
    return (kind === undefined ? [each, ...lines.map(line => `  ${line}`)] : lines).join('\n')
  })
  return resultOf(blocks.join('\n\n'))
}

/** The name, and beside it its summary broken within 78 columns. */
function aligned(name: string, summary: string): readonly string[] {
  const [first = '', ...more] = wrapLine(summary, Math.max(30, 76 - name.length))
  return [`${name}  ${first}`, ...more.map(line => `${' '.repeat(name.length + 2)}${line.trimStart()}`)]
}
