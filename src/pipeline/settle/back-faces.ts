import { succeed } from '../../outcomes.js'
import type { CardFace } from '../../pieces/faces/face.js'
import { cardBackFace, linesOfSounds } from '../../pieces/parts/card-back.js'
import { textRoom } from '../../pieces/parts/text-card.js'
import { fitTexts } from '../../pieces/text/fit-texts.js'
import { type Outcome, type Problem, warningAt } from '../../problems.js'
import type { CardSet } from '../../sets/card-set.js'
import { drawLattice } from '../../sheets/furniture/lattice.js'
import type { PreparedItem } from '../deal/prepare-item.js'

/** What stands on the backs of a set's pieces; nothing where the teacher asked for none. */
export function backFaces(prepared: PreparedItem, set: CardSet): Outcome<readonly CardFace[]> {
  const { job, request, grid } = prepared
  const { back } = job.item
  if (back === 'none') return succeed([])
  const textSize = textSizeOnBacks(prepared, set)
  if (!textSize.ok) return textSize
  const size = grid.pieceSize
  const alone = back === 'answer' ? set.cards.flatMap(({ words }) => (words.length === 1 ? words : [])) : []
  const soundLines = Math.max(
    0,
    ...[...new Set(alone)].map(word => linesOfSounds({ ...request, size }, word).length),
  )
  const faces = set.cards.map(card =>
    cardBackFace({
      ...request,
      soundLines,
      shortSetTitle: request.setTitle,
      textMm: textSize.value,
      back,
      card,
      size,
      drawPattern: whole =>
        drawLattice({ area: { xMm: 0, yMm: 0, ...whole }, corner: { xMm: 0, yMm: 0 }, pieceSize: whole }),
    }),
  )
  return succeed(faces, missingOnBacks(prepared, set))
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
function missingOnBacks({ request, job }: PreparedItem, { cards }: CardSet): readonly Problem[] {
  const { back, place } = job.item
  if (back !== 'clue' && back !== 'picture') return []
  const alone = new Set(cards.flatMap(card => (card.words.length === 1 ? card.words : [])))
  const words = request.words.filter(word => alone.has(word) && word[back] === undefined)
  if (words.length === 0) return []
  return [
    warningAt(
      place,
      `no ${back} for ${words.map(word => `"${word.text}"`).join(', ')}: the back stays empty`,
      `Give each word its ${back} in the plan, or choose another back.`,
    ),
  ]
}
