import type { Box } from '../../geometry.js'
import type { Art, PlacedArt, TextRun } from '../piece.js'
import { drawTextBlock } from '../text/text-block.js'
import type { Typeface } from '../typeface/typeface.js'
import type { TextSlot } from './face.js'

/** Draws a text once and gives the same art wherever it stands again in a slot of the same size. */
export function textDrawer(typeface: Typeface): (slot: TextSlot, box: Box) => PlacedArt {
  const known = new Map<string, Art>()
  return ({ lines, style }, { xMm, yMm, widthMm, heightMm }) => {
    const room = { widthMm, heightMm }
    const key = JSON.stringify([lines, style, room])
    const art = known.get(key) ?? drawTextBlock({ typeface, lines, style, room })
    known.set(key, art)
    return { art, xMm, yMm }
  }
}

/** A face as it is laid out, as large as its art, and the texts in its slots. */
interface FaceWithTexts {
  readonly art: Art
  readonly texts: readonly PlacedArt[]
}

/** Layouts are made in whole units: a text may stand this far over an edge without being cut off there. */
const ROUNDING_MM = 0.3

/** The lines of text that stand beyond an edge of their face, where they would be cut off or run into others. */
export function textOffFace(face: FaceWithTexts): readonly TextRun[] {
  const { widthMm, heightMm } = face.art
  return textOf(face).filter(run => {
    const right = run.xMm + run.widthMm
    // Letters reach about three quarters of the em up from the baseline, and a fifth down.
    const [top, bottom] = [run.baselineMm - run.sizeMm * 0.75, run.baselineMm + run.sizeMm * 0.2]
    return Math.min(run.xMm, top, widthMm - right, heightMm - bottom) < -ROUNDING_MM
  })
}

/** The text on a face but for its words, where it stands. */
function textOf({ art, texts }: FaceWithTexts): readonly TextRun[] {
  const inSlots = texts.flatMap(placed =>
    placed.art.text.map(run => ({
      ...run,
      xMm: run.xMm + placed.xMm,
      baselineMm: run.baselineMm + placed.yMm,
    })),
  )
  return [...art.text, ...inSlots]
}
