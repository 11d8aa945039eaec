import { mm } from '../faces/face.js'
import type { Row } from '../faces/flow-page.js'
import { breakLines, linesHeight, type TextMeasure, type TextStyle } from '../text/break-lines.js'
import { Lines } from '../text/lines.js'
import { Rule } from './rules.js'

export interface TableColumn {
  /** Bold, over the column; empty where it needs none. */
  readonly heading: string
  /** Share of the table's width. */
  readonly share: number
}

export interface TableRequest {
  readonly columns: readonly TableColumn[]
  /** A row's cells, as many as there are columns. */
  readonly cells: readonly (readonly string[])[]
  readonly widthMm: number
  readonly textMm: number
  readonly measure: TextMeasure
}

/** Between a cell's text and the next cell. */
const GUTTER_MM = 3

/** A table for a grown-up's page: every cell as many lines as it needs, a rule under each row. */
export function tableRows(request: TableRequest): readonly Row[] {
  const headings = request.columns.map(column => column.heading)
  const anyHeading = headings.some(heading => heading !== '')
  return [
    ...(anyHeading ? [tableRow(request, headings, 700)] : []),
    ...request.cells.map(cells => tableRow(request, cells, 400)),
  ]
}

function tableRow(
  { columns, widthMm, textMm, measure }: TableRequest,
  cells: readonly string[],
  weight: 400 | 700,
): Row {
  const style: TextStyle = { sizeMm: textMm, weight }
  const widths = columns.map(column => widthMm * column.share)
  const lines = cells.map((cell, index) => breakLines(cell, widths[index]! - GUTTER_MM, style, measure))
  const most = Math.max(1, ...lines.map(each => each.length))
  return {
    heightMm: linesHeight(most, textMm) + textMm * 0.5,
    cells: { leftsMm: leftsOf(widths), headings: weight === 700 ? 'all' : 0 },
    ...(weight === 700 ? { heads: true } : {}),
    tree: (
      <div
        style={{ display: 'flex', width: '100%', height: '100%', alignItems: 'center', position: 'relative' }}
      >
        <Rule color={weight === 700 ? '#595959' : '#c4c4c4'} />
        {lines.map((each, index) => (
          <Lines lines={each} style={style} box={{ width: mm(widths[index]!) }} />
        ))}
      </div>
    ),
  }
}

/** Where columns of these widths begin. */
export function leftsOf(widthsMm: readonly number[]): readonly number[] {
  return widthsMm.map((_, index) => widthsMm.slice(0, index).reduce((sum, width) => sum + width, 0))
}

/** White between one thing and the next on a page. */
export function whiteRow(heightMm: number): Row {
  return { heightMm, tree: <div style={{ display: 'flex' }} /> }
}

/** A paragraph behind its number, whose further lines stand below its first and not below the number. */
export function numberedRow(
  number: number,
  text: string,
  { style, widthMm, measure }: { style: TextStyle; widthMm: number; measure: TextMeasure },
): Row {
  const indentMm = style.sizeMm * 1.1
  const lines = breakLines(text, widthMm - indentMm, style, measure)
  return {
    heightMm: linesHeight(lines.length, style.sizeMm) + style.sizeMm * 0.5,
    tree: (
      <div style={{ display: 'flex', width: '100%' }}>
        <Lines lines={[String(number)]} style={style} box={{ width: mm(indentMm) }} />
        <Lines lines={lines} style={style} />
      </div>
    ),
  }
}

/** A paragraph of a grown-up's page, as a row. */
export function textRow(
  text: string,
  { style, widthMm, measure }: { style: TextStyle; widthMm: number; measure: TextMeasure },
): Row {
  const lines = breakLines(text, widthMm, style, measure)
  return {
    heightMm: linesHeight(lines.length, style.sizeMm) + style.sizeMm * 0.5,
    tree: <Lines lines={lines} style={style} />,
  }
}
