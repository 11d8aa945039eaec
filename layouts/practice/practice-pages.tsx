/** The child's pages of a practice, and the teacher's with the answers. */
import type { Size } from '../../src/geometry.js'
import type { Face } from '../../src/pieces/faces/face.js'
import { flowPages, type Heading, headingHeight, type Row } from '../../src/pieces/faces/flow-page.js'
import { tableRows, textRow, whiteRow } from '../../src/pieces/parts/table-rows.js'
import { balancedLines } from '../../src/pieces/text/balanced-lines.js'
import { linesHeight } from '../../src/pieces/text/break-lines.js'
import { Lines } from '../../src/pieces/text/lines.js'
import type { Practice, PracticeItem } from '../../src/sets/practice/practice.js'
import { grownUpPages } from '../grown-up-pages.js'
import type { PageFace } from '../layout.js'
import { childTextMm, type PracticeKind } from './practice-kind.js'
import type { PracticeRequest } from './practice-options.js'
import { roomForWords } from './prompt-row.js'

interface PracticeOnPages<P extends Practice> {
  readonly kind: PracticeKind<P>
  readonly practice: P
  readonly room: Size
}

export function practicePages<P extends Practice>(
  request: PracticeRequest,
  onPages: PracticeOnPages<P>,
): readonly PageFace[] {
  return [...childPages(request, onPages), ...answerPages(request, onPages)]
}

/** A page a share of the prompts; of more than one, each has its number behind the title. */
function childPages<P extends Practice>(
  request: PracticeRequest,
  { kind, practice, room }: PracticeOnPages<P>,
): readonly PageFace[] {
  const shares = evenShares(practice.items, request.options.prompts)
  const title = `${request.plan.title}: ${request.itemTitle}`
  const leastWord = roomForWords(
    request,
    practice.items.map(({ word }) => word),
  )
  return shares.flatMap((items, index) => {
    const before = shares.slice(0, index).reduce((sum, share) => sum + share.length, 0)
    const heading = headingOf(request, shares.length > 1 ? `${kind.title} ${index + 1}` : kind.title)
    const task = taskRow(request, kind.task(request, practice), room)
    const roomMm = room.heightMm - headingHeight(heading, room.widthMm) - task.heightMm
    const prompts = { practice, items, leastWord, from: before + 1, room: { ...room, heightMm: roomMm } }
    const pagesFilling = (fillMm: number) => {
      const rows = kind.rows(request, { ...prompts, fillMm })
      return flowPages({ heading, rows: [task, ...rows], room })
    }
    return onFilledPages(pagesFilling, roomMm).map(face => ({ ...face, kind: 'practice' as const, title }))
  })
}

/** Rows that need several pages are as high as they can be without one page more. */
function onFilledPages(pagesFilling: (fillMm: number) => readonly Face[], roomMm: number): readonly Face[] {
  let enough = pagesFilling(roomMm)
  const { length } = enough
  if (length < 2) return enough
  let [low, tooMuch] = [roomMm, roomMm * length]
  while (tooMuch - low > roomMm / 50) {
    const middle = (low + tooMuch) / 2
    const tried = pagesFilling(middle)
    if (tried.length > length) tooMuch = middle
    else [low, enough] = [middle, tried]
  }
  return enough
}

function headingOf(request: PracticeRequest, title: string): Heading {
  const { type, measure } = request
  return {
    title,
    subtitle: 'Name',
    textMm: childTextMm(request),
    measure,
    lineAfterSubtitle: type.large ? 'beside the title' : 'below the title',
  }
}

/** Of a page: a task that takes more stands on the first page alone. */
const MOST_REPEATED = 0.12
const BELOW_TASK = 0.85

function taskRow(request: PracticeRequest, task: string, room: Size): Row {
  const sizeMm = childTextMm(request)
  const lines = balancedLines(task, room.widthMm, { sizeMm }, request.measure)
  const heightMm = linesHeight(lines.length, sizeMm) + sizeMm * BELOW_TASK
  return {
    heightMm,
    tree: <Lines lines={lines} style={{ sizeMm }} />,
    ...(heightMm <= room.heightMm * MOST_REPEATED ? { heads: true } : {}),
  }
}

/** As few pages as hold the prompts, so many on each at most, and no page a remnant. */
function evenShares(items: readonly PracticeItem[], most: number): readonly (readonly PracticeItem[])[] {
  const pages = Math.ceil(items.length / most)
  const from = (page: number) => Math.round((page * items.length) / pages)
  return Array.from({ length: pages }, (_, page) => items.slice(from(page), from(page + 1)))
}

function answerPages<P extends Practice>(
  request: PracticeRequest,
  { kind, practice, room }: PracticeOnPages<P>,
): readonly PageFace[] {
  const { type, measure } = request
  const { widthMm } = room
  const style = { sizeMm: type.adultTextMm }
  const paragraph = (text: string) => textRow(text, { style, widthMm, measure })
  const table =
    kind.answerRows?.(request, practice, widthMm) ?? answerTable(request, practice.items, kind.heads, widthMm)
  const told = [...(kind.about?.(request, practice) ?? []), ...leftOutInWords(practice)].map(paragraph)
  const note = leftOutInWords(practice)
  const rows = [...table, ...(told.length === 0 ? [] : [whiteRow(style.sizeMm)]), ...told]
  return grownUpPages(request, { kind: 'answers', what: `answers to “${kind.title}”`, rows, room }).map(
    (face, page) => ({
      ...face,
      ...(page > 0 || note.length === 0 ? {} : { note: note.join(' ') }),
    }),
  )
}

function answerTable(
  { type, measure }: PracticeRequest,
  items: readonly PracticeItem[],
  [prompt, answer]: readonly [string, string],
  widthMm: number,
): readonly Row[] {
  const hasRules = items.some(({ why }) => why !== undefined)
  const isWordy = items.some(each => each.prompt.length > MOST_IN_COLUMN)
  const [promptShare, answerShare] = hasRules ? [0.25, 0.27] : isWordy ? [0.62, 0.32] : [0.34, 0.6]
  return tableRows({
    columns: [
      { heading: '', share: 0.06 },
      { heading: prompt, share: promptShare },
      { heading: answer, share: answerShare },
      ...(hasRules ? [{ heading: 'rule', share: 0.42 }] : []),
    ],
    cells: items.map((item, index) => [
      String(index + 1),
      item.added === true ? `${item.prompt} (added)` : item.prompt,
      item.answer,
      ...(hasRules ? [item.why ?? ''] : []),
    ]),
    widthMm,
    textMm: type.adultTextMm,
    measure,
  })
}

const MOST_IN_COLUMN = 24

/** So many words are named in a paragraph, so that it has room on a page. */
const MOST_IN_PARAGRAPH = 60

/** `Left out: reed, gnat (no clue).` */
function leftOutInWords({ leftOut }: Practice): readonly string[] {
  const paragraphs = Math.ceil(leftOut.length / MOST_IN_PARAGRAPH)
  return Array.from({ length: paragraphs }, (_, paragraph) => {
    const some = leftOut.slice(paragraph * MOST_IN_PARAGRAPH, (paragraph + 1) * MOST_IN_PARAGRAPH)
    const reasons = [...new Set(some.map(({ why }) => why))]
    const told = reasons.map(reason => {
      const words = some.flatMap(({ word, why }) => (why === reason ? [word] : []))
      return `${words.join(', ')} (${reason})`
    })
    return `Left out: ${told.join('; ')}.`
  })
}
