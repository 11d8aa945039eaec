/** Width in mm of `text` set in one line at an em of `sizeMm`. */
export type TextMeasure = (text: string, sizeMm: number, weight?: 400 | 700) => number

export interface TextStyle {
  /** The em. */
  readonly sizeMm: number
  readonly weight?: 400 | 700
  readonly color?: string
  readonly align?: 'left' | 'centre' | 'right'
}

/** Room between baselines, as a share of the em: Andika's descenders pass a line of 1.2. */
export const LINE_HEIGHT = 1.45

/** Height in mm of `count` lines. */
export function linesHeight(count: number, sizeMm: number): number {
  return count * sizeMm * LINE_HEIGHT
}

/**
 * A line may end at a space, but no line begins with the dot between the entries of a list, with a number in brackets or
 * with the number that ends the text.
 */
const BREAKS = /\s+(?![·\s]|\(\d+\)|\d+\.?$)/

/** What stays on one line: words, and what is not parted from the word before it. */
export function partsOfLines(text: string): readonly string[] {
  return text.split(BREAKS).filter(part => part !== '')
}

/**
 * Breaks running text into lines no wider than `widthMm`. A word wider than that stands alone and is broken at the
 * last letter that fits, so nothing ever leaves its box.
 */
export function breakLines(text: string, widthMm: number, style: TextStyle, measure: TextMeasure): string[] {
  const fits = (line: string) => measure(line, style.sizeMm, style.weight) <= widthMm
  const lines: string[] = []
  let line = ''
  for (const word of partsOfLines(text)) {
    const longer = line === '' ? word : `${line} ${word}`
    if (fits(longer)) {
      line = longer
      continue
    }
    if (line !== '') lines.push(line)
    line = word
    while (!fits(line) && line.length > 1) {
      let end = line.length - 1
      while (end > 1 && !fits(line.slice(0, end))) end--
      end = afterLastJoint(line.slice(0, end)) || end
      lines.push(line.slice(0, end))
      line = line.slice(end)
    }
  }
  if (line !== '') lines.push(line)
  return lines
}

/** Where a long word is best broken: after its last hyphen or the dot between its sounds; 0 where it has none. */
function afterLastJoint(text: string): number {
  return Math.max(text.lastIndexOf('-'), text.lastIndexOf('·')) + 1
}

/** `4: b·o·x,` and `x counts two`: what may stand in lines of its own. */
export function atCommas(text: string): readonly string[] {
  return text.split(/(?<=,)\s+/)
}

/** In one line where it fits, and else broken at its commas first. */
export function breakAtCommas(
  text: string,
  widthMm: number,
  style: TextStyle,
  measure: TextMeasure,
): readonly string[] {
  const fits = measure(text, style.sizeMm, style.weight) <= widthMm
  return (fits ? [text] : atCommas(text)).flatMap(part => breakLines(part, widthMm, style, measure))
}

/** As many of a list's words as stand whole in so many lines, the first of them always. */
export function wholeWordsWithin(
  words: readonly string[],
  room: { readonly widthMm: number; readonly maximum: number },
  style: TextStyle,
  measure: TextMeasure,
): readonly string[] {
  for (let count = words.length; count > 1; count--) {
    const lines = breakLines(words.slice(0, count).join(', '), room.widthMm, style, measure)
    if (lines.length <= room.maximum) return lines
  }
  return breakLines(words[0] ?? '', room.widthMm, style, measure)
}

/** Breaks text and keeps at most `maximum` lines; the last one then ends in an ellipsis. */
export function breakLinesWithin(
  text: string,
  room: { readonly widthMm: number; readonly maximum: number },
  style: TextStyle,
  measure: TextMeasure,
): string[] {
  const lines = breakLines(text, room.widthMm, style, measure)
  if (lines.length <= room.maximum) return lines
  const kept = lines.slice(0, room.maximum)
  let last = kept.pop() ?? ''
  while (last !== '' && measure(`${last}…`, style.sizeMm, style.weight) > room.widthMm)
    last = last.slice(0, -1)
  return [...kept, `${last.trimEnd()}…`]
}
