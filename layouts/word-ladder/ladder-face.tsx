import { pointsToMm, type Size } from '../../src/geometry.js'
import { fail, succeed } from '../../src/outcomes.js'
import type { CardFace } from '../../src/pieces/faces/face.js'
import { cardFace } from '../../src/pieces/parts/card-face.js'
import { contentRoom } from '../../src/pieces/parts/card-frame.js'
import { fitTexts } from '../../src/pieces/text/fit-texts.js'
import { errorAt, type Outcome, type Problem } from '../../src/problems.js'
import type { CardSet } from '../../src/sets/card-set.js'
import type { LayoutRequest } from '../layout.js'
import {
  ABOVE_MARK_MM,
  GAP_MM,
  type LadderColumns,
  type LadderLook,
  LadderRows,
  ladderSlots,
  showsBoxes,
  toldOf,
} from './ladder-rows.js'
import { rungBoxesWidth } from './rung-boxes.js'

/** Text that a beginning reader reads alone, where there is room: our own judgement, no source. */
const CHILD_PT = 16
/** Of the width, for the words; more where nothing is to be read beside them. */
const WORD_SHARE = { told: 0.34, alone: 0.56 } as const

export function ladderFaces(
  request: LayoutRequest,
  set: CardSet,
  size: Size,
  look: LadderLook,
): Outcome<readonly CardFace[]> {
  const columns = ladderColumns(request, set, size, look)
  if (!columns.ok) return columns
  return succeed(
    set.cards.map(card => {
      const ladder = card.ladder!
      return cardFace({
        ...request,
        card,
        set,
        size,
        border: request.item.border,
        text: [ladder[0]!, ladder.at(-1)!].map(({ word }) => word.text),
        content: <LadderRows ladder={ladder} columns={columns.value} />,
        slots: ladderSlots(request, ladder, columns.value),
      })
    }),
  )
}

/** The same for all ladders of the set. */
function ladderColumns(
  request: LayoutRequest,
  set: CardSet,
  size: Size,
  look: LadderLook,
): Outcome<LadderColumns> {
  const { type, item } = request
  const room = contentRoom(size, item.border, type)
  const wordMm = room.widthMm * (look.readAloud ? WORD_SHARE.alone : WORD_SHARE.told)
  const boxSizeMm = Math.max(type.textMm, pointsToMm(CHILD_PT))
  const needMm = boxesWidth(request, set, look, boxSizeMm)
  const leftMm = room.widthMm - wordMm - GAP_MM
  if (needMm > leftMm) return fail(noRoom(request))
  const columns = { look, wordMm, boxSizeMm, boxesMm: needMm, textMm: 0, textSizeMm: type.textMm }
  if (look.readAloud) return succeed({ ...columns, boxesMm: leftMm })
  const textMm = leftMm - (needMm > 0 ? needMm + GAP_MM : 0)
  if (textMm < type.textMm) return fail(noRoom(request))
  const rows = Math.max(...set.cards.map(({ ladder }) => ladder!.length))
  const textRoom = { widthMm: textMm, heightMm: (room.heightMm - ABOVE_MARK_MM) / rows - 1 }
  const texts = set.cards.flatMap(({ ladder, number }) =>
    ladder!.map(rung => ({ text: toldOf(rung, look.level), on: `ladder ${number}`, room: textRoom })),
  )
  const fit = fitTexts({
    texts,
    minimumMm: type.textMm,
    maximumMm: type.large ? type.textMm : pointsToMm(CHILD_PT),
    weight: 400,
    measure: request.measure,
    place: item.place,
  })
  return fit.ok
    ? succeed({ ...columns, textMm, textSizeMm: fit.value })
    : fail(noRoomForClues(request, fit.problems))
}

/** 0 where no ladder shows boxes. */
function boxesWidth({ typeface }: LayoutRequest, set: CardSet, look: LadderLook, sizeMm: number): number {
  const shown = set.cards.flatMap(({ ladder }) => ladder!.filter(rung => showsBoxes(rung, look)))
  const letters = look.level === 'easier'
  const widths = shown.flatMap(({ step }) =>
    step === undefined ? [] : [rungBoxesWidth({ step, letters, sizeMm, typeface })],
  )
  return Math.max(0, ...widths)
}

function noRoom({ item }: LayoutRequest): Problem {
  return errorAt(
    item.place,
    'the ladder has no room for its words and boxes at this size',
    'Choose larger paper, turn it, or a smaller size.',
  )
}

/** One for all of them: whoever mends one clue would meet the next. */
function noRoomForClues({ item }: LayoutRequest, problems: readonly Problem[]): Problem {
  const more = problems.length > 1 ? `, and ${problems.length - 1} more like it` : ''
  return errorAt(
    item.place,
    `${problems[0]!.message}${more}`,
    'Write clues are: read aloud, which puts the clues on a page of their own; or print fewer on a sheet.',
  )
}
