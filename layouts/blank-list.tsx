import { mm } from '../src/pieces/face.js'
import { flowPages, type Row } from '../src/pieces/flow-page.js'
import { blankKeyRows } from '../src/pieces/key-rows.js'
import { WritingLine } from '../src/pieces/rules.js'
import { wordListMeasure, wordListRow } from '../src/pieces/word-list-row.js'
import type { PageLayout } from './layout.js'

/** The children's copy: the words where the marked list has them, nothing marked, and room to draw the key. */
export const blankList: PageLayout = {
  kind: 'pages',
  name: 'blank-list',
  summary: 'the children’s copy to mark: the same words in the same places, room for the key',
  options: {},
  marks: 'none',
  pages: (request, room) => {
    const { words, type, plan } = request
    const measure = wordListMeasure(type, room.widthMm)
    const rows: Row[] = [
      { heightMm: type.textMm * 1.8, tree: <div style={{ display: 'flex' }} /> },
      ...words.map((word, index) =>
        wordListRow({ word, number: index + 1, marked: false, measure, type, rest: <WritingRoom /> }),
      ),
      ...blankKeyRows(request),
    ]
    const title = plan.title
    const heading = { title, subtitle: 'Name', textMm: type.textMm }
    return flowPages({ heading, rows, room }).map(face => ({
      ...face,
      kind: 'list',
      title: `${title}: list to mark`,
    }))
  },
}

/** Room to write the sounds, or a word, beside the word. */
function WritingRoom() {
  return (
    <div
      style={{
        display: 'flex',
        flexGrow: 1,
        height: '100%',
        boxSizing: 'border-box',
        paddingLeft: mm(4),
        paddingBottom: mm(4),
        alignItems: 'flex-end',
      }}
    >
      <WritingLine />
    </div>
  )
}
