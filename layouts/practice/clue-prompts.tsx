/** Clues, each with a line for its word. */
import { mm } from '../../src/pieces/faces/face.js'
import { type Row, rowsHeight } from '../../src/pieces/faces/flow-page.js'
import { breakLines, linesHeight, type TextStyle } from '../../src/pieces/text/break-lines.js'
import { Lines } from '../../src/pieces/text/lines.js'
import { cluePractice } from '../../src/sets/practice/clues.js'
import { leastLabelled, leastWriting } from '../writing/writing-lines.js'
import { childTextMm, type PracticeKind } from './practice-kind.js'
import { columnsOf, lineAt, promptRow } from './prompt-row.js'
import { wordBank } from './word-bank.js'

/** Of the width, for a clue. */
const CLUE_SHARE = 0.54
/** A line of a clue holds so many ems, or the clue has the whole width: our own judgement, no source. */
const LEAST_EMS = 11
const BETWEEN_MM = 3
const MOST_ROW_MM = 18
/** Of a line's em, from its top to its baseline. */
const BASELINE = 1.06

export const clues: PracticeKind = {
  title: 'Which word is it?',
  task: ({ options: { bank } }) =>
    bank ? 'Read the clue. Find its word and write it.' : 'Read the clue. Write its word.',
  practice: ({ words }) => cluePractice(words),
  nothing: {
    message: 'no word of the list has a clue of its own, so there is nothing to ask',
    advice: 'Give words a clue each, or write clues: drafts in the plan to take ours.',
  },
  rows: (request, prompts) => {
    const { items, room, from, fillMm } = prompts
    const { measure, options, type } = request
    const { widthMm } = room
    const style: TextStyle = { sizeMm: childTextMm(request) }
    const bank = options.bank
      ? wordBank(
          request,
          items.map(({ word }) => word),
          prompts,
        )
      : []
    const isNarrow = widthMm * CLUE_SHARE < style.sizeMm * LEAST_EMS
    const columns = columnsOf(request, { widthMm, wishedMm: widthMm * (isNarrow ? 1 : CLUE_SHARE - 0.06) })
    const lines = items.map(({ prompt }) => breakLines(prompt, columns.promptMm, style, measure))
    const writingMm = Math.max(leastWriting(type), leastLabelled(type))
    // The first line of a clue stands on the line that its word is written on.
    const topMm = columns.stacked ? 0 : Math.max(0, writingMm - style.sizeMm * BASELINE)
    const needs = lines.map(each => topMm + linesHeight(each.length, style.sizeMm) + BETWEEN_MM)
    const spareMm =
      fillMm -
      rowsHeight(bank) -
      needs.reduce((sum, mm) => sum + (columns.stacked ? mm + writingMm : Math.max(mm, writingMm)), 0)
    const moreMm = Math.max(0, Math.min(MOST_ROW_MM - writingMm, spareMm / items.length - 0.05))
    return [
      ...bank,
      ...items.map((_, index): Row => {
        const number = from + index
        const promptHeightMm = columns.stacked ? needs[index]! : Math.max(needs[index]!, writingMm) + moreMm
        return promptRow(request, {
          number,
          columns,
          promptHeightMm,
          answerHeightMm: writingMm + (columns.stacked ? moreMm : 0),
          prompt: {
            tree: <Lines lines={lines[index]!} style={style} box={{ marginTop: mm(topMm) }} />,
            slots: {},
          },
          answer: lineAt(writingMm),
          topMm,
        })
      }),
    ]
  },
  heads: ['clue', 'word'],
  about: (_, { items }) => {
    const drafts = items.flatMap(({ word }) => (word.clueIsDraft === true ? [word.text] : []))
    if (drafts.length === 0) return []
    const which = drafts.length === items.length ? 'all words' : drafts.join(', ')
    return [`Our drafts, not your clues, for ${which}: read them before you hand the page out.`]
  },
}
