import type { Row } from '../src/pieces/faces/flow-page.js'
import { tableRows, textRow } from '../src/pieces/parts/table-rows.js'
import type { TextMeasure } from '../src/pieces/text/break-lines.js'
import type { CardSet } from '../src/sets/card-set.js'
import { soundsInWords } from '../src/words/sounds-in-words.js'
import type { Word } from '../src/words/word.js'

export interface StripAnswersRequest {
  readonly set: CardSet
  readonly asks: 'sounds' | 'syllables'
  readonly widthMm: number
  readonly textMm: number
  readonly measure: TextMeasure
}

const answers: Readonly<Record<StripAnswersRequest['asks'], (word: Word) => string>> = {
  sounds: soundsInWords,
  syllables: ({ syllables }) => `${syllables.length}: ${syllables.join('·')}`,
}

/** For a teacher's page: each strip's number, its word, how many sounds or syllables it has and the letters of each. */
export function stripAnswers({ set, asks, widthMm, textMm, measure }: StripAnswersRequest): readonly Row[] {
  const note = textRow('Letters in brackets have no sound of their own.', {
    style: { sizeMm: textMm },
    widthMm,
    measure,
  })
  return [
    ...(asks === 'sounds' ? [note] : []),
    ...tableRows({
      columns: [
        { heading: 'strip', share: 0.12 },
        { heading: 'word', share: 0.28 },
        { heading: asks, share: 0.6 },
      ],
      cells: set.cards
        .filter(card => card.copy === 1)
        .flatMap(({ number, words }) => words.map(word => [String(number), word.text, answers[asks](word)])),
      widthMm,
      textMm,
      measure,
    }),
  ]
}
