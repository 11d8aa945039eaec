import type { Heading } from '../../src/pieces/faces/flow-page.js'
import { keyRows } from '../../src/pieces/parts/key-rows.js'
import { defineLayout, type LayoutRequest } from '../layout.js'
import { wordFacts } from './word-facts.js'
import { pageTitle, wordListPages } from './word-list.js'

/** The teacher's copy: every word marked, with its sounds, part of speech, plural and clue. */
export const markedList = defineLayout({
  kind: 'pages',
  name: 'marked-list',
  summary: 'the teacher’s copy: every word marked, sounds counted, part of speech, plural, clue',
  options: {},
  marks: 'all',
  pages: (request, room) => {
    const { words, marks, typeface, marked, type } = request
    const heading = markedListHeading(request)
    const facts = wordFacts(request)
    return wordListPages({
      words,
      marks,
      typeface,
      type,
      marked,
      heading,
      room,
      columnHeadings: facts.headings,
      beside: facts.of,
      besideHeightMm: facts.heightMm,
      keyRows: keyRows(request, room.widthMm),
    }).map(face => ({ ...face, kind: 'list', title: pageTitle(request) }))
  },
})

/** The blank list keeps as much room for its own. */
export function markedListHeading({ itemTitle, subtitle, type, measure }: LayoutRequest): Heading {
  return { title: itemTitle, subtitle, textMm: type.listTextMm, measure }
}
