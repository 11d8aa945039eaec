import { succeed } from '../src/outcomes.js'
import { mm } from '../src/pieces/faces/face.js'
import type { Row } from '../src/pieces/faces/flow-page.js'
import { textRow } from '../src/pieces/parts/table-rows.js'
import { breakLines, linesHeight } from '../src/pieces/text/break-lines.js'
import { Lines } from '../src/pieces/text/lines.js'
import { orderWithoutHints } from '../src/sets/sorts/order-without-hints.js'
import { leftoversInWords, openSortNote } from '../src/sets/sorts/rank-sorts.js'
import type { Sort } from '../src/sets/sorts/sort.js'
import { cardsForWords } from '../src/sets/word-set.js'
import { ratedSortsFor, sortsFor } from './chosen-sort.js'
import { grownUpPages } from './grown-up-pages.js'
import { defineLayout, type LayoutRequest } from './layout.js'
import { missingPictures, wordFace } from './pictured-card.js'
import { talkOver } from './sort-talk.js'
import { pictureOption } from './word-options.js'

/** Unmarked cards whose rule the children find; the sorts that hold stand on a page of their own. */
export const openSort = defineLayout({
  kind: 'pieces',
  name: 'open-sort',
  summary: 'unmarked cards whose rule the children find, with the sorts that hold on a page of their own',
  inWeek: { day: 'centres', given: 'each pair' },
  options: pictureOption,
  marks: 'none',
  perSheet: { columns: 3, rows: 6 },
  perSheetLarge: { columns: 2, rows: 4 },
  set: request => {
    const { words, item, itemName, plan } = request
    const sorts = sortsFor(request)
    const cards = cardsForWords({
      words: orderWithoutHints({ words, sorts, seed: plan.seed, label: itemName }),
      copies: item.copies,
      order: 'given',
      seed: plan.seed,
      label: itemName,
      prefix: 'card',
    })
    return missingPictures(request, succeed({ ...cards, notes: [openSortNote(sorts)] }))
  },
  face: wordFace,
  pages: (request, _set, room) => {
    const sorts = ratedSortsFor(request)
    const talk = talkOver(request, room.widthMm)
    const rows =
      sorts.length === 0
        ? [
            textRow(openSortNote([]), {
              style: { sizeMm: request.type.adultTextMm },
              widthMm: room.widthMm,
              measure: request.measure,
            }),
          ]
        : sorts.flatMap((rated, index) => [
            ...sortRows(request, rated.sort, index, room.widthMm),
            ...talk(rated, 'To talk over:'),
          ])
    return grownUpPages(request, { kind: 'answers', what: 'sorts to find', rows, room })
  },
})

function sortRows(
  { type, measure }: LayoutRequest,
  sort: Sort,
  index: number,
  widthMm: number,
): readonly Row[] {
  const style = { sizeMm: type.adultTextMm }
  const bold = { ...style, weight: 700 as const }
  const row = (lines: readonly string[], rowStyle: typeof style | typeof bold, beforeMm: number): Row => ({
    heightMm: linesHeight(lines.length, rowStyle.sizeMm) + beforeMm,
    tree: <Lines lines={lines} style={rowStyle} box={{ marginTop: mm(beforeMm) }} />,
  })
  const broken = (text: string) => breakLines(text, widthMm, style, measure)
  const together = [
    row(
      [`${index + 1}. ${sort.name.charAt(0).toUpperCase()}${sort.name.slice(1)}`],
      { ...bold, sizeMm: type.adultTextMm * 1.15 },
      type.adultTextMm,
    ),
    row(broken(sort.why), style, 0),
    ...sort.columns.map(column => row(broken(`${column.title}: ${column.words.join(', ')}`), style, 0)),
    ...(sort.leftovers.length === 0 ? [] : [row(broken(leftoversInWords(sort)), style, 0)]),
  ]
  return together.map((each, at) => (at + 1 < together.length ? { ...each, keepsWithNext: true } : each))
}
