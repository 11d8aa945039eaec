/**
 * Text on sheets is outlines, and the same words stand there hundreds of times. Here each word is defined once for the
 * whole page, in units of its typeface, and each line of text becomes a row of references to words. A definition says the
 * same wherever it stands, and is called by a digest of it: what is on the page beside it makes no difference.
 */
import { hash } from 'node:crypto'
import { lettersOf, type PlacedLetters } from '../../pieces/art/placed-letters.js'
import type { Art, PathShape } from '../../pieces/piece.js'
import type { ShapedRun } from '../../pieces/typeface/shaped-run.js'
import { type ArtMarkup, artMarkup } from '../page/svg-body.js'
import { runOutline, UNITS_PER_EM } from './run-outline.js'
import { type SpooledText, type TextSpool, textSpool } from './text-spool.js'

export interface SharedOutlines {
  /** Its lines of text are references to definitions, where that saves something. */
  readonly artMarkup: ArtMarkup
  /** Markup of each definition, by its id. */
  readonly definitions: () => ReadonlyMap<string, SpooledText>
}

/** Shorter outlines are as short as a reference. */
const LEAST_LENGTH = 240

export function sharedOutlines(spool: TextSpool = textSpool()): SharedOutlines {
  const digests = new Map<string, string>()
  const definitions = new Map<string, SpooledText>()
  const defined = new WeakSet<LineOfText>()

  /** False where another definition has the id already, which of millions of pages happens on one. */
  function define({ id, digest, markup }: Definition): boolean {
    const already = digests.get(id)
    if (already !== undefined) return already === digest
    digests.set(id, digest)
    definitions.set(id, spool(markup))
    return true
  }

  function defineLine(line: LineOfText): boolean {
    if (defined.has(line)) return true
    if (!line.words.every(define) || !define(line)) return false
    defined.add(line)
    return true
  }

  return {
    artMarkup: art => {
      const shared = sharedMarkup(art)
      if (shared.lines.every(defineLine)) return shared.markup
      return artMarkup(art, shape => {
        const line = lineOf(shape)
        return line !== undefined && defineLine(line) ? line.id : undefined
      })
    },
    definitions: () => definitions,
  }
}

/** What stands on the page once, and its id there. */
interface Definition {
  readonly id: string
  readonly digest: string
  readonly markup: string
}

interface LineOfText extends Definition {
  readonly words: readonly Definition[]
}

/** An art as it stands on every page that has its lines. */
interface SharedMarkup {
  readonly markup: string
  readonly lines: readonly LineOfText[]
}

const knownMarkup = new WeakMap<Art, SharedMarkup>()

function sharedMarkup(art: Art): SharedMarkup {
  const shared = knownMarkup.get(art) ?? markupWithLines(art)
  knownMarkup.set(art, shared)
  return shared
}

function markupWithLines(art: Art): SharedMarkup {
  const lines: LineOfText[] = []
  const markup = artMarkup(art, shape => {
    const line = lineOf(shape)
    if (line !== undefined) lines.push(line)
    return line?.id
  })
  return { markup, lines }
}

/** Null for a shape that is no line, or too short a one. */
const knownLines = new WeakMap<PathShape, LineOfText | null>()
const knownWords = new WeakMap<ShapedRun, Definition>()

function lineOf(shape: PathShape): LineOfText | undefined {
  const known = knownLines.get(shape)
  if (known !== undefined) return known ?? undefined
  const letters = lettersOfLine(shape)
  const line = letters === undefined ? undefined : lineOfLetters(letters)
  knownLines.set(shape, line ?? null)
  return line
}

/** Word by word; undefined where one of them is not plain letters. */
function lettersOfLine(shape: PathShape): readonly PlacedLetters[] | undefined {
  const words = shape.words ?? [{ outline: shape, xMm: 0, yMm: 0 }]
  const placed = words.flatMap(({ outline, xMm, yMm }) => {
    const letters = lettersOf(outline)
    return letters === undefined ? [] : { ...letters, xMm: xMm + letters.xMm, yMm: yMm + letters.yMm }
  })
  return placed.length === words.length ? placed : undefined
}

/** Undefined where it is short, or no line: letters of several sizes. */
function lineOfLetters(letters: readonly PlacedLetters[]): LineOfText | undefined {
  const sizeMm = letters[0]?.sizeMm
  if (sizeMm === undefined || letters.some(word => word.sizeMm !== sizeMm)) return undefined
  const words = letters.map(({ run }) => wordOf(run))
  if (words.reduce((sum, { markup }) => sum + markup.length, 0) < LEAST_LENGTH) return undefined
  const units = (mm: number): number => Math.round((mm / sizeMm) * UNITS_PER_EM)
  const references = letters.map(
    ({ xMm, yMm }, index) => `<use href="#${words[index]!.id}" x="${units(xMm)}" y="${units(yMm)}"/>`,
  )
  // Six digits are a thousandth of a millimetre on the longest line.
  const scale = Number((sizeMm / UNITS_PER_EM).toPrecision(6))
  const definition = definitionOf(
    'l',
    id => `<g id="${id}" transform="scale(${scale})">${references.join('')}</g>`,
  )
  return { ...definition, words }
}

function wordOf(run: ShapedRun): Definition {
  const data = (): string => runOutline(run)
  const word = knownWords.get(run) ?? definitionOf('g', id => `<path id="${id}" d="${data()}"/>`)
  knownWords.set(run, word)
  return word
}

/** Of a digest's 27 signs. */
const ID_LENGTH = 8

function definitionOf(prefix: string, markupOf: (id: string) => string): Definition {
  const digest = hash('sha1', markupOf(''), 'base64url')
  const id = `${prefix}${digest.slice(0, ID_LENGTH)}`
  return { id, digest, markup: markupOf(id) }
}
