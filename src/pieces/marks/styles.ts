import { dashedLine, dottedLine } from './broken-lines.js'
import { arcLine, wavyLine } from './curved-lines.js'
import type { LineStyle } from './line-style.js'
import type { OutlineStyle } from './outline-style.js'
import {
  boxOutline,
  heavyLetters,
  hexagonOutline,
  hollowLetters,
  ovalOutline,
  roundedOutline,
} from './outlines.js'
import { slashLine } from './slash.js'
import { bracketLine, doubleLine, singleLine, thickLine } from './solid-lines.js'
import { soundMarkStyles } from './sound-marks.js'

/** In the order of `oaktag list lines`. */
export const lineStyles: readonly LineStyle[] = [
  singleLine,
  doubleLine,
  dashedLine,
  dottedLine,
  wavyLine,
  thickLine,
  bracketLine,
  arcLine,
  slashLine,
]

/** In the order of `oaktag list outlines`. */
export const outlineStyles: readonly OutlineStyle[] = [
  boxOutline,
  roundedOutline,
  ovalOutline,
  hexagonOutline,
  hollowLetters,
  heavyLetters,
]

export const lineNames: readonly string[] = lineStyles.map(style => style.name)
export const outlineNames: readonly string[] = outlineStyles.map(style => style.name)

/** Names are checked when the plan is read; one that slips through is a mistake in the program. */
export function lineStyle(name: string): LineStyle {
  return found([...lineStyles, ...soundMarkStyles], name)
}

export function outlineStyle(name: string): OutlineStyle {
  return found(outlineStyles, name)
}

function found<T extends { readonly name: string }>(styles: readonly T[], name: string): T {
  const style = styles.find(candidate => candidate.name === name)
  if (style === undefined) throw new Error(`there is no mark style called ${name}`)
  return style
}
