import type { Row } from '../../src/pieces/faces/flow-page.js'
import { tableRows, textRow } from '../../src/pieces/parts/table-rows.js'
import type { TextMeasure } from '../../src/pieces/text/text-lines.js'
import type { CardSet } from '../../src/sets/card-set.js'
import type { Word } from '../../src/words/word.js'

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
        { heading: 'sounds', share: 0.15 },
        { heading: 'their letters', share: 0.45 },
      ],
      cells: set.cards
        .filter(card => card.copy === 1)
        .flatMap(({ number, words }) =>
          words.map(word => [String(number), word.text, String(word.soundCount), lettersOf(word)]),
        ),
      widthMm,
      textMm,
      measure,
    }),
  ]
}

/** `s · n · a · k · (e)`, and said to be a guess where it is one. */
function lettersOf(word: Word): string {
  const letters = word.graphemes.map(({ letters, sounds }) => {
    if (sounds.length === 0) return `(${letters})`
    return sounds.length === 1 ? letters : `${letters} (${sounds.length} sounds)`
  })
  return `${letters.join(' · ')}${word.source === 'guess' ? ', a guess' : ''}`
}
