import { mm } from '../../src/pieces/faces/face.js'
import type { Row } from '../../src/pieces/faces/flow-page.js'
import { Rule, TickBox } from '../../src/pieces/parts/rules.js'
import { breakLines, linesHeight } from '../../src/pieces/text/break-lines.js'
import { Lines } from '../../src/pieces/text/lines.js'
import { numberOf } from '../board-number.js'
import type { LayoutRequest } from '../layout.js'
import type { CallerWanted } from './caller-wanted.js'
import { rulesOfGame } from './rules-of-game.js'
import { shoutRows } from './shout-rows.js'

/**
 * All that a caller needs: how the game goes, the words in the order of the calls with a box to tick and the boards that
 * win there, every board in small with the call of each cell, and what chance would give instead.
 */
export function callersRows(wanted: CallerWanted): readonly Row[] {
  const { request, set, widthMm } = wanted
  const rules = rulesOfGame(wanted)
  return [
    textRow(request, rules, widthMm),
    ...callRows(wanted),
    ...shoutRows(wanted),
    ...(set.notes === undefined ? [] : [textRow(request, set.notes, widthMm)]),
  ]
}

function textRow({ type, measure }: LayoutRequest, paragraphs: readonly string[], widthMm: number): Row {
  const textMm = type.adultTextMm
  const style = { sizeMm: textMm }
  const lines = paragraphs.flatMap(each => breakLines(each, widthMm, style, measure))
  return {
    heightMm: linesHeight(lines.length, textMm) + textMm,
    tree: <Lines lines={lines} style={style} />,
  }
}

/** One call a line where there are clues to read out, two where there are none. */
function callRows(wanted: CallerWanted): readonly Row[] {
  const { request, round, widthMm, saidFor } = wanted
  const clues = saidFor ?? new Map(request.words.map(({ text, clue }) => [text, clue ?? '']))
  const hasClues = [...clues.values()].some(clue => clue !== '')
  const byRule = round.winsByRule ?? round.wins
  const calls = round.callOrder.map((word, index): Call => {
    const winners = byRule.filter(({ call }) => call === index + 1).map(({ board }) => numberOf(board))
    return { number: index + 1, word, clue: clues.get(word) ?? '', winners }
  })
  const columns = hasClues ? 1 : 2
  const deep = Math.ceil(calls.length / columns)
  return Array.from({ length: deep }, (_, index) =>
    callRow(
      calls.filter((_, call) => call % deep === index),
      { request, widthMm, columns },
    ),
  )
}

interface Call {
  readonly number: number
  readonly word: string
  readonly clue: string
  /** Numbers of the boards that win now. */
  readonly winners: readonly string[]
}

function callRow(
  calls: readonly Call[],
  {
    request,
    widthMm,
    columns,
  }: { readonly request: LayoutRequest; readonly widthMm: number; readonly columns: number },
): Row {
  const { type, measure } = request
  const textMm = type.adultTextMm
  const style = { sizeMm: textMm }
  const columnMm = widthMm / columns
  const [numberMm, boxMm, wordMm] = [textMm * 2.4, textMm * 2, textMm * 11]
  const restMm = columnMm - numberMm - boxMm - wordMm - textMm
  const hasClue = columns === 1
  const winnersMm = hasClue ? Math.min(restMm / 2, textMm * 9) : restMm
  const told = calls.map(({ clue, winners }) => ({
    clue: hasClue ? breakLines(clue, restMm - winnersMm - textMm, style, measure) : [],
    winners: breakLines(winnersText(winners), winnersMm, { ...style, weight: 700 }, measure),
  }))
  const lines = Math.max(...told.map(({ clue, winners }) => Math.max(clue.length, winners.length)))
  const lefts = [0, numberMm, numberMm + boxMm, numberMm + boxMm + wordMm]
  return {
    heightMm: Math.max(textMm * 1.9, linesHeight(lines, textMm) + 1),
    ...(hasClue ? { cells: { leftsMm: [...lefts, columnMm - winnersMm], headings: 1 } } : {}),
    tree: (
      <div style={{ display: 'flex', width: '100%', height: '100%', position: 'relative' }}>
        <Rule color="#c4c4c4" />
        {calls.map(({ number, word }, index) => (
          <div style={{ display: 'flex', width: mm(columnMm), height: '100%', alignItems: 'center' }}>
            <Lines
              lines={[String(number)]}
              style={{ ...style, color: '#595959' }}
              box={{ width: mm(numberMm) }}
            />
            <TickBox sizeMm={textMm} />
            <Lines
              lines={[word]}
              style={{ sizeMm: textMm * 1.15, weight: 700 }}
              box={{ width: mm(wordMm), marginLeft: mm(boxMm - textMm) }}
            />
            {hasClue && (
              <Lines lines={told[index]!.clue} style={style} box={{ width: mm(restMm - winnersMm) }} />
            )}
            <Lines
              lines={told[index]!.winners}
              style={{ ...style, weight: 700 }}
              box={{ width: mm(winnersMm) }}
            />
          </div>
        ))}
      </div>
    ),
  }
}

/** So many have room in a row; with more boards nearly all of them win at the last calls, and nobody looks them up there. */
const MOST_NAMED = 80

function winnersText(winners: readonly string[]): string {
  if (winners.length === 0) return ''
  const named = winners.slice(0, MOST_NAMED).join(', ')
  const others = winners.length - MOST_NAMED
  return `${winners.length === 1 ? 'board' : 'boards'} ${named}${others > 0 ? ` and ${others} more` : ''}`
}
