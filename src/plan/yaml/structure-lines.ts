/** The lines of a YAML text that shape it: not its notes, nor what lies inside quotes, brackets or a block of text. */

export interface StructureLine {
  /** From 0. */
  readonly index: number
  /** White space at the beginning as it stands, tabs and hard spaces too. */
  readonly lead: string
  /** What follows, to the end of the line. */
  readonly content: string
}

/** No line of a plan is as long; the forms below take their time over one. */
const longest = 1000

/** @param lines of the text, without their line breaks */
export function structureLines(lines: readonly string[]): readonly StructureLine[] {
  const found: StructureLine[] = []
  let inside: Inside = { kind: 'nothing' }
  for (const [index, line] of lines.entries()) {
    const lead = line.slice(0, line.length - line.trimStart().length)
    const content = line.trim()
    if (content.length > longest) continue
    if (inside.kind === 'block' && (content === '' || lead.length > inside.column)) continue
    if (inside.kind === 'block') inside = { kind: 'nothing' }
    if (inside.kind !== 'nothing') {
      inside = after(inside, content)
      continue
    }
    if (content === '' || content.startsWith('#') || /^(?:---|\.\.\.)(?:\s|$)/.test(line)) continue
    found.push({ index, lead, content })
    inside = opened(valueText(content), lead.length)
  }
  return found
}

/** `key: value`, where the colon ends the key. */
export const pairForm = /^(?<key>"[^"]*"|'[^']*'|[^\s"'[{#-][^#]*?|-[^\s#][^#]*?)\s*:(?:\s+(?<value>.*))?$/

/** What stands behind the dashes, the key and the anchor of a line. */
export function valueText(content: string): string {
  const behindDashes = content.replace(/^(?:-\s+)+/, '')
  const value = pairForm.exec(behindDashes)?.groups
  return (value === undefined ? behindDashes : (value.value ?? '')).replace(/^&\S+\s*/, '')
}

type Inside =
  | { readonly kind: 'nothing' }
  /** Text by `|` or `>`, as far as lines begin right of this column. */
  | { readonly kind: 'block'; readonly column: number }
  | { readonly kind: 'quotes'; readonly mark: string }
  | { readonly kind: 'brackets'; readonly depth: number }

function opened(value: string, column: number): Inside {
  if (/^[|>][+-]?\d?[+-]?(?:\s+#.*)?$/.test(value)) return { kind: 'block', column }
  const mark = /^["']/.exec(value)?.[0]
  if (mark !== undefined) return after({ kind: 'quotes', mark }, value.slice(1))
  return /^[[{]/.test(value) ? after({ kind: 'brackets', depth: 0 }, value) : { kind: 'nothing' }
}

function after(inside: Exclude<Inside, { kind: 'block' }>, text: string): Inside {
  if (inside.kind === 'quotes') {
    const plain = inside.mark === '"' ? text.replaceAll(/\\./g, '') : text.replaceAll("''", '')
    return plain.includes(inside.mark) ? { kind: 'nothing' } : inside
  }
  if (inside.kind !== 'brackets') return inside
  const plain = text.replaceAll(/"(?:[^"\\]|\\.)*"|'(?:[^']|'')*'|\s#.*$/g, '')
  const depth = inside.depth + (plain.match(/[[{]/g)?.length ?? 0) - (plain.match(/[\]}]/g)?.length ?? 0)
  return depth > 0 ? { kind: 'brackets', depth } : { kind: 'nothing' }
}
