import type { PageShapes } from '../page/page-shapes.js'
import { createPngWriter } from './png-writer.js'

/** A whole week of a hundred sheets takes less, of shapes and of their codes; what was used last stays. */
const KEPT_BYTES = 32 * 2 ** 20

/** PNG files of earlier runs: a sheet on which everything looks and lies as before gets its file again. */
export interface KeptPngs {
  /** The same writer for the same resolution, so that it still has what it drew. */
  readonly at: (dpi: number) => KeptPngWriter
  /** Lets go of files that nobody has asked for since the last call. */
  readonly letGo: () => void
}

/** @param look all that its picture depends on, in short */
export type KeptPngWriter = (look: string, page: () => PageShapes) => Promise<Buffer>

export function keptPngs(): KeptPngs {
  const writers = new Map<number, KeptPngWriter>()
  let kept = new Map<string, Promise<Buffer>>()
  let asked = new Map<string, Promise<Buffer>>()

  function keeping(dpi: number): KeptPngWriter {
    const writer = createPngWriter(dpi, KEPT_BYTES)
    return (look, page) => {
      const key = `${dpi} ${look}`
      const file = asked.get(key) ?? kept.get(key) ?? writer.writeShapes(page())
      asked.set(key, file)
      // What failed is tried again.
      file.catch(() => asked.delete(key))
      return file
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
