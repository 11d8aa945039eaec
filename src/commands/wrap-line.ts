/** Breaks a line at spaces for a terminal of `width` columns; what follows is indented two more than the line began. */
export function wrapLine(line: string, width: number): readonly string[] {
  if (line.length <= width) return [line]
  const indent = ' '.repeat(line.search(/\S/) + 2)
  const at = line.lastIndexOf(' ', width)
  if (at <= indent.length) return [line]
  return [line.slice(0, at), ...wrapLine(`${indent}${line.slice(at + 1)}`, width)]
}
