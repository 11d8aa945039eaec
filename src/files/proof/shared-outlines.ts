/**
 * Text on sheets is outlines, and the same words stand there hundreds of times. Here each word is defined once for the
 * whole page, in whatever size it first stood, and each line of text becomes a row of references to words. A word is
 * told by its outline alone, so it does not matter which step of the program drew it.
 */
import { hash } from 'node:crypto'
import type { PathShape, PlacedWord } from '../../pieces/piece.js'
import { toDecimal } from '../page/decimal.js'
import { readPath } from '../page/path-data.js'
import type { OutlineIds } from '../page/svg-body.js'
import { type SpooledText, type TextSpool, textSpool } from './text-spool.js'
import { outlineData, type WordOutline, wordsOf } from './word-outlines.js'

export interface SharedOutlines {
  /** The id of a definition that draws the path, or undefined where sharing saves nothing. */
  readonly idFor: OutlineIds
  /** Markup of each definition, by its id. */
  readonly definitions: () => ReadonlyMap<string, SpooledText>
}

/** Shorter paths are as short as a reference. */
const LEAST_LENGTH = 240

/** How many units the highest word of a line is high: fine enough for it to stand anywhere twenty times larger. */
const UNITS_HIGH = 1200

/** Two outlines are of one word where no point is further apart than this many units: a twelfth of a point at 24 pt. */
const TOLERANCE_UNITS = 4

/** Sizes nearer to each other than this are one size: what rounding to a thousandth of a millimetre makes of it. */
const SAME_SIZE = 0.0004

/** The words of a line's path; undefined where it is no line of closed outlines. */
export type ReadLine = (d: string) => readonly ReadWord[] | undefined

/** A word as it was read, and as it was last written: a line that is kept from run to run is nearly always written alike. */
export interface ReadWord {
  readonly outline: WordOutline
  written?: WrittenWord
}

/** @param read where lines were read before, which takes half the time, and are held anyway */
export function sharedOutlines(spool: TextSpool = textSpool(), read?: ReadLine): SharedOutlines {
  const readNow = read ?? readLine
  // By a digest of the path where nobody holds it: the paths of thousands of cards are longer than all the rest.
  const keyOf = read === undefined ? digestOf : numbered()
  const definitions = new Map<string, SpooledText>()
  const digests = new Map<string, string>()
  const lines = new Map<string, string | undefined>()
  const known = new Map<string, KnownWord[]>()
  const sizes: number[] = []
  const readOutlines = new WeakMap<PathShape, ReadOutline>()

  const define = (
    prefix: string,
    markup: (id: string) => string,
    digest: string = digestOf(markup('')),
  ): string => {
    for (let length = 6; ; length += 1) {
      const id = `${prefix}${digest.slice(0, length)}`
      const already = digests.get(id)
      if (already === digest) return id
      if (already !== undefined) continue
      digests.set(id, digest)
      definitions.set(id, spool(markup(id)))
      return id
    }
  }

  const snapped = (mmPerUnit: number): number => {
    const near = sizes.find(size => Math.abs(size / mmPerUnit - 1) < SAME_SIZE)
    if (near === undefined) sizes.push(mmPerUnit)
    return near ?? mmPerUnit
  }

  const line = (words: readonly WordInLine[]): string => {
    const mmPerUnit = snapped(
      sizeOf(words, known) ?? Math.max(...words.map(({ word }) => word.outline.heightMm)) / UNITS_HIGH,
    )
    const references = words.map(({ word, xMm, yMm }) => {
      const { shape } = word.outline
      const written = writtenWord(word, mmPerUnit)
      const alike = known.get(shape) ?? []
      const found = alike.find(each => each.held?.written === written || isSame(each.points, written.points))
      const id = found?.id ?? define('g', written.definition, written.digest())
      const packedPoints = found === undefined ? packed(written.points) : undefined
      if (packedPoints !== undefined)
        known.set(shape, [
          ...alike,
          { id, points: packedPoints, length: written.length, held: read && { word, written } },
        ])
      const [x, y] = [xMm, yMm].map(mm => Math.round(mm / mmPerUnit))
      return `<use href="#${id}" x="${x}" y="${y}"/>`
    })
    const scale = Number(mmPerUnit.toPrecision(6))
    return define('l', name => `<g id="${name}" transform="scale(${scale})">${references.join('')}</g>`)
  }

  const once = (key: string, words: () => readonly WordInLine[] | undefined): string | undefined => {
    if (!lines.has(key)) {
      const read = words()
      lines.set(key, read && line(read))
    }
    return lines.get(key)
  }

  const idForPath = (d: string): string | undefined => {
    if (d.length < LEAST_LENGTH || !CURVE.test(d)) return undefined
    return once(keyOf(d), () => readNow(d)?.map(word => inLine(word)))
  }

  const readOutline = (outline: PathShape): ReadOutline => {
    const { d } = outline
    const known = readOutlines.get(outline) ?? {
      words: readNow(d),
      key: keyOf(d),
      length: d.length,
      hasCurve: CURVE.test(d),
    }
    readOutlines.set(outline, known)
    return known
  }

  /** Word by word, for most words of a line stood in another. */
  const idForLine = (placed: readonly PlacedWord[]): string | undefined => {
    const outlines = placed.map(({ outline }) => readOutline(outline))
    const length = outlines.reduce((sum, outline) => sum + outline.length, 0)
    if (length < LEAST_LENGTH || !outlines.some(({ hasCurve }) => hasCurve)) return undefined
    const key = outlines.map(({ key }, index) => `${key} ${placeOf(placed[index]!)}`).join(' ')
    return once(key, () =>
      outlines.some(({ words }) => words === undefined)
        ? undefined
        : outlines.flatMap(({ words = [] }, index) => words.map(word => inLine(word, placed[index]))),
    )
  }

  return {
    idFor: shape => (shape.words === undefined ? idForPath(shape.d) : idForLine(shape.words)),
    definitions: () => definitions,
  }
}

