import type { Row } from '../../src/pieces/faces/flow-page.js'
import { tableRows, textRow } from '../../src/pieces/parts/table-rows.js'
import type { TextMeasure } from '../../src/pieces/text/break-lines.js'
import type { CardSet } from '../../src/sets/card-set.js'
import { soundsInWords } from '../../src/words/sounds-in-words.js'

/** For a teacher's page: each card's number, its word, how many sounds it has and the letters of each. */
export function soundRows({
  set,
  widthMm,
  textMm,
  measure,
}: {
  readonly set: CardSet
  readonly widthMm: number
  readonly textMm: number
  readonly measure: TextMeasure
}): readonly Row[] {
  return [
    textRow('Letters in brackets have no sound of their own.', {
      style: { sizeMm: textMm },
      widthMm,
      measure,
    }),
    ...tableRows({
      columns: [
        { heading: 'strip', share: 0.12 },
        { heading: 'word', share: 0.28 },
        { heading: 'sounds', share: 0.6 },
      ],
      cells: set.cards
        .filter(card => card.copy === 1)
        .flatMap(({ number, words }) => words.map(word => [String(number), word.text, soundsInWords(word)])),
      widthMm,
      textMm,
      measure,
    }),
  ]
}
