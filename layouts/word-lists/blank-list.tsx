import { mm } from '../../src/pieces/faces/face.js'
import { headingHeight } from '../../src/pieces/faces/flow-page.js'
import { blankKeyRows } from '../../src/pieces/parts/key-rows.js'
import { WritingLine } from '../../src/pieces/parts/rules.js'
import { defineLayout } from '../layout.js'
import { markedListHeading } from './marked-list.js'
import { wordFacts } from './word-facts.js'
import { pageTitle, wordListPages } from './word-list.js'

/** The children's copy: the words where the marked list has them, nothing marked, and room to draw the key. */
export const blankList = defineLayout({
  kind: 'pages',
  name: 'blank-list',
  summary: 'the children’s copy to mark: the same words in the same places, room for the key',
  options: {},
  marks: 'none',
  pages: (request, room) => {
    const { words, marks, typeface, type, plan, measure } = request
    return wordListPages({
      words,
      marks,
      typeface,
      type,
      marked: false,
      heading: {
        title: plan.title,
        subtitle: 'Name',
        textMm: type.listTextMm,
        measure,
        leastHeightMm: headingHeight(markedListHeading(request), room.widthMm),
        lineAfterSubtitle: true,
      },
      room,
      columnHeadings: () => null,
      beside: () => <WritingRoom />,
      besideHeightMm: wordFacts(request).heightMm,
      keyRows: blankKeyRows(request, room.widthMm),
    }).map(face => ({ ...face, kind: 'list', title: pageTitle(request) }))
  },
})

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
        paddingBottom: mm(3.5),
        alignItems: 'flex-end',
      }}
    >
      <WritingLine />
    </div>
  )
}
