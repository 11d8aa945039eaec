/** Words with room to mark them, under the key. */
import { mm } from '../../src/pieces/faces/face.js'
import { type Row, rowsHeight } from '../../src/pieces/faces/flow-page.js'
import { Slot } from '../../src/pieces/faces/slot.js'
import { targetsOf } from '../../src/pieces/marks/find-targets.js'
import { keyEntries } from '../../src/pieces/marks/key-entries.js'
import { keyRows } from '../../src/pieces/parts/key-rows.js'
import { leftsOf, whiteRow } from '../../src/pieces/parts/table-rows.js'
import { breakLines, linesHeight, type TextStyle } from '../../src/pieces/text/break-lines.js'
import { Lines } from '../../src/pieces/text/lines.js'
import { type Practice, partedByAsking } from '../../src/sets/practice/practice.js'
import type { Word } from '../../src/words/word.js'
import { leastRoom, listSlot } from '../word-lists/list-measure.js'
import { childTextMm, childWordMm, type PracticeKind } from './practice-kind.js'
import type { PracticeRequest } from './practice-options.js'
import { rowHeightFor } from './prompt-row.js'

/** What is right for a word that shows none of the marks. */
const NOTHING = 'nothing to mark'

export const marks: PracticeKind = {
  title: 'Read and mark',
  task: () => 'Look at the key. Read each word and mark it.',
  practice: request => markPractice(request),
  nothing: {
    message: 'no word of the list shows anything that the plan marks, so there is nothing to mark',
    advice: 'Give the plan marks that its words show; oaktag study tells what they show.',
  },
  rows: (request, { items, from, room, fillMm }) => {
    const { type, measure } = request
    const words = items.map(({ word }) => word)
    const key = keyRows(request, room.widthMm)
    const least = leastRoom({ ...request, words })
    const numberMm = measure('99', childTextMm(request)) + 3
    const wordMm = childWordMm(request) * LARGER
    const widest = Math.max(least.widthMm, ...words.map(({ text }) => measure(text, wordMm)))
    const columns = !type.large && numberMm + widest + GAP_MM <= room.widthMm / 2 ? 2 : 1
    const rows = Math.ceil(items.length / columns)
    const heightMm = rowHeightFor(request, {
      count: rows,
      roomMm: fillMm - rowsHeight(key) - AFTER_KEY_MM,
      mostMm: MOST_ROW_MM,
      leastMm: Math.max(least.heightMm, LEAST_ROW_MM),
    })
    return [
      ...key,
      whiteRow(AFTER_KEY_MM),
      ...Array.from({ length: rows }, (_, row) => {
        // Down the first column, then down the second.
        const placed = Array.from({ length: columns }, (_, column) => row + column * rows).filter(
          place => place < items.length,
        )
        const cell = {
          widthMm: room.widthMm / columns,
          heightMm,
          numberMm,
          wordMm: Math.min(wordMm, heightMm * WORD_SHARE),
        }
        return wordsRow(
          request,
          placed.map(place => ({ word: words[place]!, number: from + place })),
          cell,
        )
      }),
    ]
  },
  heads: ['word', 'marks'],
  answerRows: markedRows,
}

function markPractice(request: PracticeRequest): Practice {
  const { words, marks: styled } = request
  const entries = keyEntries(words, styled)
  const { asked, leftOut } = partedByAsking(words, word => ({ asked: marksInWords(word, entries) }))
  const anyMark = asked.some(({ asked: answer }) => answer !== NOTHING)
  return {
    items: anyMark ? asked.map(({ word, asked: answer }) => ({ word, prompt: word.text, answer })) : [],
    leftOut,
  }
}

/** `th: consonant digraph, ea: vowel team`; a mark of the whole word by its name alone. */
function marksInWords(word: Word, entries: ReturnType<typeof keyEntries>): string {
  const named = entries.flatMap(({ mark, label }) =>
    targetsOf(word, [mark]).map(({ ranges, team = ranges }) =>
      mark.mark.target.kind === 'word'
        ? label
        : `${team.map(({ start, end }) => word.text.slice(start, end)).join('_')}: ${label}`,
    ),
  )
  return named.length === 0 ? NOTHING : named.join(', ')
}

