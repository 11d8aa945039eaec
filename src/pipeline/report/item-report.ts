import type { PrintedSheet } from '../../files/printed-plan.js'
import { type AdviceRequest, adviseOnSheets, sizesToTry } from '../../sheets/advice.js'
import { type Estimate, estimateSheets } from '../../sheets/estimate.js'
import type { ImposedItem } from '../impose/impose-plan.js'
import { cardsOnce } from '../impose/item-cover.js'
import { type FacesFitting, wordsOnPieces } from './words-on-piece.js'

/** What an item would take, for `oaktag check`. */
export interface ItemReport {
  readonly name: string
  readonly layout: string
  readonly group: string | null
  /** Printed sides of paper, those of keys and covers included. */
  readonly pages: number
  readonly sheetsOfCard: number
  readonly pieces: number
  /** Strokes of the blade in all. */
  readonly cuts: number
  /** Share of the card, 0 to 1, that ends in the bin. */
  readonly wasteShare: number
  /** What a teacher should know of the set, in plain sentences. */
  readonly notes: readonly string[]
  /** Ways to save sheets or to have larger cards. */
  readonly advice: readonly string[]
}

export async function reportItem(
  drawn: ImposedItem<PrintedSheet>,
  fitting: FacesFitting,
): Promise<ItemReport> {
  const { prepared, set, printed } = drawn
  const { item } = prepared.job
  const cards = cardsOnce(set)
  const request = { grid: prepared.grid, cards, copies: item.copies, order: item.order }
  const estimate: Estimate | null =
    cards === 0 ? null : estimateSheets({ ...request, backs: item.back !== 'none' })
  return {
    name: printed.name,
    layout: printed.layout,
    group: printed.group,
    pages: printed.sheets.length,
    sheetsOfCard: estimate?.sheetsOfCard ?? 0,
    pieces: estimate?.pieces ?? 0,
    cuts: estimate?.cuts ?? 0,
    wasteShare: Math.round((estimate?.wasteShare ?? 0) * 1000) / 1000,
    notes: printed.notes,
    advice:
      cards === 0 ? [] : await adviceFor(drawn, { ...request, gridRequest: prepared.gridRequest }, fitting),
  }
}

async function adviceFor(
  drawn: ImposedItem<PrintedSheet>,
  request: AdviceRequest,
  fitting: FacesFitting,
): Promise<readonly string[]> {
  const wordsOn = await wordsOnPieces(drawn, sizesToTry(request), fitting)
  return adviseOnSheets({ ...request, wordsOn }).map(advice => advice.text)
}
