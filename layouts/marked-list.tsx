import { mm } from '../src/pieces/face.js'
import { flowPages, type Row } from '../src/pieces/flow-page.js'
import { keyRows } from '../src/pieces/key-rows.js'
import { breakLinesWithin, Lines } from '../src/pieces/text-lines.js'
import { wordListMeasure, wordListRow } from '../src/pieces/word-list-row.js'
import type { Word } from '../src/words/word.js'
import type { LayoutRequest, PageLayout } from './layout.js'

/** What the list says of a word, left to right, each with its share of the room beside the word. */
const columns: readonly { heading: string; share: number; of: (word: Word) => readonly string[] }[] = [
  { heading: 'sounds', share: 0.24, of: word => [`${word.soundCount}: ${soundsOf(word)}`] },
  { heading: 'part of speech', share: 0.19, of: word => [word.partsOfSpeech.slice(0, 2).join(', ')] },
  {
    heading: 'plural',
    share: 0.25,
    of: word => (word.plural ? [word.plural.form, word.plural.rule] : ['–']),
  },
  { heading: 'clue', share: 0.32, of: word => [word.clue ?? ''] },
]

/** The teacher's copy: every word marked, with its sounds, part of speech, plural and clue. */
export const markedList: PageLayout = {
  kind: 'pages',
  name: 'marked-list',
  summary: 'the teacher’s copy: every word marked, sounds counted, part of speech, plural, clue',
  options: {},
  marks: 'all',
  pages: (request, room) => {
    const { words, marked, type, plan } = request
    const measure = wordListMeasure(type, room.widthMm)
    const rows: Row[] = [
      headingRow(request, measure.restWidthMm, measure.numberWidthMm + measure.wordWidthMm),
      ...words.map((word, index) =>
        wordListRow({
          word,
          number: index + 1,
          marked,
          measure,
          type,
          rest: factsOf(request, word, measure.restWidthMm),
        }),
      ),
      ...keyRows(request, room.widthMm),
    ]
    const title = `${plan.title}: marked list`
    return flowPages({
      heading: { title, subtitle: request.subtitle, textMm: type.adultTextMm },
      rows,
      room,
    }).map(face => ({ ...face, kind: 'list', title }))
  },
}

/** `th·r·ea·d`, and a plain word where the division is only a guess. */
function soundsOf(word: Word): string {
  const division = word.graphemes.map(grapheme => grapheme.letters).join('·')
  return word.source === 'guess' ? `${division} (a guess)` : division
}

function headingRow({ type }: LayoutRequest, restWidthMm: number, leftMm: number): Row {
  const style = { sizeMm: type.adultTextMm * 0.9, weight: 700 as const }
  return {
    heightMm: type.adultTextMm * 1.8,
    tree: (
      <div style={{ display: 'flex', width: '100%', boxSizing: 'border-box', paddingLeft: mm(leftMm) }}>
        {columns.map(column => (
          <Lines lines={[column.heading]} style={style} box={{ width: mm(restWidthMm * column.share) }} />
        ))}
      </div>
    ),
  }
}

function factsOf({ type, measure }: LayoutRequest, word: Word, widthMm: number) {
  const style = { sizeMm: type.adultTextMm * 0.9 }
  return (
    <div style={{ display: 'flex', width: '100%', alignItems: 'center' }}>
      {columns.map(column => {
        const columnMm = widthMm * column.share
        const lines = column
          .of(word)
          .flatMap(text => breakLinesWithin(text, { widthMm: columnMm - 2, maximum: 2 }, style, measure))
        return <Lines lines={lines.slice(0, 2)} style={style} box={{ width: mm(columnMm) }} />
      })}
    </div>
  )
}
