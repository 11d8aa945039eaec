import { dirname } from 'node:path'
import { loadTypeface } from '../../../fonts/load-typeface.js'
import { svgInPixels } from '../../files/raster/svg-in-pixels.js'
import type { Picture } from '../../pieces/parts/picture-slot.js'
import type { Typeface } from '../../pieces/typeface/typeface.js'
import type { FileAccess } from '../../plan/disk/file-access.js'
import { LARGEST_PICTURE_BYTES } from '../../plan/words/pictures.js'
import type { Outcome, Place } from '../../problems.js'

/** What a plan uses from files beside its text, each opened once a run. */
export interface Materials {
  /** A problem at `place` where there is no such typeface. */
  readonly typeface: (name: string, place: Place) => Outcome<Typeface>
  /** Files were looked at when the plan was read; one that has gone since is undefined. */
  readonly picture: (path: string) => Picture | undefined
}

/** Pictures opened in earlier runs, by path: one whose contents are the same stays the same object. */
export type KnownPictures = Map<string, { readonly from: Uint8Array; readonly picture: Picture }>

export function openMaterials(planFile: string, files: FileAccess, knownPictures: KnownPictures): Materials {
  const typefaces = new Map<string, Outcome<Typeface>>()
  const pictures = new Map<string, Picture | undefined>()
  return {
    typeface: (name, place) => {
      const opened = typefaces.get(name)
      if (opened?.ok) return opened
      const loaded = loadTypeface({ name, place, folder: dirname(planFile), files })
      typefaces.set(name, loaded)
      return loaded
    },
    picture: path => {
      if (!pictures.has(path)) pictures.set(path, openPicture(path, files, knownPictures))
      return pictures.get(path)
    },
  }
}

function openPicture(path: string, files: FileAccess, known: KnownPictures): Picture | undefined {
  const found = files.read(path, LARGEST_PICTURE_BYTES)
  if (found.kind !== 'bytes') return undefined
  const { bytes } = found
  const earlier = known.get(path)
  if (earlier !== undefined && Buffer.compare(earlier.from, bytes) === 0) return earlier.picture
  const drawn = bytes[0] === 0x89 || bytes[0] === 0xff ? undefined : svgInPixels(bytes)
  const picture: Picture =
    drawn === undefined
      ? { bytes, mediaType: bytes[0] === 0xff ? 'image/jpeg' : 'image/png' }
      : { bytes: drawn, mediaType: 'image/png' }
  known.set(path, { from: bytes, picture })
  return picture
}
