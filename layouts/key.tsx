import { flowPages } from '../src/pieces/flow-page.js'
import { largeKeyRows } from '../src/pieces/key-rows.js'
import { choice } from '../src/plan/options.js'
import type { PageLayout } from './layout.js'

/** The class's key: each mark on sample letters with its name, only those that the words use. */
export const key: PageLayout = {
  kind: 'pages',
  name: 'key',
  summary: 'what each mark means, for the wall or the desk; only the marks that the words use',
  options: { for: choice(['wall', 'desk'], 'wall') },
  marks: 'all',
  pages: (request, room) => {
    const { plan, subtitle, type, item, measure } = request
    const title = `${plan.title}: our key`
    const forWall = item.options.for === 'wall'
    const textMm = forWall ? Math.max(type.textMm, type.adultTextMm * 1.5) : type.textMm
    const sampleMm = forWall ? Math.max(13, type.textMm * 1.6) : Math.max(7, type.textMm)
    const rows = largeKeyRows(request, room.widthMm, sampleMm)
    return flowPages({ heading: { title, subtitle, textMm, measure }, rows, room }).map(face => ({
      ...face,
      kind: 'key',
      title,
    }))
  },
}
