import type { Art } from '../../pieces/piece.js'
import type { Sheet } from '../../sheets/sheet.js'
import { drawingGroups } from './drawing-order.js'
import type { ArtIds } from './svg-body.js'

/** The arts of a sheet that are referred to, and those of them that are to be defined now. */
export interface SheetArts {
  readonly ids: ArtIds
  readonly first: ArtIds
}

/**
 * Ids for arts that stand more than once on sheets that come one after another and are forgotten: an art is written out
 * where it stands for the first time, and defined once for all when it comes again. Nothing is held of an art that nobody
 * else holds.
 */
export function sharedArts(prefix: string): (sheet: Sheet) => SheetArts {
  const seen = new WeakMap<Art, string | null>()
  let count = 0
  return sheet => {
    const uses = new Map<Art, number>()
    for (const group of drawingGroups(sheet))
      for (const { art } of group.drawings) uses.set(art, (uses.get(art) ?? 0) + 1)
    const ids = new Map<Art, string>()
    const first = new Map<Art, string>()
    for (const [art, times] of uses) {
      const known = seen.get(art)
      if (known === undefined && times === 1) {
        seen.set(art, null)
        continue
      }
      const id = known ?? `${prefix}${++count}`
      if (known !== id) first.set(art, id)
      seen.set(art, id)
      ids.set(art, id)
    }
    return { ids, first }
  }
}
