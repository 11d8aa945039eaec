/** A word divided between its letters by pointing: where pieces part, and which of them say nothing. */

export interface DividedPiece {
  readonly letters: string
  readonly silent: boolean
}

/** As a plan writes it: `c a k (e)`. */
export function writtenPieces(pieces: readonly DividedPiece[]): string {
  return pieces.map(({ letters, silent }) => (silent ? `(${letters})` : letters)).join(' ')
}

/** Parts a piece, or joins two: `at` counts letters from the word's beginning. */
export function partedAt(pieces: readonly DividedPiece[], at: number): readonly DividedPiece[] {
  let start = 0
  for (const [index, piece] of pieces.entries()) {
    const end = start + piece.letters.length
    if (at > start && at < end) {
      const halves = [piece.letters.slice(0, at - start), piece.letters.slice(at - start)]
      return [
        ...pieces.slice(0, index),
        ...halves.map(letters => ({ ...piece, letters })),
        ...pieces.slice(index + 1),
      ]
    }
    const next = pieces[index + 1]
    if (at === end && next !== undefined) {
      const joined = { letters: piece.letters + next.letters, silent: piece.silent && next.silent }
      return [...pieces.slice(0, index), joined, ...pieces.slice(index + 2)]
    }
    start = end
  }
  return pieces
}

/** Whether a piece begins there. */
export function isParted(pieces: readonly DividedPiece[], at: number): boolean {
  let start = 0
  for (const { letters } of pieces) {
    if (start === at) return at > 0
    start += letters.length
  }
  return false
}
