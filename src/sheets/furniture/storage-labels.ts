/** Labels to cut out for the bags, boxes and envelopes that hold the sets. */
import { insetBox, type Size } from '../../geometry.js'
import type { Art, PlacedArt } from '../../pieces/piece.js'
import { drawCuts } from '../cuts.js'
import { type Grid, placeBox, placesOf } from '../grid.js'
import type { Sheet } from '../sheet.js'
import type { Lettering } from './lettering.js'

/** For a small bag, and for the front of an envelope: usual sizes, common practice, no source. */
export const BAG_LABEL: Size = { widthMm: 90, heightMm: 50 }
export const ENVELOPE_LABEL: Size = { widthMm: 95, heightMm: 120 }

export interface StorageLabel {
  /** The set's name, largest. */
  readonly name: string
  /** Class, group, number of pieces, …: each a line. */
  readonly lines: readonly string[]
}

export interface StorageLabelsRequest {
  readonly title: string
  readonly labels: readonly StorageLabel[]
  /** Divided by the label's size. */
  readonly grid: Grid
  readonly lettering: Lettering
}

const NAME_MM = 7
const LINE_MM = 4.2
/** 7 pt: below it a line is cut short with an ellipsis rather than made smaller. */
const SMALLEST_MM = 2.47
const PADDING_MM = 5

export function storageLabelSheets({
  title,
  labels,
  grid,
  lettering,
}: StorageLabelsRequest): readonly Sheet[] {
  const places = placesOf(grid)
  const count = Math.ceil(labels.length / places)
  return Array.from({ length: count }, (_, index) => {
    const onSheet = labels.slice(index * places, (index + 1) * places)
    const boxes = onSheet.map((_, place) => placeBox(grid, place))
    return {
      widthMm: grid.sheetSize.widthMm,
      heightMm: grid.sheetSize.heightMm,
      number: index + 1,
      side: 'front',
      kind: 'labels',
      title: count === 1 ? `${title}: labels` : `${title}: labels, page ${index + 1} of ${count}`,
      pieces: [],
      cuts: drawCuts(boxes, grid.sheetSize, 'lines'),
      furniture: onSheet.flatMap((label, place) =>
        setLabel(label, insetBox(boxes[place]!, PADDING_MM), lettering),
      ),
    }
  })
}

/** Name and lines, centred upright in the room, on the left. */
function setLabel(
  label: StorageLabel,
  room: ReturnType<typeof insetBox>,
  lettering: Lettering,
): readonly PlacedArt[] {
  const arts = [
    fitLine(lettering, label.name, { sizeMm: NAME_MM, weight: 'bold', widthMm: room.widthMm }),
    ...label.lines.map(text =>
      fitLine(lettering, text, { sizeMm: LINE_MM, weight: 'regular', widthMm: room.widthMm }),
    ),
  ]
  const heightMm = arts.reduce((sum, art) => sum + art.heightMm, 0)
  let yMm = room.yMm + Math.max(0, (room.heightMm - heightMm) / 2)
  return arts.flatMap(art => {
    const placed = { art, xMm: room.xMm, yMm }
    yMm += art.heightMm
    return placed.yMm + art.heightMm <= room.yMm + room.heightMm + 1e-6 ? [placed] : []
  })
}

interface LineRoom {
  readonly sizeMm: number
  readonly weight: 'regular' | 'bold'
  readonly widthMm: number
}

function fitLine(lettering: Lettering, text: string, { sizeMm, weight, widthMm }: LineRoom): Art {
  const art = lettering({ text, sizeMm, weight })
  if (art.widthMm <= widthMm) return art
  const smaller = Math.max(SMALLEST_MM, (sizeMm * widthMm) / art.widthMm)
  const shrunk = lettering({ text, sizeMm: smaller, weight })
  if (shrunk.widthMm <= widthMm + 1e-6) return shrunk
  const letters = [...text]
  for (let length = letters.length - 1; length > 0; length--) {
    const cut = lettering({
      text: `${letters.slice(0, length).join('').trimEnd()}…`,
      sizeMm: smaller,
      weight,
    })
    if (cut.widthMm <= widthMm) return cut
  }
  return shrunk
}
