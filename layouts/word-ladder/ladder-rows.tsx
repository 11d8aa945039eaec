import type { Size } from '../../src/geometry.js'
import { mm, type SlotContent } from '../../src/pieces/faces/face.js'
import { Slot } from '../../src/pieces/faces/slot.js'
import { drawCellLines } from '../../src/pieces/parts/cell-lines.js'
import { drawWritingLine } from '../../src/pieces/parts/rules.js'
import type { Art } from '../../src/pieces/piece.js'
import { breakLines } from '../../src/pieces/text/break-lines.js'
import { changeInWords, type LadderRung, placeInWords } from '../../src/sets/games/ladder-steps.js'
import type { LayoutRequest } from '../layout.js'
import { wordSlot } from '../one-card-a-word.js'
import { drawRungBoxes } from './rung-boxes.js'

/** What a ladder's own options decide of its face. */
export interface LadderLook {
  readonly level: 'easier' | 'harder'
  readonly readAloud: boolean
}

/** How wide the cells with the words are, the boxes beside them (0 for none) and the clues. */
export interface LadderColumns {
  readonly look: LadderLook
  readonly wordMm: number
  readonly boxesMm: number
  readonly boxSizeMm: number
  readonly textMm: number
  readonly textSizeMm: number
}

/** White between columns. */
export const GAP_MM = 4
/** White between the ladder and the set mark below it. */
export const ABOVE_MARK_MM = 1.5
const CELL_LINE_MM = 0.8
/** Said beside the first word. */
const TASK = 'Change one sound at each step.'

/** What tells of a word: its clue, else what changes. */
export function toldOf({ clue, step }: LadderRung, level: LadderLook['level']): string {
  if (step === undefined) return TASK
  if (clue !== undefined) return clue
  return level === 'easier' ? changeInWords(step) : `Change ${placeInWords(step)}.`
}

/** The harder ladder shows where a sound changes only where no clue tells the word. */
export function showsBoxes({ clue, step }: LadderRung, { level }: LadderLook): boolean {
  return step !== undefined && (level === 'easier' || clue === undefined)
}

function isPrinted(ladder: readonly LadderRung[], index: number): boolean {
  return index === 0 || index === ladder.length - 1
}

/** A row for each word: its cell, printed or to write in; what changes; its clue. */
export function LadderRows({
  ladder,
  columns: { look, wordMm, boxesMm, textMm },
}: {
  readonly ladder: readonly LadderRung[]
  readonly columns: LadderColumns
}) {
  const beside = (widthMm: number) =>
    ({ width: mm(widthMm), height: '100%', marginLeft: mm(GAP_MM), flexShrink: 0 }) as const
  return (
    <div style={{ display: 'flex', flexDirection: 'column', flexGrow: 1, marginBottom: mm(ABOVE_MARK_MM) }}>
      {ladder.map((_, index) => (
        <div style={{ display: 'flex', flexGrow: 1, flexBasis: 0, width: '100%' }}>
          <Cell index={index} isPrinted={isPrinted(ladder, index)} widthMm={wordMm} />
          {boxesMm === 0 ? null : <Slot name={`boxes ${index}`} style={beside(boxesMm)} />}
          {look.readAloud ? null : <Slot name={`told ${index}`} style={beside(textMm)} />}
        </div>
      ))}
    </div>
  )
}

function Cell({
  index,
  isPrinted,
  widthMm,
}: {
  readonly index: number
  readonly isPrinted: boolean
  readonly widthMm: number
}) {
  return (
    <div style={{ display: 'flex', position: 'relative', width: mm(widthMm), height: '100%', flexShrink: 0 }}>
      <Slot
        name={`cell ${index}`}
        style={{ position: 'absolute', left: 0, top: 0, width: '100%', height: '100%' }}
      />
      {isPrinted ? (
        <Slot name={`word ${index}`} style={{ width: '100%', height: '100%' }} />
      ) : (
        <Slot
          name={`line ${index}`}
          style={{ position: 'absolute', left: '7%', top: '74%', width: '86%', height: mm(1) }}
        />
      )}
    </div>
  )
}

/** What fills the rows. */
export function ladderSlots(
  request: LayoutRequest,
  ladder: readonly LadderRung[],
  columns: LadderColumns,
): Readonly<Record<string, SlotContent>> {
  const { wordMm, boxesMm, look } = columns
  const slots: Record<string, SlotContent> = {}
  for (const [index, rung] of ladder.entries()) {
    slots[`cell ${index}`] = { kind: 'art', draw: drawCell }
    if (isPrinted(ladder, index))
      slots[`word ${index}`] = wordSlot(request, rung.word, {
        align: 'centre',
        paddingMm: wordMm / 14,
        paddingAboveMm: 2,
      })
    else slots[`line ${index}`] = { kind: 'art', draw: drawWritingLine }
    if (boxesMm > 0) slots[`boxes ${index}`] = boxesSlot(request, rung, columns)
    if (!look.readAloud) slots[`told ${index}`] = toldSlot(request, rung, columns)
  }
  return slots
}

/** Its lines lie on those of the cells above and below. */
function drawCell({ widthMm, heightMm }: Size): Art {
  const room = { widthMm, heightMm: heightMm + CELL_LINE_MM / 2 }
  return drawCellLines({ room, columns: 1, rows: 1, lineMm: CELL_LINE_MM })
}

function boxesSlot(
  { typeface }: LayoutRequest,
  rung: LadderRung,
  { look, boxSizeMm }: LadderColumns,
): SlotContent {
  const { step } = rung
  const letters = look.level === 'easier'
  return {
    kind: 'art',
    draw: room =>
      step !== undefined && showsBoxes(rung, look)
        ? drawRungBoxes({ step, letters, sizeMm: boxSizeMm, typeface, room })
        : { ...room, shapes: [], text: [] },
  }
}

function toldSlot(
  { measure }: LayoutRequest,
  rung: LadderRung,
  { look, textMm, textSizeMm }: LadderColumns,
): SlotContent {
  const style = { sizeMm: textSizeMm, align: 'left' } as const
  return { kind: 'text', lines: breakLines(toldOf(rung, look.level), textMm, style, measure), style }
}
