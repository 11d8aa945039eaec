/** Regular expressions without flags, since a JSON Schema has none: what capitals and spaces do not change. */

/** A name in any of its spellings: capitals never matter, and `_`, `-` and space are the same. */
export function anySpelling(name: string): string {
  return name
    .trim()
    .split(/[\s_-]+/)
    .map(part => [...part].map(sign => anyCaseOf(sign.replace(/[.*+?^${}()|[\]\\/]/, '\\$&'))).join(''))
    .join('[\\s_-]+')
}

/** The same expression for letters in any case. */
export function anyCase(pattern: string): string {
  const parts = pattern.match(/\\[pP]\{[^}]*\}|\\.|\[(?:\\.|[^\]\\])*\]|\(\?[:=!]|[\s\S]/gu) ?? []
  return parts.map(part => (part.startsWith('[') ? anyCaseOfClass(part) : anyCaseOf(part))).join('')
}

function anyCaseOf(sign: string): string {
  return /^[a-z]$/i.test(sign) ? `[${sign.toLowerCase()}${sign.toUpperCase()}]` : sign
}

/** `[a-z0-9]` → `[a-zA-Z0-9]` */
function anyCaseOfClass(written: string): string {
  const parts = written.slice(1, -1).match(/\\[pP]\{[^}]*\}|\\.|[a-z]-[a-z]|[\s\S]/gu) ?? []
  const both = parts.map(part => (/^[a-z](?:-[a-z])?$/.test(part) ? `${part}${part.toUpperCase()}` : part))
  return `[${both.join('')}]`
}
