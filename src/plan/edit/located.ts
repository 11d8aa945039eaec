/** A plan's text as data with where each part stands in it, so that a change touches its own signs and no others. */
import { type Document, isAlias, isMap, isScalar, isSeq, type Node, type Pair, parseDocument } from 'yaml'
import { foldName } from '../values/fold-name.js'
import { isDeep } from '../yaml/yaml-entries.js'

export type Located = LocatedText | LocatedList | LocatedMap | LocatedFixed

interface Stretch {
  readonly start: number
  /** Behind its last sign; notes behind it are none of it. */
  readonly end: number
}

export interface LocatedText extends Stretch {
  readonly kind: 'text'
  /** Empty where nothing is written. */
  readonly text: string
}

export interface LocatedList extends Stretch {
  readonly kind: 'list'
  /** Whether it stands in brackets. */
  readonly flow: boolean
  readonly items: readonly Located[]
  /** Of a list without brackets: where the dash of each entry stands. */
  readonly dashes: readonly number[]
}

export interface LocatedMap extends Stretch {
  readonly kind: 'map'
  /** Whether it stands in braces. */
  readonly flow: boolean
  readonly pairs: readonly LocatedPair[]
}

export interface LocatedPair extends Stretch {
  readonly key: string
  /** Behind its colon. */
  readonly colonEnd: number
  readonly value: Located
}

/** What stands for something written elsewhere, or is stood for: it is not changed here. */
export interface LocatedFixed extends Stretch {
  readonly kind: 'fixed'
  readonly source: string
}

/** Undefined where the text has slips that YAML does not read over. An empty text is an empty map. */
export function located(text: string): LocatedMap | undefined {
  const parsed = isDeep(text) ? undefined : parse(text)
  if (parsed === undefined || parsed.errors.length > 0) return undefined
  const { contents } = parsed
  if (contents === null) return { kind: 'map', flow: false, pairs: [], start: text.length, end: text.length }
  const root = locate(contents, text)
  return root.kind === 'map' ? root : undefined
}

function parse(text: string): Document.Parsed | undefined {
  try {
    return parseDocument(text, {
      schema: 'failsafe',
      keepSourceTokens: true,
      prettyErrors: false,
      uniqueKeys: false,
    })
  } catch (error) {
    if (error instanceof RangeError) return undefined
    throw error
  }
}

function locate(node: Node, text: string): Located {
  const [start = 0, end = 0] = node.range ?? []
  const anchored = 'anchor' in node && node.anchor !== undefined
  const tagged = 'tag' in node && node.tag?.startsWith('!') === true && !isAutomatic(node)
  if (isAlias(node) || anchored || tagged)
    return { kind: 'fixed', source: text.slice(start, end), start, end }
  if (isScalar(node)) {
    // A text on lines of its own ends with a line break that is the next line's.
    const own =
      node.type?.startsWith('BLOCK') === true ? start + text.slice(start, end).trimEnd().length : end
    return { kind: 'text', text: typeof node.value === 'string' ? node.value : '', start, end: own }
  }
  if (isSeq<Node>(node)) return locateList(node.items, node, { text, start, end })
  if (isMap<Node, Node | null>(node)) {
    const pairs = node.items.map(pair => locatePair(pair, text))
    const flow = node.flow === true
    return { kind: 'map', flow, pairs, start, end: flow ? end : (pairs.at(-1)?.end ?? end) }
  }
  return { kind: 'fixed', source: text.slice(start, end), start, end }
}

/** What the library calls a text, a list or a map by itself. */
function isAutomatic(node: Node): boolean {
  return 'tag' in node && typeof node.tag === 'string' && node.tag.startsWith('tag:yaml.org')
}

function locateList(
  nodes: readonly Node[],
  { flow = false, srcToken }: { readonly flow?: boolean; readonly srcToken?: Node['srcToken'] },
  { text, start, end }: Stretch & { readonly text: string },
): LocatedList {
  const items = nodes.map(item => locate(item, text))
  const dashes =
    srcToken?.type === 'block-seq'
      ? srcToken.items.flatMap(item =>
          item.start.flatMap(token => (token.type === 'seq-item-ind' ? [token.offset] : [])),
        )
      : []
  return { kind: 'list', flow, items, dashes, start, end: flow ? end : (items.at(-1)?.end ?? end) }
}

function locatePair({ key, value }: Pair<Node, Node | null>, text: string): LocatedPair {
  const [start = 0, keyEnd = 0] = key.range ?? []
  const colon = /^\s*:/.exec(text.slice(keyEnd))
  const colonEnd = keyEnd + (colon?.[0].length ?? 0)
  const nothing: LocatedText = { kind: 'text', text: '', start: colonEnd, end: colonEnd }
  const found = value === null ? nothing : locate(value, text)
  // Nothing has no place of its own: what is written for it comes behind the colon.
  const own = found.kind === 'text' && found.start === found.end ? nothing : found
  const name = isScalar(key) && typeof key.value === 'string' ? key.value : text.slice(start, keyEnd)
  return { key: name, colonEnd, value: own, start, end: Math.max(own.end, colonEnd) }
}

export function pairOf(map: LocatedMap, key: string): LocatedPair | undefined {
  return map.pairs.find(pair => foldName(pair.key) === foldName(key))
}

/** What stands one step down; undefined where nothing does. */
export function stepInto(node: Located, step: string | number): Located | undefined {
  if (node.kind === 'map' && typeof step === 'string') return pairOf(node, step)?.value
  return node.kind === 'list' && typeof step === 'number' ? node.items[step] : undefined
}
