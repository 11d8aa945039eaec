import type { Box, Size } from '../../geometry.js'
import { keptOfLate } from '../../kept-of-late.js'
import type { Art, PlacedArt, TextRun } from '../piece.js'
import { drawTextBlock, layTextBlock, type TextBlock } from '../text/text-block.js'
import type { Typeface } from '../typeface/typeface.js'
import type { LaidOutFace, TextSlot } from './face.js'

/** A text in its slot, laid out but not drawn. */
export interface FoundText {
  readonly slot: TextSlot
  readonly box: Box
  /** Its lines, in the coordinates of the box. */
  readonly runs: readonly TextRun[]
}

export function findText(slot: TextSlot, box: Box, typeface: Typeface): FoundText {
  return { slot, box, runs: layTextBlock(blockOf(slot, box, typeface)) }
}

/** How many texts of a typeface are held drawn at least, a few kilobytes each. */
const HELD = 400

const drawn = new WeakMap<Typeface, (key: string, make: () => Art) => Art>()

/** Draws a text once and gives the same art wherever it stands again in a slot of the same size, in every set. */
export function textDrawer(typeface: Typeface): (text: FoundText) => PlacedArt {
  const known = drawn.get(typeface) ?? keptOfLate(HELD)
  drawn.set(typeface, known)
  return ({ slot, box }) => {
    const { xMm, yMm, widthMm, heightMm } = box
    const key = JSON.stringify([slot.lines, slot.style, widthMm, heightMm])
    return { art: known(key, () => drawTextBlock(blockOf(slot, box, typeface))), xMm, yMm }
  }
}

function blockOf({ lines, style }: TextSlot, { widthMm, heightMm }: Box, typeface: Typeface): TextBlock {
  return { typeface, lines, style, room: { widthMm, heightMm } }
}

/** A face as it is laid out, and the texts in its slots. */
interface FaceWithTexts extends Pick<LaidOutFace, 'text'> {
  readonly face: Size
  readonly texts: readonly FoundText[]
}

/** Boxes stand on whole units, so a line may be put this far over an edge without being cut off there. */
const ROUNDING_MM = 0.3

/** The lines of text that stand beyond an edge of their face, where they would be cut off or run into others. */
export function textOffFace(fitted: FaceWithTexts): readonly TextRun[] {
  const { widthMm, heightMm } = fitted.face
  return textOf(fitted).filter(run => {
    const right = run.xMm + run.widthMm
    // Letters reach about three quarters of the em up from the baseline, and a fifth down.
    const [top, bottom] = [run.baselineMm - run.sizeMm * 0.75, run.baselineMm + run.sizeMm * 0.2]
    const overMm = Math.max(-top, bottom - heightMm)
    const besideMm = Math.max(-run.xMm, right - widthMm)
    return overMm > ROUNDING_MM || besideMm > ROUNDING_MM
  })
}

/** The text on a face but for its words, where it stands. */
function textOf({ text, texts }: FaceWithTexts): readonly TextRun[] {
  const inSlots = texts.flatMap(({ runs, box }) =>
    runs.map(run => ({ ...run, xMm: run.xMm + box.xMm, baselineMm: run.baselineMm + box.yMm })),
  )
  return [...text, ...inSlots]
}
