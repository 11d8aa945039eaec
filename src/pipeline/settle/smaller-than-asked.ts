import { mmToPoints, sayMm } from '../../geometry.js'
import { leastXHeightMm } from '../../pieces/text/type-size.js'
import type { TypeSize } from '../../plan/plan.js'
import { type Problem, warningAt } from '../../problems.js'
import { sizeAsked } from '../deal/item-jobs.js'
import type { PreparedItem } from '../deal/prepare-item.js'
import type { FittedPieces } from './try-ways.js'

/** An item whose words have their size. */
export interface SizedItem {
  readonly prepared: PreparedItem
  readonly pieces: Pick<FittedPieces, 'fronts'>
}

export function isExact(size: TypeSize): boolean {
  return (size.kind === 'points' || size.kind === 'x-height') && size.exactly === true
}

/** Height of x of the main words of an item; undefined where it has none. */
export function mainXHeightMm({ prepared, pieces }: SizedItem): number | undefined {
  const fit = pieces.fronts.fits.get('main')
  return fit && fit.sizeMm * prepared.request.typeface.metrics.xHeight
}

/** Sizes are told in quarters of a point; less is no difference. */
const LEAST_DIFFERENCE_MM = 0.05

/** Where a group's words are smaller than the class's own, or than the size that the group asks for. */
export function smallerThanAsked(settled: SizedItem, own: SizedItem | undefined): readonly Problem[] {
  const xHeightMm = mainXHeightMm(settled)
  if (xHeightMm === undefined) return []
  return [...smallerThanClass(settled, xHeightMm, own), ...smallerThanGroup(settled, xHeightMm)]
}

function smallerThanClass(
  settled: SizedItem,
  xHeightMm: number,
  own: SizedItem | undefined,
): readonly Problem[] {
  const ownMm = own && mainXHeightMm(own)
  if (own === undefined || ownMm === undefined || xHeightMm >= ownMm - LEAST_DIFFERENCE_MM) return []
  const { job } = settled.prepared
  const exact = isExact(sizeAsked(job))
  const message =
    `words of "${job.name}" are ${inWords(settled)}, smaller than the class's own, ` +
    `which are ${inWords(own)}${exact ? '' : ': there is no room for as much'}`
  const advice = exact
    ? 'Take "exactly" away, and they are no smaller than the class\'s.'
    : 'Print fewer on a sheet, take larger paper or leave out the longest word; or write "exactly" before the size to hold it.'
  return [warningAt(placeOfSize(settled), message, advice)]
}

/** An item's own size wins over its groups'; a child who needs a larger one is then left with less. */
function smallerThanGroup(settled: SizedItem, xHeightMm: number): readonly Problem[] {
  const { item, group, name } = settled.prepared.job
  if (item.size === undefined || group?.size === undefined) return []
  const needMm = leastXHeightMm(group.size)
  if (xHeightMm >= needMm - LEAST_DIFFERENCE_MM) return []
  return [
    warningAt(
      item.place,
      `words of "${name}" are ${inWords(settled)}, smaller than what ${group.name} asks for, an x-height of ${sayMm(needMm)} mm: ` +
        "the item's own size wins",
      `Leave "size" out of the item, or print it for ${group.name} in an item of its own.`,
    ),
  ]
}

function placeOfSize({ prepared: { job } }: SizedItem) {
  return job.item.size === undefined && job.group !== null ? job.group.place : job.item.place
}

function inWords(settled: SizedItem): string {
  const points = Math.round(mmToPoints(settled.pieces.fronts.fits.get('main')!.sizeMm) * 4) / 4
  return `${points} pt (x-height ${sayMm(mainXHeightMm(settled)!)} mm)`
}
