/** One line on the children's copy that tells them what to do. */
import { headingTextMm } from '../../src/pieces/faces/flow-page.js'
import { keyEntries } from '../../src/pieces/marks/key-entries.js'
import { breakLines, linesHeight, type TextStyle } from '../../src/pieces/text/break-lines.js'
import { Lines } from '../../src/pieces/text/lines.js'
import type { LayoutRequest } from '../layout.js'

/** Short sentences, and only of what the page has; the second is left out where it would take a line more. */
function taskIn({ words, marks }: LayoutRequest): readonly string[] {
  return keyEntries(words, marks).length === 0
    ? ['Read each word and write it.']
    : ['Mark each word and write it. Draw each mark.', 'Mark each word and write it.']
}

function taskLines(request: LayoutRequest, widthMm: number) {
  const style: TextStyle = { sizeMm: headingTextMm({ textMm: request.type.listTextMm }, widthMm) }
  const ways = taskIn(request).map(task => breakLines(task, widthMm, style, request.measure))
  return { style, lines: ways.reduce((fewest, lines) => (lines.length < fewest.length ? lines : fewest)) }
}

/** White below the task, in its lines: in large print they are as high as a row. */
const BELOW = { normal: 0.6, large: 0.3 } as const

/** Height of the heads over what the teacher's list tells of its words: two lines. */
export function factHeadsHeight({ type }: LayoutRequest): number {
  return linesHeight(2, type.adultTextMm * 0.9)
}

/** Height of the row above the words in the children's list and in the marked one, which has its headings there. */
export function topRowHeight(request: LayoutRequest, widthMm: number): number {
  const { lines, style } = taskLines(request, widthMm)
  return Math.max(
    factHeadsHeight(request),
    linesHeight(lines.length + BELOW[request.type.large ? 'large' : 'normal'], style.sizeMm),
  )
}

export function ChildsTask({
  request,
  widthMm,
}: {
  readonly request: LayoutRequest
  readonly widthMm: number
}) {
  return <Lines {...taskLines(request, widthMm)} />
}
