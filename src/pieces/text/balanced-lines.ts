import { breakLines, partsOfLines, type TextMeasure, type TextStyle } from './break-lines.js'

/** Near enough for the eye. */
const STEP_MM = 0.5

/** Lines as `breakLines` gives them, but as even as their number allows, so that no word is left alone on the last. */
export function balancedLines(
  text: string,
  widthMm: number,
  style: TextStyle,
  measure: TextMeasure,
): readonly string[] {
  const lines = breakLines(text, widthMm, style, measure)
  const widest = Math.max(0, ...partsOfLines(text).map(part => measure(part, style.sizeMm, style.weight)))
  if (lines.length < 2 || widest > widthMm) return lines
  let best = lines
  let low = widest
  let high = widthMm
  while (high - low > STEP_MM) {
    const middle = (low + high) / 2
    const tried = breakLines(text, middle, style, measure)
    if (tried.length === lines.length) {
      best = tried
      high = middle
    } else low = middle
  }
  return best
}
