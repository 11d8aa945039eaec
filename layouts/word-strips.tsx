import type { Size } from '../src/geometry.js'
import { type CardFace, mm } from '../src/pieces/faces/face.js'
import { Slot } from '../src/pieces/faces/slot.js'
import { contentRoom } from '../src/pieces/parts/card-frame.js'
import { drawWritingLine } from '../src/pieces/parts/rules.js'
import { linesHeight } from '../src/pieces/text/break-lines.js'
import { Lines } from '../src/pieces/text/lines.js'
import type { TypeScale } from '../src/pieces/text/type-scale.js'
import { choice, option } from '../src/plan/values/options.js'
import type { Card, CardSet } from '../src/sets/card-set.js'
import { grownUpPages } from './grown-up-pages.js'
import { defineLayout, type RequestWith } from './layout.js'
import { oneCardAWord, wordCardFace } from './one-card-a-word.js'
import { stripAnswers } from './strip-answers.js'

const options = {
  write: option(
    'what the children write on the line; the strip says so',
    choice(['sounds', 'syllables', 'word', 'nothing'], 'sounds'),
    { example: 'syllables' },
  ),
}

type StripRequest = RequestWith<typeof options>

/** Long narrow strips, a word each, with a line to write its sounds or syllables on, or to copy it. */
export const wordStrips = defineLayout({
  kind: 'pieces',
  name: 'word-strips',
  summary: 'long strips, one word each, with a line to write its sounds or syllables on, or to copy it',
  inWeek: { day: 'practice', given: 'each child' },
  options,
  marks: 'all',
  perSheet: { columns: 1, rows: 8 },
  perSheetLarge: { columns: 1, rows: 5 },
  set: oneCardAWord,
  face: stripFace,
  pages: (request, set, room) => {
    const { type, measure, options } = request
    const asks = options.write
    if (asks !== 'sounds' && asks !== 'syllables') return []
    const rows = stripAnswers({ set, asks, widthMm: room.widthMm, textMm: type.adultTextMm, measure })
    return grownUpPages(request, { kind: 'answers', what: 'answers', rows, room })
  },
})

/** White between the strip's left edge, or its border, and the room for the word. */
const BESIDE_MM = 2
/** White between the word and what to write, in ems of that. */
const WHITE_EM = 0.4
/** Of the strip's width. */
const WORD_SHARE = 0.42

function stripFace(request: StripRequest, card: Card, set: CardSet, size: Size): CardFace {
  const { type, item, options, measure } = request
  const task = options.write
  const isBeside = task !== 'nothing' && !hasLineBelow(type, size)
  const label = { sizeMm: type.textMm, color: LABEL_COLOR }
  const { widthMm } = contentRoom(size, item.border, type)
  const wordWidth = task === 'nothing' ? '100%' : mm((widthMm - BESIDE_MM) * WORD_SHARE)
  return wordCardFace(request, {
    card,
    set,
    size,
    place: { align: 'left', paddingMm: 2 },
    content: (
      <div
        style={{
          display: 'flex',
          flexGrow: 1,
          flexBasis: 0,
          minHeight: 0,
          width: '100%',
          paddingLeft: mm(BESIDE_MM),
          boxSizing: 'border-box',
        }}
      >
        <Slot name="word" style={{ width: wordWidth, height: '100%', flexShrink: 0 }} />
        {task === 'nothing' ? null : isBeside ? (
          <BesideTheLine labelMm={measure(task, type.textMm)} type={type} />
        ) : (
          <WritingRoom task={task} type={type} />
        )}
      </div>
    ),
    moreSlots: {
      ...(task === 'nothing' ? {} : { line: { kind: 'art', levelWith: 'word', draw: drawWritingLine } }),
      ...(isBeside ? { label: { kind: 'text', levelWith: 'word', lines: [task], style: label } } : {}),
    },
  })
}

const LABEL_COLOR = '#404040'
/** Of a strip's padding above what to write. */
const ABOVE_LABEL_MM = 1.5

/** Whether what to write stands above the line, which is level with the word in the middle of the strip. */
function hasLineBelow({ textMm }: TypeScale, { heightMm }: Size): boolean {
  return ABOVE_LABEL_MM + linesHeight(1, textMm) <= heightMm / 2
}

/** In very large print what to write has no room above the line: it stands before it, all on the word's baseline. */
function BesideTheLine({ labelMm, type }: { readonly labelMm: number; readonly type: TypeScale }) {
  const whiteMm = type.textMm * WHITE_EM
  return (
    <div style={{ display: 'flex', flexGrow: 1, paddingLeft: mm(whiteMm), paddingRight: mm(ABOVE_LABEL_MM) }}>
      <Slot name="label" style={{ width: mm(labelMm + whiteMm), height: '100%', flexShrink: 0 }} />
      <Slot name="line" style={{ flexGrow: 1, height: '100%' }} />
    </div>
  )
}

/** What to write, and a line to write on, level with the word: both have one baseline. */
function WritingRoom({ task, type }: { readonly task: string; readonly type: TypeScale }) {
  return (
    <div
      style={{
        display: 'flex',
        flexDirection: 'column',
        flexGrow: 1,
        padding: mm(ABOVE_LABEL_MM),
        paddingLeft: mm(Math.max(ABOVE_LABEL_MM, type.textMm * WHITE_EM)),
      }}
    >
      <Lines lines={[task]} style={{ sizeMm: type.textMm, color: LABEL_COLOR }} />
      <Slot name="line" style={{ flexGrow: 1, width: '100%' }} />
    </div>
  )
}
