import { boardRoom } from '../board-room.js'
import { defineLayout } from '../layout.js'
import { headingOptions, roomierHeadings } from './chosen-headings.js'
import { sheetFaces, sheetSet } from './sort-sheet.js'

/** White round a card in its column. */
const ROUND_CARD_MM = 4

/** A mat with the headings of a sort, to lay or glue its cards under. */
export const sortMat = defineLayout({
  kind: 'pieces',
  name: 'sort-mat',
  summary: 'a mat with the headings of a sort and room to lay or glue its cards under them',
  inWeek: { day: 'centres', given: 'each pair' },
  options: headingOptions,
  marks: 'none',
  perSheet: { columns: 1, rows: 1 },
  perSheetLarge: { columns: 1, rows: 1 },
  set: request =>
    sheetSet(request, ({ sort, headings }) => {
      const columnMm = boardRoom(request).widthMm / headings.length
      return {
        notes: [
          `The sort is "${sort.name}". ${sort.why}`,
          `Cards up to ${Math.floor(columnMm - ROUND_CARD_MM)} mm wide lie in its columns.`,
        ],
      }
    }),
  roomier: roomierHeadings,
  faces: (request, set, size) =>
    sheetFaces(request, set, size, () => ({ linesEach: 0, named: false, asked: [] })),
  pages: () => [],
})
