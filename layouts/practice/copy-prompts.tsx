/** Words to look at, cover, write and check: the four steps are common practice, no source. */
import { mm } from '../../src/pieces/faces/face.js'
import { Slot } from '../../src/pieces/faces/slot.js'
import { drawWritingLine, TickBox } from '../../src/pieces/parts/rules.js'
import { childTextMm, type PracticeKind } from './practice-kind.js'
import type { PracticeRequest } from './practice-options.js'
import { columnHeads, promptRow, rowHeightFor, wordColumns, wordPart } from './prompt-row.js'

export const copy: PracticeKind = {
  title: 'Look, cover, write, check',
  task: () => 'Look at the word. Cover it. Write it. Then check, and tick the box.',
  practice: ({ words }) => ({
    items: words.map(word => ({ word, prompt: word.text, answer: word.text })),
    leftOut: [],
  }),
  nothing: { message: 'there is no word to copy', advice: 'Give the plan words.' },
  rows: (request, prompts) => {
    const { items, from, fillMm, leastWord } = prompts
    const columns = wordColumns(request, prompts)
    const { numberMm, promptMm, gapMm, answerMm, stacked } = columns
    const tries = stacked || request.type.large ? 1 : 2
    const tickMm = Math.min(MOST_TICK_MM, childTextMm(request))
    const lineMm = (answerMm - tries * (tickMm + TICK_GAP_MM) - (tries - 1) * TRY_GAP_MM) / tries
    const tryMm = lineMm + TICK_GAP_MM + tickMm
    const heads = stacked
      ? []
      : [
          columnHeads(request, [
            { text: '', widthMm: numberMm },
            { text: 'look', widthMm: promptMm + gapMm },
            ...['cover, write, check', 'once more'].slice(0, tries).map((text, index) => ({
              text,
              widthMm: index + 1 < tries ? tryMm + TRY_GAP_MM : tryMm,
            })),
          ]),
        ]
    const heightMm = rowHeightFor(request, {
      count: items.length * (stacked ? 2 : 1),
      roomMm: fillMm - heads.reduce((sum, row) => sum + row.heightMm, 0),
      leastMm: leastWord.heightMm,
    })
    return [
      ...heads,
      ...items.map(({ word }, index) => {
        const number = from + index
        const name = `word ${number}`
        return promptRow(request, {
          number,
          columns,
          promptHeightMm: heightMm,
          answerHeightMm: heightMm,
          prompt: wordPart(request, word, { name, heightMm, widthMm: promptMm }),
          answer: triesPart({
            number,
            tries,
            lineMm,
            tickMm,
            heightMm,
            ...(stacked ? {} : { levelWith: name }),
          }),
          levelWith: name,
        })
      }),
    ]
  },
  heads: ['word', 'written'],
  about: (request: PracticeRequest) => [
    'Look, cover, write, check is common practice; we know of no source for it. Fold the page behind the words, or lay a strip of card over them.',
    ...(request.marked ? [] : ['Write marks: all, and the words to look at have their marks.']),
  ],
}

const MOST_TICK_MM = 6
const TICK_GAP_MM = 2
const TRY_GAP_MM = 5

interface Tries {
  readonly number: number
  readonly tries: number
  readonly lineMm: number
  readonly tickMm: number
  readonly heightMm: number
  readonly levelWith?: string
}

/** A line and a box to tick, once or twice. */
function triesPart({ number, tries, lineMm, tickMm, heightMm, levelWith }: Tries) {
  const names = Array.from({ length: tries }, (_, index) => `line ${number} ${index + 1}`)
  return {
    slots: Object.fromEntries(
      names.map(name => [
        name,
        {
          kind: 'art' as const,
          draw: drawWritingLine,
          ...(levelWith === undefined ? {} : { levelWith }),
        },
      ]),
    ),
    tree: (
      <div style={{ display: 'flex', width: '100%', height: '100%', alignItems: 'center' }}>
        {names.map((name, index) => (
          <div style={{ display: 'flex', height: '100%', alignItems: 'center' }}>
            <Slot
              name={name}
              style={{
                width: mm(lineMm),
                height: levelWith === undefined ? mm(1) : '100%',
                marginRight: mm(TICK_GAP_MM),
                marginTop: mm(levelWith === undefined ? heightMm * 0.6 : 0),
              }}
            />
            <TickBox sizeMm={tickMm} />
            {index + 1 < tries ? <div style={{ display: 'flex', width: mm(TRY_GAP_MM) }} /> : null}
          </div>
        ))}
      </div>
    ),
  }
}
