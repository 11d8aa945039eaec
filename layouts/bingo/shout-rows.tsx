import type { Size } from '../../src/geometry.js'
import { mm } from '../../src/pieces/faces/face.js'
import type { Row } from '../../src/pieces/faces/flow-page.js'
import { Slot } from '../../src/pieces/faces/slot.js'
import { drawCellLines } from '../../src/pieces/parts/cell-lines.js'
import type { Art } from '../../src/pieces/piece.js'
import { breakLines, linesHeight } from '../../src/pieces/text/break-lines.js'
import { Lines } from '../../src/pieces/text/lines.js'
import { drawTextBlock } from '../../src/pieces/text/text-block.js'
import type { Card } from '../../src/sets/card-set.js'
import { firstCopy } from '../../src/sets/set-contents.js'
import { numberOf } from '../board-number.js'
import type { LayoutRequest } from '../layout.js'
import type { CallerWanted } from './caller-wanted.js'

/** Between two boards in small, in mm. */
const GAP_MM = 5

/** Every board in small with the number of the call in each cell, so that a shout is checked at a glance. */
export function shoutRows({ request, set, round, widthMm }: CallerWanted): readonly Row[] {
  const boards = firstCopy(set)
  const textMm = request.type.adultTextMm
  const columns = boards[0]!.cells![0]!.length
  const rows = boards[0]!.cells!.length
  const cell = { widthMm: textMm * 1.9, heightMm: textMm * 1.5 }
  const boardSize = { widthMm: columns * cell.widthMm, heightMm: rows * cell.heightMm }
  // The name over a board of two columns is wider than the board.
  const namesMm = boards.map(board => request.measure(nameOf(board), textMm, 700))
  const blockMm = Math.max(boardSize.widthMm, ...namesMm)
  const perRow = Math.max(1, Math.floor((widthMm + GAP_MM) / (blockMm + GAP_MM)))
  const callOf = new Map(round.callOrder.map((word, index) => [word, index + 1]))
  const groups = Array.from({ length: Math.ceil(boards.length / perRow) }, (_, index) =>
    boards.slice(index * perRow, (index + 1) * perRow),
  )
  return [
    headingRow(request, widthMm),
    ...groups.map(group => boardsRow(group, { request, boardSize, callOf, perRow, widthMm })),
  ]
}

function nameOf(board: Card): string {
  return `board ${numberOf(board.id)}`
}

function headingRow({ type, measure }: LayoutRequest, widthMm: number): Row {
  const textMm = type.adultTextMm
  const style = { sizeMm: textMm }
  const says =
    'To check a shout, find the board: each cell holds the number of its call. A cell is covered when its number is not above the call that you have reached.'
  const lines = breakLines(says, widthMm, style, measure)
  return {
    heightMm: linesHeight(lines.length, textMm) + textMm * 2,
    keepsWithNext: true,
    tree: <Lines lines={lines} style={style} box={{ marginTop: mm(textMm) }} />,
  }
}

interface SmallBoards {
  readonly request: LayoutRequest
  readonly boardSize: Size
  readonly callOf: ReadonlyMap<string, number>
  readonly perRow: number
  readonly widthMm: number
}

function boardsRow(
  boards: readonly Card[],
  { request, boardSize, callOf, perRow, widthMm }: SmallBoards,
): Row {
  const { type, typeface } = request
  const textMm = type.adultTextMm
  const titleMm = linesHeight(1, textMm)
  const slotName = (board: Card) => `calls of ${board.id}`
  const shareMm = (widthMm + GAP_MM) / perRow
  return {
    heightMm: titleMm + boardSize.heightMm + GAP_MM,
    slots: Object.fromEntries(
      boards.map(board => [
        slotName(board),
        { kind: 'art', draw: () => drawCalls(board, { boardSize, callOf, textMm, typeface }) },
      ]),
    ),
    tree: (
      <div style={{ display: 'flex', width: '100%', height: '100%' }}>
        {boards.map(board => (
          <div style={{ display: 'flex', flexDirection: 'column', width: mm(shareMm), flexShrink: 0 }}>
            <Lines lines={[nameOf(board)]} style={{ sizeMm: textMm, weight: 700 }} />
            <Slot
              name={slotName(board)}
              style={{ width: mm(boardSize.widthMm), height: mm(boardSize.heightMm) }}
            />
          </div>
        ))}
      </div>
    ),
  }
}

function drawCalls(
  board: Card,
  {
    boardSize,
    callOf,
    textMm,
    typeface,
  }: Pick<SmallBoards, 'boardSize' | 'callOf'> & { readonly textMm: number } & Pick<
      LayoutRequest,
      'typeface'
    >,
): Art {
  const cells = board.cells!
  const [columns, rows] = [cells[0]!.length, cells.length]
  const room = { widthMm: boardSize.widthMm / columns, heightMm: boardSize.heightMm / rows }
  const lines = drawCellLines({ room: boardSize, columns, rows, lineMm: 0.25 })
  const numbers = cells.flatMap((row, rowIndex) =>
    row.map((word, column) => {
      const text = word === null ? '–' : String(callOf.get(word.text) ?? '')
      const style = { sizeMm: textMm * 0.9, align: 'centre' } as const
      const at = { xMm: column * room.widthMm, yMm: rowIndex * room.heightMm }
      return drawTextBlock({ typeface, lines: [text], style, room }, at)
    }),
  )
  return {
    ...boardSize,
    shapes: [...lines.shapes, ...numbers.flatMap(art => art.shapes)],
    text: numbers.flatMap(art => art.text),
  }
}
