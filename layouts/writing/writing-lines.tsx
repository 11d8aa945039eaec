/** Lines for a child to write on. */
import { mm } from '../../src/pieces/faces/face.js'
import { Rule } from '../../src/pieces/parts/rules.js'
import { linesHeight } from '../../src/pieces/text/break-lines.js'
import { Lines } from '../../src/pieces/text/lines.js'
import type { TypeScale } from '../../src/pieces/text/type-scale.js'

/** A beginner's hand needs so much from line to line: our own judgement, no source. */
const LEAST_MM = 9
const MOST_MM = 16
/** In the em of a child's large print: her hand need not write as large as she reads (our own judgement, no source). */
const LARGE_EM = 0.6
/** Beside the lines of a column. */
export const BESIDE_LINES_MM = 3
/** What a letter of a beginner's hand takes along the line: our own judgement, no source. */
const LETTER_MM = 5

/** The least from line to line. */
export function leastWriting(type: TypeScale): number {
  return Math.max(LEAST_MM, type.large ? type.mainMinimumMm * LARGE_EM : 0)
}

/** From line to line where number and name stand before them: as much as these are high. */
export function leastLabelled(type: TypeScale): number {
  return Math.max(leastWriting(type), linesHeight(1, type.textMm))
}

/** From line to line where there is room for more. */
export function mostWriting(leastMm: number): number {
  return Math.max(MOST_MM, leastMm)
}

/** A word that is written in a beginner's hand, and no line shorter than that of a child who writes widely: our own judgement, no source. */
const SHORTEST_MM = 45

/** The least length of a line on which any of these words is written. */
export function leastLineMm(words: readonly { readonly text: string }[]): number {
  return Math.max(SHORTEST_MM, ...words.map(({ text }) => text.length * LETTER_MM))
}

/** How many lines of this length a child needs to write the text. */
export function linesToWrite(text: string, lineMm: number): number {
  return Math.ceil((text.length * LETTER_MM) / lineMm)
}

export function WritingRow({ heightMm }: { readonly heightMm: number }) {
  return (
    <div
      style={{
        display: 'flex',
        position: 'relative',
        height: mm(heightMm),
        flexShrink: 0,
        marginLeft: mm(BESIDE_LINES_MM),
        marginRight: mm(BESIDE_LINES_MM),
      }}
    >
      <Rule color="#737373" />
    </div>
  )
}

/** A line behind what it is for: `Name`, or a number. */
export function LabelledRow({
  label,
  heightMm,
  sizeMm,
  labelMm,
}: {
  readonly label: string
  readonly heightMm: number
  readonly sizeMm: number
  /** Width of the label's place; as wide as it is where left out. */
  readonly labelMm?: number
}) {
  return (
    <div
      style={{
        display: 'flex',
        height: mm(heightMm),
        flexShrink: 0,
        alignItems: 'flex-end',
        marginRight: mm(BESIDE_LINES_MM),
      }}
    >
      <Lines
        lines={[label]}
        style={{ sizeMm }}
        box={{ flexShrink: 0, ...(labelMm === undefined ? { marginRight: mm(3) } : { width: mm(labelMm) }) }}
      />
      <div style={{ display: 'flex', flexGrow: 1, height: '100%', position: 'relative' }}>
        <Rule color="#737373" />
      </div>
    </div>
  )
}
