import type { Size } from '../src/geometry.js'
import { flowPages, type Row } from '../src/pieces/faces/flow-page.js'
import type { LayoutRequest, PageFace } from './layout.js'

/** Pages that go with a set for whoever leads it, such as its answers; `what` ends their title. */
export function grownUpPages(
  { plan, itemTitle, subtitle, type, measure }: LayoutRequest,
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
  const title = `${itemTitle}: ${what}`
  const heading = { title, subtitle, textMm: type.adultTextMm, measure }
  return flowPages({ heading, rows, room }).map(face => ({ ...face, kind, title: `${plan.title}: ${title}` }))
}
