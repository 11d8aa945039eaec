import { blankKeyRows } from '../../src/pieces/parts/key-rows.js'
import { defineLayout } from '../layout.js'
import { ChildsTask, topRowHeight } from './childs-task.js'
import { blankListHeading } from './list-headings.js'
import { wordFacts } from './word-facts.js'
import { pageTitle, wordListPages } from './word-list.js'

/** The children's copy: the words where the marked list has them, nothing marked, and room to draw the key. */
export const blankList = defineLayout({
  kind: 'pages',
  name: 'blank-list',
  summary: 'the children’s copy to mark: the same words in the same places, room for the key',
  inWeek: { day: 'lesson', given: 'each child' },
  options: {},
  marks: 'none',
  pages: (request, room) => {
    const { words, marks, typeface, type } = request
    return wordListPages({
      words,
      marks,
      typeface,
      type,
      marked: false,
      heading: blankListHeading(request, room.widthMm),
      room,
      topRow: {
        heightMm: topRowHeight(request, room.widthMm),
        headings: false,
        tree: () => <ChildsTask request={request} widthMm={room.widthMm} />,
      },
      besideHeightMm: wordFacts(request).heightMm,
      keyRows: setting => blankKeyRows(request, room.widthMm, setting),
    }).map(face => ({ ...face, kind: 'list', title: pageTitle(request) }))
  },
})