/** Words to mark are larger than words to copy, and further apart: a pencil works around them. */
const LARGER = 1.35
const LEAST_ROW_MM = 15
const MOST_ROW_MM = 29
const WORD_SHARE = 0.46
const GAP_MM = 8
const AFTER_KEY_MM = 6

interface MarkCell {
  readonly widthMm: number
  readonly heightMm: number
  readonly numberMm: number
  readonly wordMm: number
}

function wordsRow(
  request: PracticeRequest,
  cells: readonly { readonly word: Word; readonly number: number }[],
  { widthMm, heightMm, numberMm, wordMm }: MarkCell,
): Row {
  const style: TextStyle = { sizeMm: childTextMm(request), color: '#595959' }
  return {
    heightMm,
    slots: Object.assign(
      {},
      ...cells.map(({ word, number }) => ({
        [`word ${number}`]: { ...listSlot(word, false), maximumMm: wordMm },
        [`number ${number}`]: {
          kind: 'text',
          levelWith: `word ${number}`,
          lines: [String(number)],
          style,
        },
      })),
    ),
    tree: (
      <div style={{ display: 'flex', width: '100%', height: '100%' }}>
        {cells.map(({ number }) => (
          <div style={{ display: 'flex', width: mm(widthMm), height: '100%' }}>
            <Slot name={`number ${number}`} style={{ width: mm(numberMm), height: '100%', flexShrink: 0 }} />
            <Slot name={`word ${number}`} style={{ width: mm(widthMm - numberMm), height: '100%' }} />
          </div>
        ))}
      </div>
    ),
  }
}

/** For the teacher: each word marked, and its marks by name. */
function markedRows(request: PracticeRequest, { items }: Practice, widthMm: number): readonly Row[] {
  const { type, measure } = request
  const words = items.map(({ word }) => word)
  const least = leastRoom({ ...request, words })
  const style: TextStyle = { sizeMm: type.adultTextMm }
  const numberMm = measure('99', style.sizeMm) + 3
  const roomMm = widthMm - numberMm
  // Where a word takes most of the width, its marks are named below it.
  const stacked = least.widthMm > roomMm * 0.6
  const wordMm = stacked ? roomMm : Math.max(least.widthMm, roomMm * 0.34)
  const besideMm = stacked ? roomMm : roomMm - wordMm
  return items.map(({ word, answer }, index): Row => {
    const name = `marked ${index + 1}`
    const lines = breakLines(answer, besideMm, style, measure)
    const wordHeightMm = Math.max(least.heightMm, MARKED_ROW_MM)
    const textHeightMm = linesHeight(lines.length, style.sizeMm) + 1
    return {
      heightMm: stacked ? wordHeightMm + textHeightMm : Math.max(wordHeightMm, textHeightMm),
      ...(stacked ? {} : { cells: { leftsMm: leftsOf([numberMm, wordMm, besideMm]), headings: 1 } }),
      slots: {
        [name]: { ...listSlot(word, true), sizeGroup: 'answers', maximumMm: MARKED_ROW_MM * 0.5 },
        [`number ${name}`]: { kind: 'text', levelWith: name, lines: [String(index + 1)], style },
      },
      tree: (
        <div style={{ display: 'flex', width: '100%', height: '100%' }}>
          <Slot
            name={`number ${name}`}
            style={{ width: mm(numberMm), height: mm(wordHeightMm), flexShrink: 0 }}
          />
          <div
            style={{
              display: 'flex',
              flexDirection: stacked ? 'column' : 'row',
              alignItems: stacked ? 'flex-start' : 'center',
            }}
          >
            <Slot name={name} style={{ width: mm(wordMm), height: mm(wordHeightMm), flexShrink: 0 }} />
            <Lines lines={lines} style={style} />
          </div>
        </div>
      ),
    }
  })
}

const MARKED_ROW_MM = 12
