import { hash } from 'node:crypto'
import type { Art, ImageShape, PathShape } from '../../pieces/piece.js'
import type { Sheet } from '../../sheets/sheet.js'
import { drawingGroups } from './drawing-order.js'

/** What tells one sheet from another, in short: two that are told alike come out alike. */
export interface SheetLooks {
  /** All that a picture of the sheet depends on. */
  readonly picture: (sheet: Sheet) => string
  /** All that its SVG does: the words too, and which of its drawings are one and the same. */
  readonly svg: (sheet: Sheet) => string
}

/** Each art, and each word of a line, is gone through once, however many sheets it stands on, and in however many runs. */
export function sheetLooks(): SheetLooks {
  const outlineLook = onceEach(lookOfOutline)
  const lineLook = onceEach((line: PathShape) => lookOfLine(line, outlineLook))
  const lookOf = onceEach((art: Art) => digestOfShapes(art, lineLook))
  return {
    // Whether it stands there, and whether it is kept, are two who ask.
    picture: onceEach((sheet: Sheet) => {
      const drawings = drawingGroups(sheet).flatMap(group => group.drawings)
      const places = drawings.map(({ art, xMm, yMm, turn }) => [lookOf(art), xMm, yMm, turn])
      return digestOf([sheet.widthMm, sheet.heightMm, places, sheet.cuts])
    }),
    svg: onceEach((sheet: Sheet) => {
      const numbers = new Map<Art, number>()
      const numberOf = (art: Art): number => {
        const number = numbers.get(art) ?? numbers.size
        numbers.set(art, number)
        return number
      }
      const groups = drawingGroups(sheet).map(({ words, drawings }) => [
        words,
        drawings.map(({ art, xMm, yMm, turn }) => [numberOf(art), lookOf(art), xMm, yMm, turn]),
      ])
      return digestOf([sheet.widthMm, sheet.heightMm, sheet.title, groups, sheet.cuts])
    }),
  }
}

function onceEach<T extends object>(tell: (of: T) => string): (of: T) => string {
  const known = new WeakMap<T, string>()
  return of => {
    const told = known.get(of) ?? tell(of)
    known.set(of, told)
    return told
  }
}

function lookOfOutline(outline: PathShape): string {
  const { d, ...about } = outline
  return hash('sha1', `${JSON.stringify(about)} ${d}`, 'base64url')
}

/** Of a line of text, where each of its words stands. A row stands on page after page, with the same lines. */
function lookOfLine({ words = [] }: PathShape, outlineLook: (outline: PathShape) => string): string {
  const told = words.map(({ outline, xMm, yMm }) => `${outlineLook(outline)} ${xMm} ${yMm}`)
  return hash('sha1', told.join(' '), 'base64url')
}

/** Paths are taken as they are, a line of text as its words. Told in one go: a digest takes long to be given many short texts. */
function digestOfShapes({ shapes }: Art, lineLook: (line: PathShape) => string): string {
  const told = shapes.map(shape => {
    if (shape.kind === 'image') return lookOfPicture(shape)
    if (shape.words !== undefined) return lineLook(shape)
    const { d, ...about } = shape
    return `${JSON.stringify(about)} ${d}`
  })
  return hash('sha1', told.join('\n'), 'base64url')
}

function lookOfPicture({ bytes, ...about }: ImageShape): string {
  return `${JSON.stringify(about)} ${hash('sha1', bytes, 'base64url')}`
}

function digestOf(told: unknown): string {
  return hash('sha1', JSON.stringify(told), 'base64url')
}
