import { saySize } from '../../geometry.js'
import { itemTitle } from '../../plan/items/item-title.js'
import type { CardSet } from '../../sets/card-set.js'
import { contentsOf, isJoined, wordsDealt } from '../../sets/set-contents.js'
import { planCuts } from '../../sheets/cutting-plan.js'
import { fullestSheet } from '../../sheets/estimate.js'
import { largePrintCaution } from '../../sheets/furniture/cautions.js'
import { coverColumn, coverSheets } from '../../sheets/furniture/cover.js'
import { keyBlocks } from '../../sheets/furniture/key-block.js'
import type { Lettering } from '../../sheets/furniture/lettering.js'
import { pageRoom } from '../../sheets/grid.js'
import type { Sheet } from '../../sheets/sheet.js'
import { itemKey } from '../deal/item-key.js'
import { letteringIn } from '../deal/lettering-in.js'
import type { PreparedItem } from '../deal/prepare-item.js'

/** How furniture gets its words drawn: in the item's own typeface. */
export function letteringFor({ request }: PreparedItem): Lettering {
  return letteringIn(request.typeface)
}

/** The page that goes with a set: what is in it, its key, how to cut it, a ruler, the cautions. */
export function itemCover(
  prepared: PreparedItem,
  set: CardSet,
  { sheetsOfCard, pages }: { readonly sheetsOfCard: number; readonly pages: readonly Pick<Sheet, 'title'>[] },
): readonly Sheet[] {
  const { job, request, grid } = prepared
  const { item } = job
  const lettering = letteringFor(prepared)
  const room = pageRoom(grid)
  const used = fullestSheet({ grid, cards: cardsOnce(set), copies: item.copies, order: item.order })
  return coverSheets({
    title: request.itemTitle,
    planTitle: request.plan.title,
    subtitles: [request.subtitle],
    entries: [
      {
        name: itemTitle(item),
        holds: `${contentsOf(set)}${item.copies > 1 ? `, ${item.copies} of each` : ''}`,
        sheetsOfCard,
      },
    ],
    onPaper: pagesNamed(prepared, pages),
    cuttings: [
      {
        name: itemTitle(item),
        grid,
        plan: planCuts({
          grid,
          order: item.order,
          cut: item.cut,
          cutCorners: request.type.large && !isJoined(set),
          used,
          pieces: set.cards.length,
        }),
      },
    ],
    words: wordsNamed(wordsDealt(set, request.words).map(word => word.text)),
    key: setting =>
      item.key === 'cover'
        ? keyBlocks({
            entries: itemKey(request),
            typeface: request.typeface,
            lettering,
            widthMm: coverColumn(room).widthMm,
            setting,
          })
        : [],
    moreCautions: request.type.large ? [largePrintCaution] : [],
    lettering,
    sheetSize: grid.sheetSize,
    room,
  })
}

/** `caller’s sheet`, `answers (2 pages)`: as their titles name them, without what all of them begin with. */
function pagesNamed(
  { request: { plan, itemTitle: title } }: PreparedItem,
  pages: readonly Pick<Sheet, 'title'>[],
): readonly string[] {
  const opening = `${plan.title}: ${title}: `
  const names = pages.map(page => page.title.replace(opening, ''))
  return [...new Set(names)].map(name => {
    const count = names.filter(each => each === name).length
    return count === 1 ? name : `${name} (${count} pages)`
  })
}

/** Set as one text, thousands of words fill page after page that nobody reads, and take more memory than all the cards. */
const MOST_NAMED = 600

function wordsNamed(words: readonly string[]): readonly string[] {
  if (words.length <= MOST_NAMED) return words
  return [...words.slice(0, MOST_NAMED), `and ${words.length - MOST_NAMED} more`]
}

/** How many different cards the set has. */
export function cardsOnce(set: CardSet): number {
  return set.cards.filter(card => card.copy === 1).length
}

/** What a card of a named size makes of the sheet, in a plain sentence. */
export function wasteNote({ job, grid }: PreparedItem): readonly string[] {
  if (job.item.division.kind !== 'card') return []
  const { columns, rows, orientation, pieceSize, wasteShare } = grid
  const waste = `${Math.round(wasteShare * 100)} % of a full sheet is waste`
  return [
    `Cards of ${saySize(pieceSize)} go ${columns} across and ${rows} down on ${orientation} paper: ${waste}.`,
  ]
}
