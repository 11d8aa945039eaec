import { mmToPoints, type Size } from '../../geometry.js'
import { drawFaces } from '../../pieces/faces/draw-faces.js'
import type { AdviceRequest, WordsOn } from '../../sheets/advice.js'
import type { ImposedItem } from '../impose/impose-plan.js'

/**
 * How the item's words would come out on pieces of other sizes: the faces are laid out again on each, so that advice
 * holds for every layout, whatever stands beside its words.
 */
export async function wordsOnPieces(
  { prepared, set }: ImposedItem,
  sizes: readonly Size[],
): Promise<NonNullable<AdviceRequest['wordsOn']>> {
  const found = new Map<string, WordsOn | null>()
  for (const size of sizes)
    if (!found.has(nameOf(size))) found.set(nameOf(size), await wordsOnPiece({ prepared, set }, size))
  return size => found.get(nameOf(size)) ?? null
}

async function wordsOnPiece(
  { prepared, set }: Pick<ImposedItem, 'prepared' | 'set'>,
  size: Size,
): Promise<WordsOn | null> {
  const { layout, request, job } = prepared
  if (layout.kind !== 'pieces') return null
  const once = { ...set, cards: set.cards.filter(card => card.copy === 1) }
  const faces = layout.faces(request, once, size)
  const now = layout.faces(request, once, prepared.grid.pieceSize)
  if (!faces.ok || faces.problems.length > now.problems.length) return null
  const drawn = await drawFaces(faces.value, { ...request, place: job.item.place })
  if (!drawn.ok) return null
  const main = drawn.value.fits.find(fit => fit.sizeGroup === 'main')
  return main === undefined ? {} : { points: Math.round(mmToPoints(main.sizeMm) * 4) / 4 }
}

function nameOf({ widthMm, heightMm }: Size): string {
  return `${widthMm.toFixed(3)} ${heightMm.toFixed(3)}`
}
