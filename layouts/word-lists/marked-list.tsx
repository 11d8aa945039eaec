import { mm } from '../../src/pieces/faces/face.js'
import { canBeTooNote } from '../../src/pieces/marks/can-be-too.js'
import { keyRows } from '../../src/pieces/parts/key-rows.js'
import { defineLayout } from '../layout.js'
import { aboveMarkedWords } from './list-headings.js'
import { wordFacts } from './word-facts.js'
import { pageTitle, wordListPages } from './word-list.js'

/** The teacher's copy: every word marked, with its sounds, part of speech, plural and clue. */
export const markedList = defineLayout({
  kind: 'pages',
  name: 'marked-list',
  summary: 'the teacher’s copy: every word marked, sounds counted, part of speech, plural, clue',
  inWeek: { day: 'lesson', given: 'you' },
  options: {},
  marks: 'all',
  pages: (request, room) => {
    const { words, marks, typeface, marked, type } = request
    const { heading, topRowMm } = aboveMarkedWords(request, room.widthMm)
    const facts = wordFacts(request)
    const note = marked ? canBeTooNote(words, marks) : undefined
    return wordListPages({
      words,
      marks,
      typeface,
      type,
      marked,
      heading,
      room,
      topRow: {
        heightMm: topRowMm,
        headings: true,
        tree: ({ numberMm, wordMm, besideMm }) => (
          <div
            style={{
              display: 'flex',
              width: '100%',
              boxSizing: 'border-box',
              height: '100%',
              alignItems: 'flex-end',
              paddingLeft: mm(numberMm + wordMm),
            }}
          >
            {facts.headings(besideMm)}
          </div>
        ),
      },
      beside: facts.of,
      besideLeftsMm: facts.leftsMm,
      besideHeightMm: facts.heightMm,
      keyRows: setting => keyRows(request, room.widthMm, setting),
    }).map((face, page) => ({
      ...face,
      kind: 'list',
      title: pageTitle(request),
      ...(page > 0 || note === undefined ? {} : { note }),
    }))
  },
})
