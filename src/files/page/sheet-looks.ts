import { createHash, hash } from 'node:crypto'
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
  const lookOf = onceEach((art: Art) => digestOfShapes(art, outlineLook))
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
  const [d, about] = pathApart(outline)
  return hash('sha1', `${JSON.stringify(about)} ${d}`, 'base64url')
}

/** Paths are taken as they are, a line of text as its words. */
function digestOfShapes({ shapes }: Art, outlineLook: (outline: PathShape) => string): string {
  const digest = createHash('sha1')
  const tell = (data: string | Uint8Array, about: object) =>
    digest.update(`${JSON.stringify(about)} ${data.length} `).update(data)
  for (const shape of shapes) {
    if (shape.kind === 'image') tell(...pictureApart(shape))
    else if (shape.words === undefined) tell(...pathApart(shape))
    else {
      const words = shape.words.map(({ outline, xMm, yMm }) => `${outlineLook(outline)} ${xMm} ${yMm}`)
      tell(words.join(' '), { words: words.length })
    }
  }
  return digest.digest('base64url')
}

function pictureApart({ bytes, ...about }: ImageShape): readonly [Uint8Array, object] {
  return [bytes, about]
}

function pathApart({ d, ...about }: PathShape): readonly [string, object] {
  return [d, about]
}

function digestOf(told: unknown): string {
  return createHash('sha1').update(JSON.stringify(told)).digest('base64url')
}
