import { createHash } from 'node:crypto'
import type { Art, ImageShape, PathShape } from '../../pieces/piece.js'
import type { Sheet } from '../../sheets/sheet.js'
import { drawingGroups } from '../page/drawing-order.js'
import { createPngWriter, type PngWriter } from './png-writer.js'

/** A week of thirty sheets takes a third of it; what a program goes on with is worth the room. */
const KEPT_BYTES = 64 * 2 ** 20

/** PNG files of earlier runs: a sheet on which everything looks and lies as before gets its file again. */
export interface KeptPngs {
  /** The same writer for the same resolution, so that it still has what it drew. */
  readonly at: (dpi: number) => PngWriter
  /** Lets go of files that nobody has asked for since the last call. */
  readonly letGo: () => void
}

export function keptPngs(): KeptPngs {
  const writers = new Map<number, PngWriter>()
  const lookOf = looksOfArts()
  let kept = new Map<string, Promise<Buffer>>()
  let asked = new Map<string, Promise<Buffer>>()

  function keeping(dpi: number): PngWriter {
    const writer = createPngWriter(dpi, KEPT_BYTES)
    return {
      write: sheet => {
        const key = `${dpi} ${sheetKey(sheet, lookOf)}`
        const file = asked.get(key) ?? kept.get(key) ?? writer.write(sheet)
        asked.set(key, file)
        // What failed is tried again.
        file.catch(() => asked.delete(key))
        return file
      },
    }
  }

  return {
    at: dpi => {
      const writer = writers.get(dpi) ?? keeping(dpi)
      writers.set(dpi, writer)
      return writer
    },
    letGo: () => {
      kept = asked
      asked = new Map()
    },
  }
}

/** All that a picture of the sheet depends on. */
function sheetKey(sheet: Sheet, lookOf: (art: Art) => string): string {
  const drawings = drawingGroups(sheet).flatMap(group => group.drawings)
  const places = drawings.map(({ art, xMm, yMm, turn }) => [lookOf(art), xMm, yMm, turn])
  return digestOf(JSON.stringify([sheet.widthMm, sheet.heightMm, places, sheet.cuts]))
}

/** A digest of each art's shapes, made once an art. */
function looksOfArts(): (art: Art) => string {
  const looks = new WeakMap<Art, string>()
  return art => {
    const known = looks.get(art) ?? lookOf(art)
    looks.set(art, known)
    return known
  }
}

/** Paths, which are nearly all of it, are taken as they are. */
function lookOf({ shapes }: Art): string {
  const hash = createHash('sha1')
  for (const shape of shapes) {
    const [data, about] = shape.kind === 'image' ? pictureApart(shape) : pathApart(shape)
    hash.update(`${JSON.stringify(about)} ${data.length} `).update(data)
  }
  return hash.digest('base64url')
}

function pictureApart({ bytes, ...about }: ImageShape): readonly [Uint8Array, object] {
  return [bytes, about]
}

/** The words of a line are told by the line. */
function pathApart({ d, words: _ofLine, ...about }: PathShape): readonly [string, object] {
  return [d, about]
}

function digestOf(data: string): string {
  return createHash('sha1').update(data).digest('base64url')
}
