/** The key on a strip at the foot of a sheet, outside the pieces: marks on sample letters, their names beside them. */
import type { KeyEntry } from '../../pieces/marks/key-entries.js'
import {
  drawKeySample,
  isCornerTag,
  type KeySampleRequest,
  keySampleWidthMm,
} from '../../pieces/marks/key-sample.js'
import type { PlacedArt } from '../../pieces/piece.js'
import type { Typeface } from '../../pieces/typeface/typeface.js'
import type { Block } from './column.js'
import type { Lettering } from './lettering.js'

export interface KeyStripRequest {
  readonly entries: readonly KeyEntry[]
  readonly typeface: Typeface
  readonly lettering: Lettering
  readonly widthMm: number
  /** Heavier marks and larger names. */
  readonly large: boolean
  /** No text of the strip may be smaller: an em in mm. */
  readonly leastTextMm?: number
}

/** Between two marks of the strip, and between a mark and its name. */
const GAP_MM = 7
const NAME_GAP_MM = 2.5

/** As many marks a line as the width holds. */
export function keyStrip(request: KeyStripRequest): Block {
  const { entries, typeface, lettering, widthMm, large, leastTextMm = 0 } = request
  const sampleMm = Math.max(large ? 7 : 5, leastTextMm * 1.2)
  const nameMm = Math.max(large ? 4.5 : 3.4, leastTextMm)
  // In large print a tag below the letters is as large as the words.
  const tagged = leastTextMm > 0 && entries.some(({ mark }) => mark.tag !== undefined && !isCornerTag(mark))
  const lineMm = sampleMm * (tagged ? 2.8 : 1.9)
  const art: PlacedArt[] = []
  let xMm = 0
  let line = 0
  for (const entry of entries) {
    const room = { widthMm: sampleMm * 4, heightMm: lineMm - 0.5 }
    const shown: KeySampleRequest = {
      typeface,
      mark: entry.mark,
      letters: entry.letters,
      sizeMm: sampleMm,
      room,
      large,
      leastTextMm,
    }
    const sample = drawKeySample(shown)
    const inkMm = keySampleWidthMm(shown)
    const name = lettering({ text: entry.label, sizeMm: nameMm })
    const entryMm = inkMm + NAME_GAP_MM + name.widthMm
    if (xMm > 0 && xMm + entryMm > widthMm) {
      xMm = 0
      line += 1
    }
    const top = line * lineMm
    art.push(
      { art: sample, xMm, yMm: top },
      { art: name, xMm: xMm + inkMm + NAME_GAP_MM, yMm: top + (lineMm - name.heightMm) / 2 },
    )
    xMm += entryMm + GAP_MM
  }
  return { art, heightMm: entries.length === 0 ? 0 : (line + 1) * lineMm, spaceAfterMm: 0 }
}
