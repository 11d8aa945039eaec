import { failWith, succeed } from '../outcomes.js'
import { drawFaces } from '../pieces/faces/draw-faces.js'
import type { CardFace } from '../pieces/faces/face.js'
import { pieceOf } from '../pieces/faces/piece-of.js'
import { cardBackFace } from '../pieces/parts/card-back.js'
import { textRoom } from '../pieces/parts/text-card.js'
import type { Piece } from '../pieces/piece.js'
import { fitTexts } from '../pieces/text/fit-texts.js'
import { type Outcome, warningAt } from '../problems.js'
import type { CardSet } from '../sets/card-set.js'
import { imposeBacks } from '../sheets/backs.js'
import { DEFAULT_BLEED_MM } from '../sheets/bleed.js'
import { drawLattice } from '../sheets/furniture/lattice.js'
import type { Sheet } from '../sheets/sheet.js'
import { letteringFor } from './item-cover.js'
import { contrastOf, type PreparedItem } from './prepare-item.js'

/** What stands on the backs of a set's pieces; nothing where the teacher asked for none. */
export function backFaces(prepared: PreparedItem, set: CardSet): Outcome<readonly CardFace[]> {
  const { job, request, grid } = prepared
  const { back } = job.item
  if (back === 'none') return succeed([])
  const textSize = textSizeOnBacks(prepared, set)
  if (!textSize.ok) return textSize
  const value = set.cards.map(card =>
    cardBackFace({
      ...request,
      shortSetTitle: request.setTitle,
      textMm: textSize.value,
      back,
      card,
      size: grid.pieceSize,
      drawPattern: size =>
        drawLattice({ area: { xMm: 0, yMm: 0, ...size }, corner: { xMm: 0, yMm: 0 }, pieceSize: size }),
    }),
  )
  return succeed(value)
}

/** The backs of an item's sheets, in the order of their fronts; none where the teacher asked for none. */
export async function drawBacks(
  prepared: PreparedItem,
  set: CardSet,
  fronts: readonly Sheet[],
  title: string,
): Promise<Outcome<readonly Sheet[]>> {
  const { job, request, grid } = prepared
  const { item } = job
  const { back } = item
  if (back === 'none') return succeed([])
  const problems = missingOnBacks(prepared, set, back).map(({ what, words }) =>
    warningAt(
      item.place,
      `no ${what} for ${words.map(word => `"${word.text}"`).join(', ')}: the back stays empty`,
      `Give each word its ${what} in the plan, or choose another back.`,
    ),
  )
  const faces = backFaces(prepared, set)
  if (!faces.ok) return failWith([...problems, ...faces.problems])
  const drawn = await drawFaces(faces.value, {
    ...request,
    place: item.place,
    contrast: contrastOf(prepared),
  })
  if (!drawn.ok) return failWith([...problems, ...drawn.problems])
  const pieces = new Map<string, Piece>(drawn.value.faces.map(face => [face.face.id, pieceOf(face)]))
  const backs = imposeBacks({
    fronts,
    backOf: front => pieces.get(front.id),
    flip: item.flip,
    ...(request.plan.printer?.backShift === undefined ? {} : { shift: request.plan.printer.backShift }),
    title,
    label: { text: title, lettering: letteringFor(prepared) },
    ...(back === 'pattern'
      ? {
          bleed: {
            widthMm: DEFAULT_BLEED_MM,
            paint: (area, corner) => drawLattice({ area, corner, pieceSize: grid.pieceSize }),
          },
        }
      : {}),
  })
  return succeed(backs, problems)
}

/** The em in mm for the names or clues on the backs; a clue that does not fit is an error, a name is cut short. */
function textSizeOnBacks({ job, request, grid }: PreparedItem, { cards }: CardSet): Outcome<number> {
  const { type, measure } = request
  const room = textRoom(grid.pieceSize, undefined, type)
  const clues = cards.flatMap(({ number, copy, words: [word, ...more] }) =>
    copy === 1 && more.length === 0 && word?.clue !== undefined
      ? [{ text: word.clue, on: `the back of card ${number}`, room }]
      : [],
  )
  const fit = fitTexts({
    texts: job.item.back === 'clue' ? clues : [{ text: request.setTitle, on: 'the backs', room }],
    minimumMm: type.textMm,
    maximumMm: type.textMm * (type.large ? 1 : 1.3),
    weight: 400,
    measure,
    place: job.item.place,
  })
  return fit.ok || job.item.back === 'clue' ? fit : succeed(type.textMm)
}

/** A board or a header has no one word whose back could be missing. */
function missingOnBacks(
  { request }: PreparedItem,
  { cards }: CardSet,
  back: 'name' | 'answer' | 'clue' | 'picture' | 'pattern',
) {
  if (back !== 'clue' && back !== 'picture') return []
  const alone = new Set(cards.flatMap(card => (card.words.length === 1 ? card.words : [])))
  const words = request.words.filter(word => alone.has(word) && word[back] === undefined)
  return words.length === 0 ? [] : [{ what: back, words }]
}
