/** On a teacher's page: the talk that a sort invites. */
import type { Row } from '../src/pieces/faces/flow-page.js'
import { numberedRow, textRow, whiteRow } from '../src/pieces/parts/table-rows.js'
import type { RatedSort } from '../src/sets/sorts/sort-by.js'
import { type Question, sortTalk } from '../src/sets/sorts/talk/sort-talk.js'
import { inPlainSounds } from '../src/words/pronunciation/respelling.js'
import type { LayoutRequest } from './layout.js'
import { wordsToLay } from './words-to-lay.js'

/** Rows with the questions of each of these sorts; the words that could be laid, too, are looked for once for all. */
export function talkOver(
  request: LayoutRequest,
  widthMm: number,
): (rated: RatedSort, heading: string) => readonly Row[] {
  const { words, type, measure } = request
  const toAdd = wordsToLay(request)
  const style = { sizeMm: type.adultTextMm }
  return (rated, heading) => [
    { ...whiteRow(type.adultTextMm * 0.4), keepsWithNext: true },
    {
      ...textRow(inPlainSounds(heading), { style: { ...style, weight: 700 }, widthMm, measure }),
      keepsWithNext: true,
    },
    ...sortTalk({ rated, words, toAdd }).map((question, index) =>
      numberedRow(index + 1, inPlainSounds(inOneLine(question)), { style, widthMm, measure }),
    ),
  ]
}

function inOneLine({ ask, answer }: Question): string {
  return answer === undefined ? ask : `${ask} (${answer.replace(/\.$/, '')})`
}
