import type { PageFace } from '../../../layouts/layout.js'
import { type DrawnFaces, drawFitted } from '../../pieces/faces/draw-faces.js'
import type { CardFace } from '../../pieces/faces/face.js'
import { contrastOf } from '../deal/prepare-item.js'
import { byIdentity, type KeptStore } from '../kept-store.js'
import type { SettledItem } from '../settle/settle-plan.js'

/** Every face of an item, drawn. */
export interface DrawnFacesOfItem {
  readonly fronts: DrawnFaces<CardFace>
  readonly backs: DrawnFaces<CardFace>
  readonly pages: DrawnFaces<PageFace>
}

export interface DrawnItem {
  readonly settled: SettledItem
  readonly drawn: DrawnFacesOfItem
}

/** sizes → pieces: draws every face of an item, each word once however often it stands. */
export function drawItem(settled: SettledItem, faces: KeptStore<DrawnFacesOfItem>): DrawnItem {
  return { settled, drawn: drawFaces(settled, faces) }
}

function drawFaces(settled: SettledItem, faces: KeptStore<DrawnFacesOfItem>): DrawnFacesOfItem {
  const { prepared, pieces, pages } = settled
  const { request, job } = prepared
  const { fronts, backs } = pieces
  const contrast = contrastOf(prepared)
  const parts = [
    byIdentity(fronts),
    byIdentity(backs),
    byIdentity(pages),
    request.marks,
    contrast,
    request.type,
  ]
  return faces.once({ parts: [...parts, byIdentity(request.typeface)], places: [] }, () => {
    const drawing = { ...request, place: job.item.place }
    return {
      fronts: drawFitted(fronts, { ...drawing, contrast }),
      backs: drawFitted(backs, { ...drawing, contrast }),
      pages: drawFitted(pages, drawing),
    }
  })
}
