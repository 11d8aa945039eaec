import { mmToPoints, type Size } from '../../geometry.js'
import { fitFaces } from '../../pieces/faces/fit-faces.js'
import type { AdviceRequest, WordsOn } from '../../sheets/advice.js'
import type { ImposedItem } from '../impose/impose-plan.js'
import { isRoomy, type PieceFitting } from '../settle/try-ways.js'

/** What was laid out and measured when the plan was settled is not done again. */
export type FacesFitting = Pick<PieceFitting, 'layOut' | 'measureWord'>

/**
 * How the item's words would come out on pieces of other sizes: the faces are laid out again on each, so that advice
 * holds for every layout, whatever stands beside its words.
 */
export async function wordsOnPieces(
  { prepared, set }: Pick<ImposedItem, 'prepared' | 'set'>,
  sizes: readonly Size[],
  fitting: FacesFitting,
): Promise<NonNullable<AdviceRequest['wordsOn']>> {
  const found = new Map<string, WordsOn | null>()
  for (const size of sizes)
    if (!found.has(nameOf(size)))
      found.set(nameOf(size), await wordsOnPiece({ prepared, set }, size, fitting))
  return size => found.get(nameOf(size)) ?? null
}

async function wordsOnPiece(
  { prepared, set }: Pick<ImposedItem, 'prepared' | 'set'>,
  size: Size,
  { layOut, measureWord }: FacesFitting,
): Promise<WordsOn | null> {
  const { layout, request, job } = prepared
  if (layout.kind !== 'pieces') return null
  const once = { ...set, cards: set.cards.filter(card => card.copy === 1) }
  const faces = layout.faces(request, once, size)
  const now = layout.faces(request, once, prepared.grid.pieceSize)
  if (!faces.ok || faces.problems.length > now.problems.length) return null
  const fitted = await fitFaces(faces.value, { ...request, place: job.item.place, layOut, measureWord })
  // What would not be taken for her is not advised either.
  if (!fitted.ok || !isRoomy(prepared, fitted.value, { measureWord })) return null
  const main = fitted.value.fits.get('main')
  return main === undefined ? {} : { points: Math.round(mmToPoints(main.sizeMm) * 4) / 4 }
}

function nameOf({ widthMm, heightMm }: Size): string {
  return `${widthMm.toFixed(3)} ${heightMm.toFixed(3)}`
}
