/** Values as a teacher would write them: plain where YAML allows it, in quotes where it does not. */
import { isScalar, parseDocument } from 'yaml'
import { isList } from './plan-data.js'
import type { PlanData } from './plan-edit.js'

/** A text on one line. `like` is what stood there before: its quotes are kept. */
export function textWritten(text: string, like = '', inBrackets = false): string {
  if (like.startsWith('"')) return inDoubleQuotes(text)
  if (like.startsWith("'") && !/[\p{Cc}\p{Zl}\p{Zp}]/u.test(text)) return `'${text.replaceAll("'", "''")}'`
  return isPlain(text, inBrackets) ? text : inDoubleQuotes(text)
}

function isPlain(text: string, inBrackets: boolean): boolean {
  if (text === '' || text !== text.trim() || /[\p{Cc}\p{Zl}\p{Zp}]/u.test(text)) return false
  const parsed = parseDocument(inBrackets ? `[${text}]` : `k: ${text}`, {
    schema: 'failsafe',
    prettyErrors: false,
  })
  const read =
    parsed.errors.length > 0 ? undefined : inBrackets ? parsed.getIn([0], true) : parsed.get('k', true)
  const alone = inBrackets ? parsed.getIn([1], true) === undefined : true
  // A colon or a sign of comment may read as itself behind a key and not behind a dash.
  return (
    alone && isScalar(read) && read.value === text && read.type === 'PLAIN' && !/^[-?:!&*|>%@`]/.test(text)
  )
}

/** JSON's texts are YAML's (YAML 1.2.2, 1.3). */
function inDoubleQuotes(text: string): string {
  return JSON.stringify(text).replaceAll(/[\p{Zl}\p{Zp}\u007f-\u009f]/gu, sign => {
    return `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`
  })
}

/** On one line, in brackets and braces. */
export function inBrackets(data: PlanData): string {
  if (typeof data === 'string') return data === '' ? '""' : textWritten(data, '', true)
  if (isList(data)) return `[${data.map(inBrackets).join(', ')}]`
  return `{ ${Object.entries(data)
    .map(([key, value]) => `${key}: ${inBrackets(value)}`)
    .join(', ')} }`
}

/** As an entry of a list with a dash: its lines, the first behind the dash, the others set in by two. */
export function entryLines(data: PlanData): readonly string[] {
  if (typeof data === 'string') return [textWritten(data)]
  if (isList(data)) return [inBrackets(data)]
  const lines = Object.entries(data).flatMap(([key, value]) => pairLines(key, value))
  return lines.map((line, index) => (index === 0 ? line : `  ${line}`))
}

/** A key with its value; a list of keys goes on lines of its own. */
export function pairLines(key: string, value: PlanData): readonly string[] {
  if (typeof value === 'string') return [value === '' ? `${key}:` : `${key}: ${textWritten(value)}`]
  if (isList(value) && value.some(each => typeof each !== 'string'))
    return [`${key}:`, ...listLines(value).map(line => `  ${line}`)]
  return [`${key}: ${inBrackets(value)}`]
}

/** With dashes. */
export function listLines(values: readonly PlanData[]): readonly string[] {
  return values.flatMap(value => entryLines(value).map((line, index) => (index === 0 ? `- ${line}` : line)))
}
