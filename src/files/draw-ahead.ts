import { sheetPath } from './folder/item-paths.js'
import type { PictureToDraw } from './folder/set-files.js'
import { dpiOf } from './page/dpi-of.js'
import { pageShapes } from './page/page-shapes.js'
import { drawnSheet, type PlacedItem } from './printed-plan.js'
import { type KeptFiles, looksKept } from './write-items.js'

/**
 * Has the writing thread draw an item's pages while the rest of the plan is laid out: those that are not as they were in the last run.
 *
 * @param dpi pixels an inch of printed pages
 */
export function drawAhead(item: PlacedItem, dpi: number, kept: KeptFiles): void {
  const { thread, lastRun } = kept
  if (thread?.isReady() !== true) return
  const looks = looksKept(kept)
  const fineness = dpiOf(item.paper, dpi)
  const pictures = item.sheets.flatMap((printed, index): readonly PictureToDraw[] => {
    const sheet = drawnSheet(printed)
    const look = looks.picture(sheet)
    const path = sheetPath(item, index + 1, 'png')
    return lastRun?.isLeft(path, `${fineness} ${look}`) === true
      ? []
      : [{ dpi: fineness, look, page: () => pageShapes(sheet) }]
  })
  thread.drawAhead(pictures)
}
