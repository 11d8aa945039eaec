import { defineLayout } from '../layout.js'
import { headingOptions, roomierHeadings } from './chosen-headings.js'
import { linesFor, sheetFaces, sheetSet } from './sort-sheet.js'

/** A sheet for the notebook: the sort written down, and what the child found out. */
export const sortRecord = defineLayout({
  kind: 'pieces',
  name: 'sort-record',
  summary: 'a sheet for the notebook: the sort written down under its headings, and what the child found out',
  inWeek: { day: 'practice', given: 'each child' },
  options: headingOptions,
  marks: 'none',
  perSheet: { columns: 1, rows: 2 },
  perSheetLarge: { columns: 1, rows: 1 },
  set: request => sheetSet(request),
  roomier: roomierHeadings,
  faces: (request, set, size) =>
    sheetFaces(request, set, size, headings => ({
      linesEach: linesFor(headings),
      named: false,
      asked: [{ text: 'What do the words in each column share?', lines: 2 }],
    })),
  pages: () => [],
})
