import { breakLines, linesHeight, type TextStyle } from '../../src/pieces/text/break-lines.js'
import type { CluedEntry, CrosswordOnCard } from '../../src/sets/games/crossword.js'
import type { LayoutRequest } from '../layout.js'

/** Clues in lines, those across and those down. */
export interface ClueLists {
  readonly across: readonly string[]
  readonly down: readonly string[]
  readonly heightMm: number
}

/** Clues in two columns, each under its heading. */
export function clueLists(
  { measure }: Pick<LayoutRequest, 'measure'>,
  { entries }: CrosswordOnCard,
  { style, columnMm }: { readonly style: TextStyle; readonly columnMm: number },
): ClueLists {
  const linesOf = (down: boolean) =>
    cluesOf(entries, down).flatMap(clue => breakLines(clue, columnMm, style, measure))
  const [across, down] = [linesOf(false), linesOf(true)]
  return { across, down, heightMm: linesHeight(Math.max(across.length, down.length) + 1, style.sizeMm) }
}

/** `3  wet, grassy land (5)`: in the order of the numbers, with how many letters. */
export function cluesOf(entries: readonly CluedEntry[], down: boolean): readonly string[] {
  return entries
    .filter(entry => entry.down === down)
    .toSorted((a, b) => a.number - b.number)
    .map(({ number, clue, word }) => `${number}  ${clue} (${word.text.length})`)
}
