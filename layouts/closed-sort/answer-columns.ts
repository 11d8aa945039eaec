/** The words of a sort under their headers, as they lie on the desk, with the numbers of their cards. */
import type { Row } from '../../src/pieces/faces/flow-page.js'
import { tableRows, whiteRow } from '../../src/pieces/parts/table-rows.js'
import type { Answer, Card, CardSet } from '../../src/sets/card-set.js'
import type { LayoutRequest } from '../layout.js'

/** At most so many to a row of the page. */
const COLUMNS_ABREAST = 5

export function answerColumns(
  { type, measure }: LayoutRequest,
  set: CardSet,
  widthMm: number,
): readonly Row[] {
  const columns = (set.answers ?? []).map(answer => ({ heading: answer.text, cells: cellsOf(set, answer) }))
  const abreast = Math.ceil(columns.length / Math.ceil(columns.length / COLUMNS_ABREAST))
  return inGroups(columns, abreast).flatMap(group => {
    const longest = Math.max(...group.map(({ cells }) => cells.length))
    const places = Array.from({ length: abreast }, (_, place) => group[place])
    return [
      ...tableRows({
        columns: places.map(column => ({ heading: column?.heading ?? '', share: 1 / abreast })),
        cells: Array.from({ length: longest }, (_, row) => places.map(column => column?.cells[row] ?? '')),
        widthMm,
        textMm: type.adultTextMm,
        measure,
      }),
      whiteRow(type.adultTextMm * 1.5),
    ]
  })
}

/** `8 fox`; `8 fox, 26 foxes` where the word has a partner. */
function cellsOf({ cards }: CardSet, { numbers }: Answer): readonly string[] {
  const own = cards.filter(({ copy, number }) => copy === 1 && numbers.includes(number))
  const partnerOf = new Map(
    own.flatMap(card => (card.shows === 'form' ? [[card.words[0], card] as const] : [])),
  )
  return own.flatMap(card => {
    if (card.shows === 'form') return []
    const partner = partnerOf.get(card.words[0])
    return [[card, ...(partner === undefined ? [] : [partner])].map(numbered).join(', ')]
  })
}

function numbered({ number, title, words: [word] }: Card): string {
  return `${number} ${title ?? word!.text}`
}

function inGroups<T>(items: readonly T[], size: number): readonly (readonly T[])[] {
  return Array.from({ length: Math.ceil(items.length / size) }, (_, index) =>
    items.slice(index * size, (index + 1) * size),
  )
}
