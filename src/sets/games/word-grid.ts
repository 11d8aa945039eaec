/** Words dealt over a grid, equal words kept apart: for boards on which every cell is read. */
import type { ColumnsAndRows } from '../../geometry.js'
import type { Word } from '../../words/word.js'
import { cardId } from '../card-id.js'
import type { Card } from '../card-set.js'
import { type Generator, generatorFor, shuffle } from '../random.js'

export interface WordGridWanted extends ColumnsAndRows {
  /** How many words there are, 1 or more. */
  readonly words: number
  /** Cells beside each other in which a word should not stand twice. */
  readonly line: 'column' | 'row' | 'none'
}

/** How long exchanges are tried before a grid is taken as it is, for each of its cells. */
const TRIES = 60

/**
 * The index of the word in each cell, row by row: every word equally often (± 1), equal words in no neighbouring cells and
 * not twice in a line of `line`, as far as the number of words allows. Exchanges of two cells that make it no worse.
 */
export function dealWordGrid(
  { words, columns, rows, line }: WordGridWanted,
  generator: Generator,
): readonly number[] {
  const count = columns * rows
  const cells = Array.from({ length: Math.ceil(count / words) }, () =>
    shuffle(
      Array.from({ length: words }, (_, word) => word),
      generator,
    ),
  )
    .flat()
    .slice(0, count)
  const near = cells.map((_, cell) => nearCells(cell, { columns, rows, line }))
  const clashes = (cell: number): number => near[cell]!.filter(other => cells[other] === cells[cell]).length
  for (let tries = count * TRIES; tries > 0; tries--) {
    const clashing = cells.flatMap((_, cell) => (clashes(cell) > 0 ? [cell] : []))
    if (clashing.length === 0) return cells
    const cell = clashing[generator.below(clashing.length)]!
    const other = generator.below(count)
    const before = clashes(cell) + clashes(other)
    exchange(cells, cell, other)
    if (clashes(cell) + clashes(other) > before) exchange(cells, cell, other)
  }
  return cells
}

/** Cells in which the word of this one should not stand again. */
function nearCells(cell: number, { columns, rows, line }: Omit<WordGridWanted, 'words'>): readonly number[] {
  const [column, row] = [cell % columns, Math.floor(cell / columns)]
  return Array.from({ length: columns * rows }, (_, other) => other).filter(other => {
    const across = Math.abs((other % columns) - column)
    const down = Math.abs(Math.floor(other / columns) - row)
    const isBeside = across <= 1 && down <= 1
    const isInLine = (line === 'column' && across === 0) || (line === 'row' && down === 0)
    return other !== cell && (isBeside || isInLine)
  })
}

function exchange(cells: number[], a: number, b: number): void {
  const kept = cells[a]!
  cells[a] = cells[b]!
  cells[b] = kept
}

export interface GridBoardsWanted extends ColumnsAndRows {
  readonly words: readonly Word[]
  readonly line: WordGridWanted['line']
  readonly boards: number
  readonly copies: number
  readonly seed: number
  readonly label: string
}

/** Boards `board-01`, …, each dealt anew; the whole set once for each copy. */
export function wordGridBoards(wanted: GridBoardsWanted): readonly Card[] {
  const { words, columns, rows, line, boards, copies, seed, label } = wanted
  const generator = generatorFor(seed, `${label}: grid`)
  const dealt = Array.from({ length: boards }, () => {
    const cells = dealWordGrid({ words: words.length, columns, rows, line }, generator).map(
      index => words[index]!,
    )
    return Array.from({ length: rows }, (_, row) => cells.slice(row * columns, (row + 1) * columns))
  })
  return Array.from({ length: copies }, (_, copy) =>
    dealt.map(
      (cells, index): Card => ({
        id: cardId({ prefix: 'board', number: index + 1, copy: copy + 1, of: boards }),
        kind: 'board',
        number: index + 1,
        copy: copy + 1,
        words: cells.flat(),
        cells,
      }),
    ),
  ).flat()
}
