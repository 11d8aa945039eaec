import { mm } from '../src/pieces/face.js'
import { keyRows } from '../src/pieces/key-rows.js'
import { breakLinesWithin, Lines, type TextStyle } from '../src/pieces/text-lines.js'
import { wordListPages } from '../src/pieces/word-list.js'
import type { Word } from '../src/words/word.js'
import type { LayoutRequest, PageLayout } from './layout.js'

/** What the list says of a word, left to right, each with its share of the room beside the word. */
const columns: readonly { heading: string; share: number; of: (word: Word) => readonly string[] }[] = [
  { heading: 'sounds', share: 0.21, of: word => [`${word.soundCount}: ${soundsOf(word)}`] },
  { heading: 'part of speech', share: 0.17, of: word => [word.partsOfSpeech.slice(0, 2).join(', ')] },
  { heading: 'plural', share: 0.34, of: pluralOf },
  { heading: 'clue', share: 0.28, of: word => [word.clue ?? ''] },
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
    const title = `${plan.title}: marked list`
    return wordListPages({
      words,
      type,
      marked,
      heading: { title, subtitle: request.subtitle, textMm: type.adultTextMm },
      room,
      columnHeadings: widthMm => <ColumnHeadings sizeMm={type.adultTextMm * 0.9} widthMm={widthMm} />,
      beside: (word, widthMm) => factsOf(request, word, widthMm),
      keyRows: keyRows(request, room.widthMm),
    }).map(face => ({ ...face, kind: 'list', title }))
  },
}

/** `th·r·ea·d`, and said to be a guess where it is one. */
function soundsOf(word: Word): string {
  const division = word.graphemes.map(grapheme => grapheme.letters).join('·')
  return word.source === 'guess' ? `${division} (a guess)` : division
}

function pluralOf({ plural }: Word): readonly string[] {
  if (plural === null) return ['–']
  return [[plural.form, ...(plural.alternatives ?? [])].join(' or '), plural.rule]
}

function ColumnHeadings({ sizeMm, widthMm }: { readonly sizeMm: number; readonly widthMm: number }) {
  return (
    <div style={{ display: 'flex', width: '100%' }}>
      {columns.map(column => (
        <Lines
          lines={[column.heading]}
          style={{ sizeMm, weight: 700 }}
          box={{ width: mm(widthMm * column.share) }}
        />
      ))}
    </div>
  )
}

/** At most two lines a column, whatever has to be shortened for it. */
function factsOf({ type, measure }: LayoutRequest, word: Word, widthMm: number) {
  const style: TextStyle = { sizeMm: type.adultTextMm * 0.9 }
  return (
    <div style={{ display: 'flex', width: '100%', alignItems: 'center' }}>
      {columns.map(column => {
        const columnMm = widthMm * column.share
        const texts = column.of(word)
        const lines = texts.flatMap(text =>
          breakLinesWithin(
            text,
            { widthMm: columnMm - 2, maximum: texts.length > 1 ? 1 : 2 },
            style,
            measure,
          ),
        )
        return <Lines lines={lines} style={style} box={{ width: mm(columnMm) }} />
      })}
    </div>
  )
}
