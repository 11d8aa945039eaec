/** Words from whatever list is pasted: as typed, from a letter home, a web page or a spreadsheet. */
import type { Data } from './messages.js'

export interface PastedWord {
  readonly word: string
  readonly more: Readonly<Record<string, string>>
}

const columns = ['word', 'clue', 'sentence', 'sounds', 'syllables', 'part of speech', 'plural']

/**
 * A word a line, words with commas or blanks between, words each with what it means behind a dash or a colon, or rows of a
 * table. Numbers, bullets, boxes to tick, quotes and full stops round a word are none of it.
 */
export function pastedWords(text: string): readonly PastedWord[] {
  const lines = text
    .split(/\r\n?|[\n\u2028]/)
    .map(withoutNumber)
    .filter((line, _, all) => line.trim() !== '' && !(isName(line) && all.length > 1))
  const rows = tableRows(lines)
  const words = rows === undefined ? (withMeanings(lines) ?? listed(lines)) : fromTable(rows)
  const first = new Map<string, PastedWord>()
  for (const each of words) {
    const key = each.word.toLowerCase()
    if (key !== '' && !first.has(key)) first.set(key, each)
  }
  return [...first.values()]
}

/** `Words of week five:`, of the list below it. */
function isName(line: string): boolean {
  return line.trimEnd().endsWith(':')
}

/** An entry of the list of words. */
export function wordEntry({ word, more }: PastedWord): Data {
  return Object.keys(more).length === 0 ? word : { word, ...more }
}

/** `1. reed`, `(2) reed`, `c) reed` */
function withoutNumber(line: string): string {
  return line.replace(/^\s*\(?(?:\d+|[A-Za-z](?=\)))[.)][^\S\t]*/, '')
}

/** Signs round it go; what has no letter in it is nothing. */
function bare(text: string): string {
  const own = text.replace(/^[^\p{L}\p{N}]+|[^\p{L}\p{M}\p{N}]+$/gu, '')
  return /\p{L}/u.test(own) ? own : ''
}

function listed(lines: readonly string[]): readonly PastedWord[] {
  return lines.flatMap(line => line.split(/[\s,;/|]+/).map(part => ({ word: bare(part), more: {} })))
}

/** `reed - tall grass` and `reed: tall grass`, where every line is so. */
function withMeanings(lines: readonly string[]): readonly PastedWord[] | undefined {
  const words = lines.flatMap(line => {
    const [, before = '', sign = '', clue = ''] =
      /^(\S+?)(:|\s+[-\u2013\u2014])\s+(.+)$/.exec(line.trim()) ?? []
    // One line with a colon may be a list with its name; with a dash, two words.
    const isClear = lines.length > 1 || (sign !== ':' && /\s/.test(clue))
    const word = bare(before)
    return word === '' || !isClear ? [] : [{ word, more: { clue: clue.trim() } }]
  })
  return words.length === lines.length ? words : undefined
}

/** Cells between tabs, or between commas where a head names the words or a cell stands in quotes. */
function tableRows(lines: readonly string[]): readonly (readonly string[])[] | undefined {
  if (lines.some(line => line.trim().includes('\t')))
    return lines.map(line => line.split('\t').map(cell => unquoted(cell)))
  const rows = lines.map(line =>
    [...line.matchAll(/("(?:[^"]|"")*"|[^,]*)(?:,|$)/g)].map(([, cell = '']) => cell),
  )
  const isHead = rows[0]?.some(cell => columnOf(cell) === 'word') === true && (rows[0]?.length ?? 0) > 2
  const isQuoted = lines.length > 0 && lines.every(line => /^\s*"[^"]*",\s*"/.test(line))
  return isHead || isQuoted ? rows.map(cells => cells.map(unquoted)) : undefined
}

function unquoted(cell: string): string {
  const own = cell.trim()
  return /^".*"$/.test(own) ? own.slice(1, -1).replaceAll('""', '"').trim() : own
}

function columnOf(cell: string): string | undefined {
  const name = cell
    .trim()
    .toLowerCase()
    .replaceAll(/[\s_-]+/g, ' ')
  return columns.find(column => column === name || `${column}s` === name)
}

/** The first column with letters in it is the words; another is taken where a head says what it is, or alone, as clues. */
function fromTable(rows: readonly (readonly string[])[]): readonly PastedWord[] {
  const widest = Math.max(...rows.map(cells => cells.length))
  const kept = Array.from({ length: widest }, (_, index) => index).filter(index =>
    rows.some(cells => /\p{L}/u.test(cells[index] ?? '')),
  )
  const own = rows.map(cells => kept.map(index => cells[index] ?? ''))
  const head = (own[0] ?? []).map(columnOf)
  const named = head.includes('word')
  const kinds = named ? head : kept.length <= 2 ? ['word', 'clue'] : ['word']
  return own.slice(named ? 1 : 0).map(cells => {
    const more = cells.flatMap((cell, index) => {
      const kind = kinds[index]
      return kind === undefined || kind === 'word' || cell === '' ? [] : [[kind, cell] as const]
    })
    return { word: bare(cells[kinds.indexOf('word')] ?? ''), more: Object.fromEntries(more) }
  })
}
