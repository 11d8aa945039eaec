/** The order in which sides go through the printer. */
import type { Sheet } from './sheet.js'

/** Front, its back, next front, …, numbered from 1: for a printer that prints both sides. */
export function interleave(fronts: readonly Sheet[], backs: readonly Sheet[]): readonly Sheet[] {
  return numberSheets(fronts.flatMap((front, index) => [front, ...backs.slice(index, index + 1)]))
}

/**
 * All fronts, then all backs: for card that is fed by hand a second time. Printers differ in whether the pile comes
 * back in order or with its last sheet first; `pile` says which.
 */
export function inTwoPasses(
  fronts: readonly Sheet[],
  backs: readonly Sheet[],
  pile: 'in order' | 'last sheet first',
): readonly Sheet[] {
  return numberSheets([...fronts, ...(pile === 'in order' ? backs : backs.toReversed())])
}

/** The same sheets, numbered 1, 2, … in this order: for an item that joins pages, fronts and backs. */
export function numberSheets(sheets: readonly Sheet[]): readonly Sheet[] {
  return sheets.map((sheet, index) => ({ ...sheet, number: index + 1 }))
}
