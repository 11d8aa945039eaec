/** What can be read in the rows of a crossword, `.` where no letter stands. */

/** Every run of two letters or more that can be read across or down, with where it begins. */
export function runsIn(rows: readonly string[]): readonly string[] {
  const columns = [...rows[0]!].map((_, column) => rows.map(row => row[column]).join(''))
  const runs = (line: string, name: (start: number) => string) =>
    [...line.matchAll(/[^.]{2,}/g)].map(match => `${name(match.index)} ${match[0]}`)
  return [
    ...rows.flatMap((row, index) => runs(row, start => `${index},${start} across`)),
    ...columns.flatMap((column, index) => runs(column, start => `${start},${index} down`)),
  ]
}

export function isOnePiece(rows: readonly string[]): boolean {
  const places = rows.flatMap((row, down) =>
    [...row].flatMap((letter, across) => (letter === '.' ? [] : [`${down} ${across}`])),
  )
  const reached = new Set([places[0]!])
  for (const place of reached) {
    const [down, across] = place.split(' ').map(Number) as [number, number]
    for (const [stepDown, stepAcross] of [
      [0, 1],
      [1, 0],
      [0, -1],
      [-1, 0],
    ] as const) {
      const next = `${down + stepDown} ${across + stepAcross}`
      if (places.includes(next)) reached.add(next)
    }
  }
  return reached.size === places.length
}
