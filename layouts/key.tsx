import { flowPages } from '../src/pieces/flow-page.js'
import { keyRows } from '../src/pieces/key-rows.js'
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
    const { plan, subtitle, type } = request
    const title = `${plan.title}: our key`
    const wall = request.item.options['for'] === 'wall'
    const textMm = wall ? type.textMm * 1.3 : type.textMm
    const rows = keyRows(request, room.widthMm, wall ? type.textMm * 3.2 : type.textMm * 1.8)
    return flowPages({ heading: { title, subtitle, textMm }, rows, room }).map(face => ({
      ...face,
      kind: 'key',
      title,
    }))
  },
}
