/** Words side by side in rows, as a child reads them. */
import type { Size } from '../../src/geometry.js'
import { mm } from '../../src/pieces/faces/face.js'
import type { Row } from '../../src/pieces/faces/flow-page.js'
import { Slot } from '../../src/pieces/faces/slot.js'
import { whiteRow } from '../../src/pieces/parts/table-rows.js'
import type { Word } from '../../src/words/word.js'
import type { LayoutRequest } from '../layout.js'
import { childWordMm, type PromptsOnPage } from './practice-kind.js'
import { promptSlot, roomForWords } from './prompt-row.js'

const MOST_COLUMNS = 6
/** Between two words. */
const GAP_MM = 6
/** Of a word's em. */
const ROW_HEIGHT = 1.75
const BELOW_MM = 3

/** The page that the words stand on, and the number of its first prompt. */
interface BankPlace extends Pick<PromptsOnPage, 'room' | 'leastWord'> {
  readonly from: number
}

/** The words to choose from, over the prompts of a page: by the alphabet, so that their order tells nothing. */
export function wordBank(
  request: LayoutRequest,
  words: readonly Word[],
  { room: { widthMm }, from, leastWord }: BankPlace,
): readonly Row[] {
  const sorted = words.toSorted((a, b) => (a.text.toLowerCase() < b.text.toLowerCase() ? -1 : 1))
  return [
    ...wordRows(request, sorted, { widthMm, name: `bank ${from}`, least: leastWord }),
    whiteRow(BELOW_MM),
  ]
}

interface WordsInRows {
  readonly widthMm: number
  /** Opens the names of their slots. */
  readonly name: string
  /** What the words need that have one size with these. */
  readonly least?: Size
}

/** As many words side by side as have room, in their order. */
export function wordRows(
  request: LayoutRequest,
  words: readonly Word[],
  { widthMm, name: nameOfAll, least = roomForWords(request, words) }: WordsInRows,
): readonly Row[] {
  const { measure } = request
  const wordMm = childWordMm(request)
  const widest = Math.max(least.widthMm, ...words.map(({ text }) => measure(text, wordMm)))
  const columns = Math.max(1, Math.min(MOST_COLUMNS, words.length, Math.floor(widthMm / (widest + GAP_MM))))
  const heightMm = Math.max(wordMm * ROW_HEIGHT, least.heightMm)
  return Array.from({ length: Math.ceil(words.length / columns) }, (_, row): Row => {
    const placed = words.slice(row * columns, (row + 1) * columns)
    const name = (index: number) => `${nameOfAll} ${row} ${index}`
    return {
      heightMm,
      slots: Object.fromEntries(
        placed.map((word, index) => [name(index), { ...promptSlot(request, word), maximumMm: wordMm }]),
      ),
      tree: (
        <div style={{ display: 'flex', width: '100%', height: '100%' }}>
          {placed.map((_, index) => (
            <Slot name={name(index)} style={{ width: mm(widthMm / columns), height: '100%' }} />
          ))}
        </div>
      ),
    }
  })
}
