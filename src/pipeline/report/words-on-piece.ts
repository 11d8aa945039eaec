import { mmToPoints, type Size } from '../../geometry.js'
import type { CardFace } from '../../pieces/faces/face.js'
import { fitFaces } from '../../pieces/faces/fit-faces.js'
import type { Outcome } from '../../problems.js'
import type { CardSet } from '../../sets/card-set.js'
import type { AdviceRequest, WordsOn } from '../../sheets/advice.js'
import type { ImposedItem } from '../impose/impose-plan.js'
import { isRoomy, type PieceFitting, withLongestWords } from '../settle/try-ways.js'

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
  const tooSmall: Size[] = []
  for (const size of sizes.toSorted((a, b) => area(b) - area(a))) {
    // What has no room on a piece has none on one that is no wider and no higher.
    if (found.has(nameOf(size)) || tooSmall.some(other => isWithin(size, other))) continue
    const words = await wordsOnPiece({ prepared, set }, size, fitting)
    found.set(nameOf(size), words)
    if (words === null) tooSmall.push(size)
  }
  return size => found.get(nameOf(size)) ?? null
}

function area({ widthMm, heightMm }: Size): number {
  return widthMm * heightMm
}

function isWithin(size: Size, other: Size): boolean {
  return size.widthMm <= other.widthMm + 1e-6 && size.heightMm <= other.heightMm + 1e-6
}

async function wordsOnPiece(
  { prepared, set }: Pick<ImposedItem, 'prepared' | 'set'>,
  size: Size,
  { layOut, measureWord }: FacesFitting,
): Promise<WordsOn | null> {
  const { layout, request, job } = prepared
  if (layout.kind !== 'pieces') return null
  const once = { ...set, cards: set.cards.filter(card => card.copy === 1) }
  const facesOf = (some: CardSet) => layout.faces(request, some, size)
  const fitting = { ...request, place: job.item.place, layOut, measureWord, untold: true as const }
  const roomy = async (faces: Outcome<readonly CardFace[]>) => {
    const fitted = faces.ok ? await fitFaces(faces.value, fitting) : undefined
    return fitted?.ok && isRoomy(prepared, fitted.value, { measureWord }) ? fitted.value : undefined
  }
  // What would not be taken for her is not advised either, and the longest words tell that soonest.
  if ((await roomy(facesOf(withLongestWords(once, request)))) === undefined) return null
  const faces = facesOf(once)
  const now = layout.faces(request, once, prepared.grid.pieceSize)
  if (faces.problems.length > now.problems.length) return null
  const fitted = await roomy(faces)
  if (fitted === undefined) return null
  const main = fitted.fits.get('main')
  return main === undefined ? {} : { points: Math.round(mmToPoints(main.sizeMm) * 4) / 4 }
}

function nameOf({ widthMm, heightMm }: Size): string {
  return `${widthMm.toFixed(3)} ${heightMm.toFixed(3)}`
}
