import type { SheetLooks } from '../page/sheet-looks.js'
import { createPngWriter, type PngWriter } from './png-writer.js'

/** A week of thirty sheets takes a third of it; what a program goes on with is worth the room. */
const KEPT_BYTES = 64 * 2 ** 20

/** PNG files of earlier runs: a sheet on which everything looks and lies as before gets its file again. */
export interface KeptPngs {
  /** The same writer for the same resolution, so that it still has what it drew. */
  readonly at: (dpi: number) => Pick<PngWriter, 'write'>
  /** Lets go of files that nobody has asked for since the last call. */
  readonly letGo: () => void
}

export function keptPngs(looks: SheetLooks): KeptPngs {
  const writers = new Map<number, Pick<PngWriter, 'write'>>()
  let kept = new Map<string, Promise<Buffer>>()
  let asked = new Map<string, Promise<Buffer>>()

  function keeping(dpi: number): Pick<PngWriter, 'write'> {
    const writer = createPngWriter(dpi, KEPT_BYTES)
    return {
      write: sheet => {
        const key = `${dpi} ${looks.picture(sheet)}`
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
