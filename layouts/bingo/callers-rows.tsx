import { mm } from '../../src/pieces/faces/face.js'
import type { Row } from '../../src/pieces/faces/flow-page.js'
import { Rule, TickBox } from '../../src/pieces/parts/rules.js'
import { breakLines, linesHeight, type TextMeasure } from '../../src/pieces/text/break-lines.js'
import { Lines } from '../../src/pieces/text/lines.js'
import type { CardSet } from '../../src/sets/card-set.js'

/** The caller's order with a box to tick for each call, and the boards that come to their first line there. */
export function callersRows({
  set,
  textMm,
  measure,
  widthMm,
}: Pick<Call, 'textMm' | 'measure' | 'widthMm'> & { readonly set: CardSet }): readonly Row[] {
  const { callOrder, wins } = set.deal!
  const style = { sizeMm: textMm }
  const notes = (set.notes ?? []).flatMap(note => breakLines(note, widthMm, style, measure))
  const noteRow: Row = {
    heightMm: linesHeight(notes.length, textMm) + textMm,
    tree: <Lines lines={notes} style={style} />,
  }
  const calls = callOrder.map((word, index) => {
    const winners = wins.filter(win => win.call === index + 1).map(win => win.board.replace('board-', ''))
    return callRow({ number: index + 1, word, boards: winners, textMm, measure, widthMm })
  })
  return [noteRow, ...calls]
}

interface Call {
  readonly number: number
  readonly word: string
  /** Numbers of the boards that have their first line now. */
  readonly boards: readonly string[]
  readonly textMm: number
  readonly measure: TextMeasure
  readonly widthMm: number
}

function callRow({ number, word, boards, textMm, measure, widthMm }: Call): Row {
  const style = { sizeMm: textMm }
  const leftMm = textMm * 16
  const said =
    boards.length === 0 ? '' : `first line: ${boards.length === 1 ? 'board' : 'boards'} ${boards.join(', ')}`
  const lines = breakLines(said, widthMm - leftMm, style, measure)
  return {
    heightMm: Math.max(textMm * 2, linesHeight(lines.length, textMm) + 1),
    cells: { leftsMm: [0, textMm * 2.4, leftMm], headings: 1 },
    tree: (
      <div
        style={{ display: 'flex', width: '100%', height: '100%', alignItems: 'center', position: 'relative' }}
      >
        <Rule color="#c4c4c4" />
        <Lines
          lines={[String(number)]}
          style={{ ...style, color: '#595959' }}
          box={{ width: mm(textMm * 2.4) }}
        />
        <TickBox sizeMm={textMm} />
        <Lines
          lines={[word]}
          style={{ sizeMm: textMm * 1.15, weight: 700 }}
          box={{ width: mm(leftMm - textMm * 4.4), marginLeft: mm(textMm) }}
        />
        <Lines lines={lines} style={style} />
      </div>
    ),
  }
}
