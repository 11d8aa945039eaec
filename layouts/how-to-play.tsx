import { pointsToMm, type Size } from '../src/geometry.js'
import type { Row } from '../src/pieces/faces/flow-page.js'
import { DashedRule } from '../src/pieces/parts/rules.js'
import { numberedRow, textRow } from '../src/pieces/parts/table-rows.js'
import { grownUpPages } from './grown-up-pages.js'
import type { LayoutRequest, PageFace } from './layout.js'

/** How a game is played, in our own words. */
export interface GameRules {
  /** For the children: four short sentences in the order of what they do. */
  readonly play: readonly [string, string, string, string]
  /** What to print and lay out for how many players. */
  readonly prepare: string
  /** What whoever helps should see to. */
  readonly help: string
  readonly easier: string
  readonly harder: string
}

/** Text that a beginning reader reads alone: our own judgement, no source. */
const CHILD_PT = 16

/** Of the page's height, for one of the children's sentences. */
const SENTENCE_SHARE = 0.7

/** A page with the children's card, to be cut off, and what whoever helps them needs to know. */
export function howToPlayPages(request: LayoutRequest, rules: GameRules, room: Size): readonly PageFace[] {
  const { type, measure } = request
  const { widthMm } = room
  const wantedMm = Math.max(type.textMm, pointsToMm(CHILD_PT))
  const childMm = largestFor(rules.play, wantedMm, request, room)
  const adult = (text: string): Row =>
    textRow(text, { style: { sizeMm: type.adultTextMm }, widthMm, measure })
  const rows = [
    ...rules.play.map((sentence, index) =>
      numberedRow(index + 1, sentence, { style: { sizeMm: childMm }, widthMm, measure }),
    ),
    { heightMm: type.adultTextMm * 2, tree: <DashedRule /> },
    adult('Cut here: above is the children’s card, below is for whoever helps.'),
    ...(childMm < wantedMm
      ? [
          adult(
            'The children’s card is smaller than their words, which leave no room for it: read it to them.',
          ),
        ]
      : []),
    adult(`To prepare: ${rules.prepare}`),
    adult(`To help: ${rules.help}`),
    adult(`Easier: ${rules.easier}`),
    adult(`Harder: ${rules.harder}`),
  ]
  return grownUpPages(request, { kind: 'rules', what: 'how to play', rows, room })
}

/** A sentence stands on one page, and none of its words is wider than that. */
function largestFor(
  sentences: readonly string[],
  wantedMm: number,
  { measure }: LayoutRequest,
  { widthMm, heightMm }: Size,
): number {
  const fits = (sizeMm: number) =>
    sentences.every(
      sentence =>
        numberedRow(1, sentence, { style: { sizeMm }, widthMm, measure }).heightMm <=
          heightMm * SENTENCE_SHARE &&
        // A word of its own, and the number with its gap before it.
        sentence.split(' ').every(word => measure(word, sizeMm) <= widthMm - 2 * sizeMm),
    )
  let sizeMm = wantedMm
  while (!fits(sizeMm)) sizeMm *= 0.9
  return sizeMm
}
