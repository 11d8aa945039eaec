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

/** A page with the children's card, to be cut off, and what whoever helps them needs to know. */
export function howToPlayPages(request: LayoutRequest, rules: GameRules, room: Size): readonly PageFace[] {
  const { type, measure } = request
  const childMm = Math.max(type.textMm, pointsToMm(CHILD_PT))
  const { widthMm } = room
  const adult = (text: string): Row =>
    textRow(text, { style: { sizeMm: type.adultTextMm }, widthMm, measure })
  const rows = [
    ...rules.play.map((sentence, index) =>
      numberedRow(index + 1, sentence, { style: { sizeMm: childMm }, widthMm, measure }),
    ),
    { heightMm: type.adultTextMm * 2, tree: <DashedRule /> },
    adult('Cut here: above is the children’s card, below is for whoever helps.'),
    adult(`To prepare: ${rules.prepare}`),
    adult(`To help: ${rules.help}`),
    adult(`Easier: ${rules.easier}`),
    adult(`Harder: ${rules.harder}`),
  ]
  return grownUpPages(request, { kind: 'rules', what: 'how to play', rows, room })
}
