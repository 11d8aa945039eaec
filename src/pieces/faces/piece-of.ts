import { mmToPoints } from '../../geometry.js'
import type { Piece, PieceOutline } from '../piece.js'
import type { DrawnFace, FacesToDraw } from './draw-faces.js'
import type { CardFace } from './face.js'

/** A piece before it is drawn. */
export interface PieceToDraw extends PieceOutline {
  readonly draw: () => Piece
}

/** The faces of a set of cards as pieces, in their order. */
export function piecesToDraw({ faces, draw }: FacesToDraw<CardFace>): readonly PieceToDraw[] {
  return faces.map((face, index) => ({ ...outlineOf(face), draw: () => pieceOf(draw(index)) }))
}

/** The piece drawn; as a back it may stand behind another front than its own face says. */
export function drawPiece({ draw, ...outline }: PieceToDraw): Piece {
  return { ...draw(), ...outline }
}

function outlineOf(face: CardFace): PieceOutline {
  const { widthMm, heightMm, id, kind, number, copy, text, setMark, cells } = face
  return {
    id,
    kind,
    number,
    copy,
    widthMm,
    heightMm,
    text,
    ...(setMark === undefined ? {} : { setMark }),
    ...(cells === undefined ? {} : { cells }),
  }
}

function pieceOf({ face, art, marks, mainWord }: DrawnFace<CardFace>): Piece {
  return {
    ...outlineOf(face),
    art,
    marks,
    ...(mainWord === undefined
      ? {}
      : { xHeightMm: mainWord.xHeightMm, fontPt: Math.round(mmToPoints(mainWord.sizeMm) * 100) / 100 }),
  }
}
