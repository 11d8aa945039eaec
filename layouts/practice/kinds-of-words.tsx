/** Words to write into boxes, one for each part of speech. */
import { mm } from '../../src/pieces/faces/face.js'
import { type Row, rowsHeight } from '../../src/pieces/faces/flow-page.js'
import { OverlaySlot } from '../../src/pieces/faces/slot.js'
import { linesHeight, type TextStyle } from '../../src/pieces/text/break-lines.js'
import { Lines } from '../../src/pieces/text/lines.js'
import { type KindsPractice, kindsPractice } from '../../src/sets/practice/kinds-of-words.js'
import type { PracticeItem } from '../../src/sets/practice/practice.js'
import type { PartOfSpeech } from '../../src/words/word.js'
import { drawColumns } from '../sort-sheets/columns-art.js'
import { BESIDE_LINES_MM, leastWriting, WritingRow } from '../writing/writing-lines.js'
import { childTextMm, type PracticeKind } from './practice-kind.js'
import type { PracticeRequest } from './practice-options.js'
import { wordBank } from './word-bank.js'

export const partsOfSpeech: PracticeKind<KindsPractice> = {
  title: 'Sort the words',
  task: (_, { items }) =>
    items.some(isInTwo)
      ? 'Write each word into its box. Some words fit into two.'
      : 'Write each word into its box.',
  practice: ({ words }) => kindsPractice(words),
  nothing: {
    message: 'the words of the list are of fewer than two parts of speech, so there is nothing to sort',
    advice: 'Add words of another part of speech, or practise something else: plurals, clues, sounds, copy.',
  },
  rows: (request, prompts) => {
    const { items, practice, room } = prompts
    const bank = wordBank(
      request,
      items.map(({ word }) => word),
      prompts,
    )
    const boxes = boxesInRows(request, practice.boxes, room.widthMm)
    const heightMm = (room.heightMm - rowsHeight(bank)) / boxes.length
    return [...bank, ...boxes.map(row => boxRow(request, row, { items, widthMm: room.widthMm, heightMm }))]
  },
  heads: ['word', 'box'],
  about: (_, { items }) => [
    ...(items.some(isInTwo)
      ? [
          'Where a word can be two, the first is what it most often is; either box is right, and both are best.',
        ]
      : []),
  ],
}

function isInTwo({ answer }: PracticeItem): boolean {
  return answer.includes(', ')
}

/** A child writes a word of eight letters on it (our own judgement, no source). */
const LEAST_BOX_MM = 46
const HEAD_WHITE_MM = 4
const HEAD_SIDES_MM = 8

/** As many boxes side by side as have room for their names and for a word. */
function boxesInRows(
  request: PracticeRequest,
  boxes: readonly PartOfSpeech[],
  widthMm: number,
): readonly (readonly PartOfSpeech[])[] {
  const textMm = childTextMm(request)
  const headMm = Math.max(...boxes.map(box => request.measure(box, textMm, 700))) + HEAD_SIDES_MM
  const most = Math.max(1, Math.min(4, Math.floor(widthMm / Math.max(LEAST_BOX_MM, headMm))))
  const rows = Math.ceil(boxes.length / most)
  const each = Math.ceil(boxes.length / rows)
  return Array.from({ length: rows }, (_, row) => boxes.slice(row * each, (row + 1) * each))
}

const MOST_LINE_MM = 13
const BELOW_MM = 3
const LEAST_LINES = 3

function boxRow(
  request: PracticeRequest,
  boxes: readonly PartOfSpeech[],
  { items, widthMm, heightMm }: { items: readonly PracticeItem[]; widthMm: number; heightMm: number },
): Row {
  const style: TextStyle = { sizeMm: childTextMm(request), weight: 700 }
  const headMm = linesHeight(1, style.sizeMm) + HEAD_WHITE_MM
  // One line more than the fullest box has words, so that no box tells how many belong in it.
  const fullest = Math.max(
    ...boxes.map(box => items.filter(({ answer }) => answer.split(', ').includes(box)).length),
  )
  const roomMm = heightMm - headMm - BELOW_MM - HEAD_WHITE_MM / 2
  const leastMm = leastWriting(request.type)
  const lines = Math.max(LEAST_LINES, Math.min(fullest + 1, Math.floor(roomMm / leastMm)))
  const lineMm = Math.max(leastMm, Math.min(MOST_LINE_MM, roomMm / lines))
  const bodyMm = lines * lineMm + HEAD_WHITE_MM / 2
  const name = `boxes ${boxes.join(' ')}`
  return {
    heightMm: headMm + bodyMm + BELOW_MM,
    slots: { [name]: { kind: 'art', draw: room => drawColumns(room, boxes.length, headMm) } },
    tree: (
      <div style={{ display: 'flex', position: 'relative', width: '100%', height: mm(headMm + bodyMm) }}>
        <OverlaySlot name={name} />
        {boxes.map(box => (
          <div style={{ display: 'flex', flexDirection: 'column', width: mm(widthMm / boxes.length) }}>
            <div
              style={{
                display: 'flex',
                height: mm(headMm),
                alignItems: 'center',
                paddingLeft: mm(BESIDE_LINES_MM),
              }}
            >
              <Lines lines={[box]} style={style} />
            </div>
            {Array.from({ length: lines }, () => (
              <WritingRow heightMm={lineMm} />
            ))}
          </div>
        ))}
      </div>
    ),
  }
}
