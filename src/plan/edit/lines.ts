/** Lines of a plan's text: where they begin and end, what breaks them, and which notes stand in them. */
import { Lexer } from 'yaml'

/** A stretch of the text and what is to stand there instead. */
export interface Splice {
  readonly start: number
  readonly end: number
  readonly put: string
}

/** Places are those of the text before any of them. */
export function spliced(text: string, splices: readonly Splice[]): string {
  const inOrder = splices.toSorted((a, b) => a.start - b.start || a.end - b.end)
  let [done, result] = [0, '']
  for (const { start, end, put } of inOrder) {
    result += text.slice(done, start) + put
    done = end
  }
  return result + text.slice(done)
}

/** How the text breaks its lines. */
export function lineBreakOf(text: string): string {
  return text.includes('\r\n') ? '\r\n' : '\n'
}

export function lineStart(text: string, at: number): number {
  return text.lastIndexOf('\n', at - 1) + 1
}

/** Behind the line's break, or the end of the text. */
export function nextLine(text: string, at: number): number {
  const end = text.indexOf('\n', at)
  return end < 0 ? text.length : end + 1
}

export function columnOf(text: string, at: number): number {
  return at - lineStart(text, at)
}

export function isFirstOnLine(text: string, at: number): boolean {
  return text.slice(lineStart(text, at), at).trim() === ''
}

/** Whether nothing but a note follows on the line. */
export function isLastOnLine(text: string, at: number): boolean {
  return /^[ \t]*(?:#.*)?$/.test(text.slice(at, nextLine(text, at)).trimEnd())
}

/** The end of the lines of what ends at `end`, with the notes below it that are set in further than `column`. */
export function ownLinesEnd(text: string, end: number, column: number): number {
  let at = nextLine(text, end)
  for (;;) {
    const line = text.slice(at, nextLine(text, at))
    const indent = /^( *)#/.exec(line)?.[1]
    if (indent === undefined || indent.length <= column) return at
    at += line.length
  }
}

/** New lines, set in, to stand from `at` on, which is where a line begins or the text ends. */
export function linesAt(text: string, at: number, column: number, lines: readonly string[]): Splice {
  const lineBreak = lineBreakOf(text)
  const indented = lines.map(line => `${' '.repeat(column)}${line}`)
  const isOpen = at > 0 && text[at - 1] !== '\n'
  const put = isOpen
    ? `${lineBreak}${indented.join(lineBreak)}`
    : indented.map(line => `${line}${lineBreak}`).join('')
  return { start: at, end: at, put }
}

/** Signs of the lexer's own, which stand for no text. */
const lexerSigns = new Set(['\u0002', '\u0018', '\u001f'])

/** Notes in a stretch, without what stands before their sign. */
export function notesIn(text: string, start: number, end: number): readonly string[] {
  const notes: string[] = []
  let at = 0
  for (const token of new Lexer().lex(text)) {
    if (lexerSigns.has(token)) continue
    if (token.startsWith('#') && at >= start && at < end) notes.push(token.trimEnd())
    at += token.length
  }
  return notes
}
