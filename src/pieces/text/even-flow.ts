/**
 * The pages that `fill` makes of a room as low as it can be without taking a page more than the full one does: so the last
 * page is no remnant.
 */
export function fillEvenly<P>(roomMm: number, fill: (roomMm: number) => readonly P[]): readonly P[] {
  const full = fill(roomMm)
  if (full.length < 2) return full
  let [tooLow, enough] = [0, roomMm]
  while (enough - tooLow > 0.5) {
    const middle = (tooLow + enough) / 2
    if (fill(middle).length > full.length) tooLow = middle
    else enough = middle
  }
  return fill(enough)
}
