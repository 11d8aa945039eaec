import type { Size } from '../../src/geometry.js'
import { fail, succeed } from '../../src/outcomes.js'
import { type CardFace, mm, type SlotContent } from '../../src/pieces/faces/face.js'
import { OverlaySlot, Slot } from '../../src/pieces/faces/slot.js'
import { facesAlike } from '../../src/pieces/parts/card-face.js'
import { contentRoom } from '../../src/pieces/parts/card-frame.js'
import { type Picture, pictureSlot } from '../../src/pieces/parts/picture-slot.js'
import { balancedLines } from '../../src/pieces/text/balanced-lines.js'
import { linesHeight } from '../../src/pieces/text/break-lines.js'
import { fitTexts } from '../../src/pieces/text/fit-texts.js'
import { Lines } from '../../src/pieces/text/lines.js'
import { errorAt, type Outcome, type Problem } from '../../src/problems.js'
import type { CardSet } from '../../src/sets/card-set.js'
import type { SortHeading } from '../../src/sets/sorts/sort-heading.js'
import { wordSlot } from '../one-card-a-word.js'
import { LabelledRow, leastWriting, WritingRow } from '../writing/writing-lines.js'
import type { SortRequest } from './chosen-headings.js'
import { drawColumns } from './columns-art.js'
import { planRows, type RowPlan, type SortSheet } from './sheet-rows.js'

/** Of the sheet's height, for the headings. */
const HEAD_SHARE = 0.13
/** Of a heading's height, for the em of its key word: room for what stands above and below its letters, and marks. */
const HEAD_WORD_SHARE = 0.62
/** Above and below what a heading says, together. */
const HEAD_WHITE_MM = 3
const HEAD_MM = { least: 15, most: 36 }

/** The same sheet for every copy; an error where a heading or the lines have no room. */
export function sortSheetFaces(
  request: SortRequest,
  set: CardSet,
  { size, sheet }: { readonly size: Size; readonly sheet: SortSheet },
): Outcome<readonly CardFace[]> {
  const { type, item, measure } = request
  const { headings } = sheet
  const room = contentRoom(size, item.border, type)
  const wantedMm = Math.min(HEAD_MM.most, Math.max(HEAD_MM.least, size.heightMm * HEAD_SHARE))
  const headMm = Math.max(wantedMm, linesHeight(2, type.textMm) + HEAD_WHITE_MM)
  const head = { widthMm: room.widthMm / headings.length - 5, heightMm: headMm - HEAD_WHITE_MM }
  const fit = fitTexts({
    texts: headings.flatMap(({ title, keyWord }) =>
      keyWord === undefined ? [{ text: title, on: 'a heading', room: head }] : [],
    ),
    minimumMm: type.textMm,
    maximumMm: Math.min(type.wordMaximumMm, headMm * 0.55),
    weight: 700,
    measure,
    place: item.place,
  })
  if (!fit.ok) return fit
  const plan = planRows(request, sheet, { room, headMm })
  if (plan.lineMm < leastWriting(type) && sheet.linesEach > 0)
    return fail(noRoomForLines(request, sheet, plan))
  return succeed(
    facesAlike({
      ...request,
      set,
      size,
      border: item.border,
      text: headings.map(({ title, keyWord }) => keyWord?.text ?? title),
      content: (
        <Columns
          sheet={sheet}
          plan={plan}
          pictured={headings.map(heading => pictureOver(request, heading) !== undefined)}
        />
      ),
      slots: { ...headSlots(request, sheet, { head, titleMm: fit.value }), columns: columnsSlot(plan) },
    }),
  )
}

function noRoomForLines({ item, type }: SortRequest, { linesEach }: SortSheet, { lineMm }: RowPlan): Problem {
  return errorAt(
    item.place,
    `the ${linesEach} lines of a column would be ${lineMm.toFixed(1)} mm apart, and ${leastWriting(type).toFixed(0)} mm is the least to write on`,
    'Choose a sort with shorter columns, larger paper, or fewer on a sheet.',
  )
}

function headSlots(
  request: SortRequest,
  { headings }: SortSheet,
  { head, titleMm }: { readonly head: Size; readonly titleMm: number },
): Readonly<Record<string, SlotContent>> {
  const { measure } = request
  const style = { sizeMm: titleMm, weight: 700, align: 'centre' } as const
  return Object.fromEntries(
    headings.flatMap(({ title, keyWord }, index): [string, SlotContent][] => {
      if (keyWord === undefined)
        return [
          [
            `head ${index}`,
            { kind: 'text', lines: balancedLines(title, head.widthMm, style, measure), style },
          ],
        ]
      const picture = pictureOver(request, { keyWord })
      const place = { align: 'centre', paddingMm: 2, paddingAboveMm: 1.5 } as const
      const word = { ...wordSlot(request, keyWord, place), maximumMm: head.heightMm * HEAD_WORD_SHARE }
      return [
        [`head ${index}`, word],
        ...(picture === undefined
          ? []
          : [[`picture ${index}`, pictureSlot(picture, keyWord.text)] satisfies [string, SlotContent]]),
      ]
    }),
  )
}

function pictureOver(
  { options, pictureOf }: SortRequest,
  { keyWord }: Pick<SortHeading, 'keyWord'>,
): Picture | undefined {
  return options.headers === 'key picture' && keyWord !== undefined ? pictureOf(keyWord) : undefined
}

function columnsSlot({ headMm, columns }: RowPlan): SlotContent {
  return { kind: 'art', draw: room => drawColumns(room, columns, headMm) }
}

interface ColumnsShown {
  readonly sheet: SortSheet
  readonly plan: RowPlan
  /** Whether a picture stands beside the key word, for each heading. */
  readonly pictured: readonly boolean[]
}

function Columns({ sheet: { headings, linesEach, named }, plan, pictured }: ColumnsShown) {
  const { room, headMm, nameMm, bodyMm, lineMm, textMm, asked } = plan
  const width = mm(room.widthMm / headings.length)
  return (
    <div style={{ display: 'flex', flexDirection: 'column', flexGrow: 1, width: '100%' }}>
      {named && (
        <div
          style={{
            display: 'flex',
            flexDirection: 'column',
            width: '100%',
            paddingBottom: mm(nameMm * 0.22),
          }}
        >
          <LabelledRow label="Name" heightMm={nameMm * 0.78} sizeMm={textMm} />
        </div>
      )}
      <div style={{ display: 'flex', position: 'relative', height: mm(headMm + bodyMm), width: '100%' }}>
        <OverlaySlot name="columns" />
        {headings.map((_, index) => (
          <div style={{ display: 'flex', flexDirection: 'column', width }}>
            <div style={{ display: 'flex', height: mm(headMm), width: '100%', alignItems: 'center' }}>
              {pictured[index] === true && (
                <Slot
                  name={`picture ${index}`}
                  style={{ width: '34%', height: '80%', marginLeft: mm(2), flexShrink: 0 }}
                />
              )}
              <Slot name={`head ${index}`} style={{ flexGrow: 1, height: '100%' }} />
            </div>
            {Array.from({ length: linesEach }, () => (
              <WritingRow heightMm={lineMm} />
            ))}
          </div>
        ))}
      </div>
      {asked.map(({ lines, writing }) => (
        <div style={{ display: 'flex', flexDirection: 'column', width: '100%' }}>
          <Lines lines={lines} style={{ sizeMm: textMm }} box={{ marginTop: mm(textMm * 0.5) }} />
          {Array.from({ length: writing }, () => (
            <WritingRow heightMm={lineMm} />
          ))}
        </div>
      ))}
    </div>
  )
}
