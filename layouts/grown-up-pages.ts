import type { Size } from '../src/geometry.js'
import { flowPages, type Heading, headingHeight, type Row } from '../src/pieces/faces/flow-page.js'
import type { LayoutRequest, PageFace } from './layout.js'

/** The height of the heading over such pages. */
export function headingMm(request: LayoutRequest, what: string, { widthMm }: Size): number {
  return headingHeight(headingOf(request, what), widthMm)
}

function headingOf({ itemTitle, subtitle, type, measure }: LayoutRequest, what: string): Heading {
  return { title: `${itemTitle}: ${what}`, subtitle, textMm: type.adultTextMm, measure }
}

/** Pages that go with a set for whoever leads it, such as its answers; `what` ends their title. */
export function grownUpPages(
  request: LayoutRequest,
  {
    kind,
    what,
    rows,
    room,
  }: Pick<PageFace, 'kind'> & {
    readonly what: string
    readonly rows: readonly Row[]
    readonly room: Size
  },
): readonly PageFace[] {
  const heading = headingOf(request, what)
  const title = `${request.plan.title}: ${heading.title}`
  return flowPages({ heading, rows, room }).map(face => ({ ...face, kind, title }))
}
