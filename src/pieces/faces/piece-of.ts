import { mmToPoints } from '../../geometry.js'
import type { Piece } from '../piece.js'
import type { DrawnFace } from './draw-faces.js'
import type { CardFace } from './face.js'

/** A drawn card's face as a piece. */
export function pieceOf({ face, art, marks, mainWord }: DrawnFace<CardFace>): Piece {
  const { widthMm, heightMm, id, kind, number, copy, text, setMark, cells } = face
  return {
    id,
    kind,
    number,
    copy,
    widthMm,
    heightMm,
    art,
    text,
    marks,
    ...(setMark === undefined ? {} : { setMark }),
    ...(cells === undefined ? {} : { cells }),
    ...(mainWord === undefined
      ? {}
      : { xHeightMm: mainWord.xHeightMm, fontPt: Math.round(mmToPoints(mainWord.sizeMm) * 100) / 100 }),
  }
}
