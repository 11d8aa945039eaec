/** YAML 1.2 text → entries with their places. All scalars stay text: `no`, `true`, `null` and `1e3` are words. */
import {
  type Alias,
  type Document,
  isAlias,
  isCollection,
  isMap,
  isScalar,
  isSeq,
  LineCounter,
  type Node,
  parseDocument,
  type Scalar,
} from 'yaml'
import { fail, outcomeOf } from '../../outcomes.js'
import { errorAt, type Outcome, type Place, type Problem } from '../../problems.js'
import type { Entry, Pair } from './entry.js'
import { yamlProblems } from './yaml-problems.js'

/** Room for a list of thousands of words reused by an alias, and no room for aliases of aliases of aliases. */
const entriesThroughAliases = 100_000
const deepest = 20

/** `file` is for the places alone. Gives `null` for a text that holds nothing. Never throws. */
export function yamlEntries(file: string, text: string): Outcome<Entry | null> {
  // Positions stay right: a carriage return stands at a line's end only.
  const lines = text.replace(/^\uFEFF/, '').replaceAll(/\r\n?/g, '\n')
  const lineCounter = new LineCounter()
  const placeAt = (offset: number): Place => {
    const { line, col } = lineCounter.linePos(offset)
    // What is noticed where a line has ended is told at its last sign.
    const length =
      (lineCounter.lineStarts[line] ?? lines.length + 1) - (lineCounter.lineStarts[line - 1] ?? 0) - 1
    return { file, line: Math.max(1, line), column: Math.max(1, Math.min(col, length)) }
  }
  const parsed = isDeep(lines) ? null : parse(lines, lineCounter)
  if (parsed === null) {
    const advice = 'Indent lists and keys by two spaces a level; a plan needs no more than five levels.'
    return fail(errorAt({ file }, 'the text is nested too deeply to be read', advice))
  }
  if (parsed.errors.length > 0) return fail(...yamlProblems(parsed, placeAt))
  const walk = new Walk(placeAt)
  const entry = parsed.contents === null ? null : walk.entry(parsed.contents, 0)
  return outcomeOf(entry, walk.problems)
}

/** Brackets inside brackets, or dashes on one line, by the hundred: reading them would take minutes and lead nowhere. */
export function isDeep(text: string): boolean {
  let depth = 0
  for (const [sign] of text.matchAll(/[[{\]}]/g)) {
    depth = sign === '[' || sign === '{' ? depth + 1 : Math.max(0, depth - 1)
    if (depth > 200) return true
  }
  return /^(?:[ \t]*[-?:][ \t]){200}/m.test(text)
}

function parse(text: string, lineCounter: LineCounter): Document.Parsed | null {
  try {
    // Repeated keys are found by `keys.ts`, which knows that `copies` and `Copies` are one.
    return parseDocument(text, { schema: 'failsafe', lineCounter, prettyErrors: false, uniqueKeys: false })
  } catch (error) {
    if (error instanceof RangeError) return null
    throw error
  }
}

/** Follows aliases as it goes, in the order of the text, so that each means the nearest anchor above it. */
class Walk {
  readonly problems: Problem[] = []
  private readonly anchors = new Map<string, Node>()
  private readonly open = new Set<Node>()
  private throughAliases = 0
  private aliasDepth = 0
  private isCutOff = false

  constructor(private readonly placeAt: (offset: number) => Place) {}

  entry(node: Node, depth: number): Entry {
    const place = this.placeAt(node.range?.[0] ?? 0)
    if (this.aliasDepth > 0) this.throughAliases += 1
    if (isAlias(node)) return this.followed(node, place, depth)
    if ('anchor' in node && node.anchor) this.anchors.set(node.anchor, node)
    if (isScalar(node)) return this.scalar(node, place)
    if (depth >= deepest && isCollection(node)) {
      this.problems.push(errorAt(place, 'too many levels inside one another', 'Take some of the levels out.'))
      return { kind: 'empty', place }
    }
    this.open.add(node)
    const entry = this.collection(node, place, depth)
    this.open.delete(node)
    return entry
  }

  private scalar(node: Scalar, place: Place): Entry {
    // `!` begins a tag, which is no part of the value: a word or a text would come out without it.
    if (node.tag?.startsWith('!')) {
      const advice = 'Take the sign out of a word, and put a text that begins with it in quotes.'
      return this.refused(place, 'an exclamation mark cannot begin a word or a text', advice)
    }
    return textOrEmpty(node.value, place, node.comment)
  }

  private collection(node: Node, place: Place, depth: number): Entry {
    if (isSeq<Node>(node)) {
      return { kind: 'list', place, items: node.items.map(item => this.entry(item, depth + 1)) }
    }
    if (!isMap<Node, Node | null>(node)) return { kind: 'empty', place }
    const pairs = node.items.map(({ key, value }): Pair => {
      const keyPlace = this.placeAt(key.range?.[0] ?? 0)
      const keyEntry = this.entry(key, depth + 1)
      if (keyEntry.kind !== 'text') {
        this.problems.push(
          errorAt(keyPlace, 'a key must be plain text', 'Write a word, a colon and its value.'),
        )
      }
      const read = value === null ? { kind: 'empty' as const, place: keyPlace } : this.entry(value, depth + 1)
      // Nothing has no place of its own; its key's is where the teacher looks.
      const shown = read.kind === 'empty' ? { ...read, place: keyPlace } : read
      return { key: keyEntry.kind === 'text' ? keyEntry.text : '', keyPlace, value: shown }
    })
    return { kind: 'map', place, pairs }
  }

  private followed(alias: Alias, place: Place, depth: number): Entry {
    const target = this.anchors.get(alias.source)
    if (!target) {
      const advice = `Set the anchor &${alias.source} above, or put a text that begins with a star in quotes.`
      return this.refused(place, `the alias *${alias.source} stands for nothing`, advice)
    }
    if (this.open.has(target)) {
      const message = `the alias *${alias.source} stands inside what it stands for`
      return this.refused(place, message, 'Write the value out instead.')
    }
    if (this.throughAliases > entriesThroughAliases) return this.cutOff(place)
    this.aliasDepth += 1
    const entry = this.entry(target, depth)
    this.aliasDepth -= 1
    return { ...entry, place }
  }

  private refused(place: Place, message: string, advice: string): Entry {
    this.problems.push(errorAt(place, message, advice))
    return { kind: 'empty', place }
  }

  /** Told once: every further alias is cut off in any case. */
  private cutOff(place: Place): Entry {
    if (this.isCutOff) return { kind: 'empty', place }
    this.isCutOff = true
    const advice = 'Write the values out, or use fewer aliases inside one another.'
    return this.refused(place, 'the aliases unfold into more than a plan can hold', advice)
  }
}

function textOrEmpty(value: unknown, place: Place, comment: string | null | undefined): Entry {
  const text = typeof value === 'string' ? value.normalize('NFC').trim() : ''
  const noted = comment ? { comment } : {}
  return text === '' ? { kind: 'empty', place, ...noted } : { kind: 'text', text, place, ...noted }
}
