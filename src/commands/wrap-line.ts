/** Breaks a line at spaces for a terminal of `width` columns; what follows is indented two more than the line began. */
export function wrapLine(line: string, width: number): readonly string[] {
  const indent = ' '.repeat(Math.max(0, line.search(/\S/)) + 2)
  const lines: string[] = []
  let rest = line
  while (rest.length > width) {
    const at = rest.lastIndexOf(' ', width)
    // A single word wider than the terminal stands as it is.
    if (at <= indent.length) break
    lines.push(rest.slice(0, at))
    rest = `${indent}${rest.slice(at + 1)}`
  }
  return [...lines, rest]
}
