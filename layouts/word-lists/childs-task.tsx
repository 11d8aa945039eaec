/** One line on the children's copy that tells them what to do. */
import { keyEntries } from '../../src/pieces/marks/key-entries.js'
import { breakLines, linesHeight, type TextStyle } from '../../src/pieces/text/break-lines.js'
import { Lines } from '../../src/pieces/text/lines.js'
import type { LayoutRequest } from '../layout.js'

/** Short sentences, and only of what the page has. */
function taskIn({ words, marks }: LayoutRequest): string {
  return keyEntries(words, marks).length === 0
    ? 'Read each word and write it.'
    : 'Mark each word and write it. Draw each mark.'
}

function taskLines(request: LayoutRequest, widthMm: number) {
  const style: TextStyle = { sizeMm: request.type.listTextMm }
  return { style, lines: breakLines(taskIn(request), widthMm, style, request.measure) }
}

/** Height of the row above the words in the children's list and in the marked one, which has its headings there. */
export function topRowHeight(request: LayoutRequest, widthMm: number): number {
  const { lines, style } = taskLines(request, widthMm)
  return Math.max(
    linesHeight(2, request.type.adultTextMm * 0.9),
    linesHeight(lines.length + 0.6, style.sizeMm),
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
