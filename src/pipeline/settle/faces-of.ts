import type { LayoutRequest, PieceLayout } from '../../../layouts/layout.js'
import type { Size } from '../../geometry.js'
import type { CardFace } from '../../pieces/faces/face.js'
import type { Outcome } from '../../problems.js'
import type { CardSet } from '../../sets/card-set.js'

/** The faces of a set on pieces of this size. */
export function facesOf(
  layout: PieceLayout,
  request: LayoutRequest,
  set: CardSet,
  size: Size,
): Outcome<readonly CardFace[]> {
  return layout.faces(request, set, size)
}
