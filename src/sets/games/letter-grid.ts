/** Letters in rows and columns, some places still empty: what word searches are built on. */

/** The eight ways in which a word can run, as steps down and across. */
export interface Way {
  readonly down: -1 | 0 | 1
  readonly across: -1 | 0 | 1
}

export const everyWay: readonly Way[] = ([-1, 0, 1] as const).flatMap(down =>
  ([-1, 0, 1] as const).flatMap(across => (down === 0 && across === 0 ? [] : [{ down, across }])),
)

/** Rows and columns are counted from 0. */
export interface Run extends Way {
  readonly row: number
  readonly column: number
}

/** A grid in the making: its letters change, an empty place is `''`. */
export interface LetterGrid {
  readonly columns: number
  readonly rows: number
  readonly letters: string[]
}

export function emptyGrid(columns: number, rows: number): LetterGrid {
  return { columns, rows, letters: Array.from({ length: columns * rows }, () => '') }
}

/** The letter `steps` along the run; undefined beyond the edge. */
export function letterAlong(
  { columns, rows, letters }: LetterGrid,
  run: Run,
  steps: number,
): string | undefined {
  const row = run.row + run.down * steps
  const column = run.column + run.across * steps
  return row < 0 || row >= rows || column < 0 || column >= columns
    ? undefined
    : letters[row * columns + column]
}

export function setAlong({ columns, letters }: LetterGrid, run: Run, steps: number, letter: string): void {
  letters[(run.row + run.down * steps) * columns + run.column + run.across * steps] = letter
}

/** Whether the word can stand there: inside the grid, on empty places or on letters that it shares. */
export function canStand(grid: LetterGrid, word: string, run: Run): boolean {
  for (let step = 0; step < word.length; step++) {
    const letter = letterAlong(grid, run, step)
    if (letter === undefined || (letter !== '' && letter !== word[step])) return false
  }
  return true
}

/** Every place and way in which the word stands in the grid; a word that reads the same backwards counts once. */
export function standingsOf(grid: LetterGrid, word: string): readonly Run[] {
  const found: Run[] = []
  const seen = new Set<string>()
  for (let row = 0; row < grid.rows; row++)
    for (let column = 0; column < grid.columns; column++)
      for (const way of everyWay) {
        const run = { row, column, ...way }
        if (![...word].every((letter, step) => letterAlong(grid, run, step) === letter)) continue
        const last = [row + way.down * (word.length - 1), column + way.across * (word.length - 1)]
        const places = [[row, column].join(), last.join()].sort().join(' ')
        if (!seen.has(places)) found.push(run)
        seen.add(places)
      }
  return found
}

export function gridRows({ columns, rows, letters }: LetterGrid): readonly string[] {
  return Array.from({ length: rows }, (_, row) => letters.slice(row * columns, (row + 1) * columns).join(''))
}
