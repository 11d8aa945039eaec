import type { CSSProperties } from 'satori/jsx'
import { mm } from '../faces/face.js'
import { LINE_HEIGHT, type TextStyle } from './break-lines.js'

/** What `Lines` has in a face's tree as `data-lines`. */
export interface LinesOfText {
  readonly lines: readonly string[]
  readonly style: TextStyle
}

/**
 * Lines of text in a box of their height, which is as wide as the longest of them where its place does not say. satori
 * lays out the box alone: they are drawn into it from its top, so that it never breaks, clips or even reads them.
 */
export function Lines({ lines, style, box = {} }: LinesOfText & { readonly box?: CSSProperties }) {
  const height = lines.length * mm(style.sizeMm * LINE_HEIGHT)
  return <div data-lines={{ lines, style }} style={{ display: 'flex', flexShrink: 0, height, ...box }} />
}
