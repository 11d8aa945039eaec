import type { Box } from '../../geometry.js'
import type { PlacedArt } from '../piece.js'
import { drawTextLine } from '../text/text-line.js'
import type { Typeface } from '../typeface/typeface.js'
import type { Face } from './face.js'
import { slotBox } from './fit-faces.js'

/** What stands beside words on their baselines: numbers of a list, lines to write on. */
export function levelWithWords({
  face,
  slots,
  baselines,
  typeface,
}: {
  readonly face: Face
  readonly slots: ReadonlyMap<string, Box>
  /** Of the words that are placed, by their slots' names. */
  readonly baselines: ReadonlyMap<string, number>
  readonly typeface: Typeface
}): readonly PlacedArt[] {
  return Object.entries(face.slots).flatMap(([name, slot]): readonly PlacedArt[] => {
    if (slot.kind === 'word' || slot.levelWith === undefined) return []
    const baselineMm = baselines.get(slot.levelWith)
    if (baselineMm === undefined) throw new Error(`no word stands in "${slot.levelWith}"`)
    const box = slotBox(slots, name)
    if (slot.kind === 'art') {
      const art = slot.draw(box)
      return [{ art, xMm: box.xMm, yMm: baselineMm - art.heightMm }]
    }
    const { sizeMm, color, weight } = slot.style
    const line = drawTextLine({
      typeface,
      text: slot.lines.join(' '),
      sizeMm,
      weight: weight === 700 ? 'bold' : 'regular',
      ...(color === undefined ? {} : { color }),
    })
    return [{ art: line.art, xMm: box.xMm, yMm: baselineMm - line.baselineMm }]
  })
}