const CURVE = /[QC]/

/** What was read of a word's outline. */
interface ReadOutline {
  /** Undefined where it is not made of closed outlines. */
  readonly words: readonly ReadWord[] | undefined
  readonly key: string
  readonly length: number
  readonly hasCurve: boolean
}

/** Where its box stands in the line. */
interface WordInLine {
  readonly word: ReadWord
  readonly xMm: number
  readonly yMm: number
}

function inLine(word: ReadWord, { xMm, yMm } = { xMm: 0, yMm: 0 }): WordInLine {
  return { word, xMm: xMm + word.outline.xMm, yMm: yMm + word.outline.yMm }
}

function placeOf({ xMm, yMm }: PlacedWord): string {
  return `${toDecimal(xMm)} ${toDecimal(yMm)}`
}

export const readLine: ReadLine = d => {
  const steps = readPath(d)
  return isClosed(steps.commands) ? wordsOf(steps).map(outline => ({ outline })) : undefined
}

/** A word in units of so many millimetres. */
interface WrittenWord {
  readonly mmPerUnit: number
  readonly points: readonly number[]
  /** The longer edge of its box. */
  readonly length: number
  readonly definition: (id: string) => string
  readonly digest: () => string
}

function writtenWord(word: ReadWord, mmPerUnit: number): WrittenWord {
  if (word.written?.mmPerUnit === mmPerUnit) return word.written
  const { shape, points: pointsMm } = word.outline
  const points = pointsMm.map(point => Math.round(point / mmPerUnit))
  const data = made(() => outlineData(shape, points))
  const definition = (id: string) => `<path id="${id}" d="${data()}"/>`
  word.written = {
    mmPerUnit,
    points,
    length: lengthOf(points),
    definition,
    digest: made(() => digestOf(definition(''))),
  }
  return word.written
}

/** What is made when it is first asked for. */
function made(make: () => string): () => string {
  let text: string | undefined
  return () => {
    text ??= make()
    return text
  }
}

function digestOf(text: string): string {
  return hash('sha1', text, 'base64url')
}

/** Texts that are held, by numbers: what is put together of them is as short. */
function numbered(): (text: string) => string {
  const numbers = new Map<string, string>()
  return text => {
    const number = numbers.get(text) ?? `${numbers.size}`
    numbers.set(text, number)
    return number
  }
}

interface KnownWord {
  readonly id: string
  /** In units, packed. */
  readonly points: string
  /** The longer edge of its box, in units. */
  readonly length: number
  /** As it stood first, where that is held anyway: what is the same need not be compared. */
  readonly held: { readonly word: ReadWord; readonly written: WrittenWord } | undefined
}

/** A sign of a string takes two bytes where a number in a list takes eight. */
const MIDDLE = 0x8000

/** Undefined where a number is too large for that: thirty times as wide as high is no word. */
function packed(points: readonly number[]): string | undefined {
  if (points.some(point => Math.abs(point) >= MIDDLE)) return undefined
  return String.fromCharCode(...points.map(point => point + MIDDLE))
}

function unpackedAt(points: string, index: number): number {
  return points.charCodeAt(index) - MIDDLE
}

/** What is filled without being closed would be closed otherwise by another division. */
function isClosed(commands: string): boolean {
  return !/[^Z]M/.test(commands)
}

/** Millimetres a unit, as the words of this line that are known already say: the middle one of their answers. */
function sizeOf(
  words: readonly WordInLine[],
  known: ReadonlyMap<string, readonly KnownWord[]>,
): number | undefined {
  const found: number[] = []
  for (const { word } of words)
    for (const each of known.get(word.outline.shape) ?? []) {
      const size = word.outline.lengthMm / each.length
      // In its own size no point of a word is further off than rounding puts it.
      if (each.held?.word === word || isSame(each.points, word.outline.points, size)) found.push(size)
    }
  return found.toSorted((a, b) => a - b)[Math.floor(found.length / 2)]
}

function lengthOf(points: readonly number[]): number {
  let left = points[0]!
  let top = points[1]!
  let right = left
  let bottom = top
  for (let index = 2; index < points.length; index += 2) {
    const x = points[index]!
    const y = points[index + 1]!
    if (x < left) left = x
    if (x > right) right = x
    if (y < top) top = y
    if (y > bottom) bottom = y
  }
  return Math.max(right - left, bottom - top)
}

/** Whether the other's points, of so many millimetres a unit, are those of a known word. */
function isSame(known: string, others: readonly number[], mmPerUnit = 1): boolean {
  if (known.length !== others.length) return false
  for (let index = 0; index < known.length; index++)
    if (Math.abs(unpackedAt(known, index) - others[index]! / mmPerUnit) > TOLERANCE_UNITS) return false
  return true
}
