/** On a teacher's page: the talk that a sort invites. */
import { succeed } from '../src/outcomes.js'
import type { Row } from '../src/pieces/faces/flow-page.js'
import { numberedRow, textRow, whiteRow } from '../src/pieces/parts/table-rows.js'
import type { RatedSort } from '../src/sets/sorts/sort-by.js'
import { type Question, sortTalk } from '../src/sets/sorts/talk/sort-talk.js'
import { openOfferedWords } from '../src/words/find/offered-file.js'
import { readableWords } from '../src/words/find/taught.js'
import { wordsLike } from '../src/words/find/words-like.js'
import { installedLexicon } from '../src/words/lexicon/lexicon.js'
import type { LayoutRequest } from './layout.js'

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
    { ...textRow(heading, { style: { ...style, weight: 700 }, widthMm, measure }), keepsWithNext: true },
    ...sortTalk({ rated, words, toAdd }).map((question, index) =>
      numberedRow(index + 1, inOneLine(question), { style, widthMm, measure }),
    ),
  ]
}

/** As hard as the list's own, and such as the class can read where its class file says what is taught. */
function wordsToLay({ words, plan }: LayoutRequest) {
  const lexicon = installedLexicon()
  // A mistake in what is taught is told by whoever reads the plan.
  const readable = plan.taught === undefined ? succeed(undefined) : readableWords(plan.taught, lexicon)
  return wordsLike({
    words,
    offered: openOfferedWords,
    lexicon,
    readable: readable.ok ? readable.value : undefined,
  })
}

function inOneLine({ ask, answer }: Question): string {
  return answer === undefined ? ask : `${ask} (${answer.replace(/\.$/, '')})`
}
