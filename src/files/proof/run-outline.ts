import { pathWriter } from '../../pieces/art/path-writer.js'
import type { ShapedRun } from '../../pieces/typeface/shaped-run.js'

/** At 72 pt a unit is a fortieth of a millimetre: the finest printer puts no dot nearer than that. */
export const UNITS_PER_EM = 1024

const writer = pathWriter()
const SPACE = 0x20
/** What makes a letter a small one. */
const SMALL = 0x20

/**
 * The outline of shaped letters from the beginning of their baseline, in whole units, y downwards. Each step goes from the end of
 * the one before, which is the shortest way to write it.
 */
export function runOutline({ glyphs }: ShapedRun): string {
  // Taken apart list by list, numbers would need memory of their own at every step of code that is not compiled yet.
  let x = 0
  let y = 0
  let startX = 0
  let startY = 0
  for (const { outline, xEm, yEm } of glyphs)
    for (const { type, values } of outline.commands) {
      writer.character(type.charCodeAt(0) | SMALL)
      let endX = type === 'Z' ? startX : x
      let endY = type === 'Z' ? startY : y
      for (let index = 0; index < values.length; index += 2) {
        endX = Math.round((values[index]! + xEm) * UNITS_PER_EM)
        endY = Math.round((values[index + 1]! + yEm) * UNITS_PER_EM)
        writeNext(endX - x, index === 0)
        writeNext(endY - y, false)
      }
      x = endX
      y = endY
      if (type === 'M') {
        startX = x
        startY = y
      }
    }
  return writer.take()
}

/** A minus parts a number from the one before as well as a space does. */
function writeNext(value: number, first: boolean): void {
  if (!first && value >= 0) writer.character(SPACE)
  writer.number(value)
}
