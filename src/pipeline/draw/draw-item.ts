import type { PageFace } from '../../../layouts/layout.js'
import { type FacesToDraw, facesToDraw } from '../../pieces/faces/draw-faces.js'
import type { CardFace } from '../../pieces/faces/face.js'
import type { WordMeasurer } from '../../pieces/word/word-measurer.js'
import { contrastOf } from '../deal/prepare-item.js'
import { byIdentity, type KeptStore } from '../kept-store.js'
import type { SettledItem } from '../settle/settle-plan.js'

/** Every face of an item, each drawn when its sheet is. */
export interface FacesOfItem {
  readonly fronts: FacesToDraw<CardFace>
  readonly backs: FacesToDraw<CardFace>
  readonly pages: FacesToDraw<PageFace>
}

export interface ItemToDraw {
  readonly settled: SettledItem
  readonly drawing: FacesOfItem
}

export interface FaceDrawers {
  readonly faces: KeptStore<FacesOfItem>
  /** Whether what is drawn is held, for a program that goes on with the plan. */
  readonly holdsDrawn: boolean
  readonly measureWord: WordMeasurer
}

/** sizes → pieces: what draws every face of an item, each word once for the faces drawn of late. */
export function itemToDraw(settled: SettledItem, drawers: FaceDrawers): ItemToDraw {
  return { settled, drawing: facesOfItem(settled, drawers) }
}

function facesOfItem(settled: SettledItem, { faces, holdsDrawn, measureWord }: FaceDrawers): FacesOfItem {
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
    const drawing = { ...request, place: job.item.place, measureWord, holdsDrawn }
    return {
      fronts: facesToDraw(fronts, { ...drawing, contrast }),
      backs: facesToDraw(backs, { ...drawing, contrast }),
      pages: facesToDraw(pages, drawing),
    }
  })
}
