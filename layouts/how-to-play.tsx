import { pointsToMm, type Size } from '../src/geometry.js'
import { type Row, rowsHeight } from '../src/pieces/faces/flow-page.js'
import { DashedRule } from '../src/pieces/parts/rules.js'
import { numberedRow, textRow } from '../src/pieces/parts/table-rows.js'
import { grownUpPages, headingMm } from './grown-up-pages.js'
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
const WHAT = 'how to play'

/** Read by several children round a table, where the page has room for it: our own judgement, no source. */
const TABLE_PT = 24

/** Of the page's height, for one of the children's sentences. */
const SENTENCE_SHARE = 0.7

/**
 * A page with the children's card on its upper half, to be cut off, and below what whoever helps them needs to know; so
 * the cards of all games are of one size. Where the card needs more than half, it takes as much as it needs.
 */
export function howToPlayPages(request: LayoutRequest, rules: GameRules, room: Size): readonly PageFace[] {
  const { type, measure } = request
  const { widthMm } = room
  const wantedMm = Math.max(type.textMm, pointsToMm(CHILD_PT))
  const cutMm = type.adultTextMm * 2
  const halfMm = (room.heightMm - cutMm) / 2 - headingMm(request, WHAT, room)
  const tableMm = largestForTable(rules.play, wantedMm, request, { ...room, heightMm: halfMm })
  const childMm = tableMm > wantedMm ? tableMm : largestFor(rules.play, wantedMm, request, room)
  const sentences = rules.play.map((sentence, index) =>
    numberedRow(index + 1, sentence, { style: { sizeMm: childMm }, widthMm, measure }),
  )
  const apartMm = Math.max(0, halfMm - rowsHeight(sentences)) / sentences.length
  const adult = (text: string): Row =>
    textRow(text, { style: { sizeMm: type.adultTextMm }, widthMm, measure })
  const rows = [
    ...sentences.map(row => ({ ...row, heightMm: row.heightMm + apartMm })),
    { heightMm: cutMm, tree: <DashedRule /> },
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
  return grownUpPages(request, { kind: 'rules', what: WHAT, rows, room })
}

/** The largest size, no smaller than wanted, in which the sentences have room here. */
function largestForTable(
  sentences: readonly string[],
  wantedMm: number,
  request: LayoutRequest,
  room: Size,
): number {
  const { measure } = request
  const heightAt = (sizeMm: number) =>
    rowsHeight(
      sentences.map(text => numberedRow(1, text, { style: { sizeMm }, widthMm: room.widthMm, measure })),
    )
  let sizeMm = pointsToMm(TABLE_PT)
  while (sizeMm > wantedMm && heightAt(sizeMm) > room.heightMm) sizeMm *= 0.95
  return Math.max(wantedMm, sizeMm)
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
