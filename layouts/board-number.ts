/** As the foot of the board has it: 7 of `board-07`. */
export function numberOf(board: string): string {
  return String(Number(board.replace(/^board-(\d+).*$/, '$1')))
}
