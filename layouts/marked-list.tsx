import { mm } from '../src/pieces/face.js'
import type { Heading } from '../src/pieces/flow-page.js'
import { keyRows } from '../src/pieces/key-rows.js'
import { breakLines, Lines, linesHeight, type TextStyle } from '../src/pieces/text-lines.js'
import { wordListPages } from '../src/pieces/word-list.js'
import type { Word } from '../src/words/word.js'
import type { LayoutRequest, PageLayout } from './layout.js'

/** What the list says of a word, left to right, each with its share of the room beside the word. */
const columns: readonly { heading: string; share: number; of: (word: Word) => readonly string[] }[] = [
  { heading: 'sounds', share: 0.22, of: word => [`${word.soundCount}: ${soundsOf(word)}`] },
  { heading: 'part of speech', share: 0.18, of: word => [word.partsOfSpeech.slice(0, 2).join(', ')] },
  { heading: 'plural', share: 0.32, of: pluralOf },
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
    const { words, marked, type } = request
    const heading = markedListHeading(request)
    return wordListPages({
      words,
      type,
      marked,
      heading,
      room,
      columnHeadings: widthMm => <ColumnHeadings request={request} widthMm={widthMm} />,
      beside: (word, widthMm) => factsOf(request, word, widthMm),
      besideHeightMm: (word, widthMm) => factsHeight(request, word, widthMm),
      keyRows: keyRows(request, room.widthMm),
    }).map(face => ({ ...face, kind: 'list', title: heading.title }))
  },
}

/** The blank list keeps as much room for its own. */
export function markedListHeading({ plan, subtitle, type, measure }: LayoutRequest): Heading {
  return { title: `${plan.title}: marked list`, subtitle, textMm: type.listTextMm, measure }
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

const factStyle = (type: LayoutRequest['type']): TextStyle => ({ sizeMm: type.adultTextMm * 0.9 })
/** Between one column and the next. */
const COLUMN_GAP_MM = 2

function ColumnHeadings({ request, widthMm }: { readonly request: LayoutRequest; readonly widthMm: number }) {
  const style: TextStyle = { ...factStyle(request.type), weight: 700 }
  return (
    <div style={{ display: 'flex', width: '100%', alignItems: 'flex-end' }}>
      {columns.map(({ heading, share }) => (
        <Lines
          lines={breakLines(heading, widthMm * share - COLUMN_GAP_MM, style, request.measure)}
          style={style}
          box={{ width: mm(widthMm * share) }}
        />
      ))}
    </div>
  )
}

/** Nothing is shortened: the row grows with what is said of its word. */
function factLines({ type, measure }: LayoutRequest, word: Word, widthMm: number) {
  return columns.map(column =>
    column
      .of(word)
      .flatMap(text => breakLines(text, widthMm * column.share - COLUMN_GAP_MM, factStyle(type), measure)),
  )
}

export function factsHeight(request: LayoutRequest, word: Word, widthMm: number): number {
  const lines = Math.max(...factLines(request, word, widthMm).map(column => column.length))
  return linesHeight(lines, factStyle(request.type).sizeMm)
}

function factsOf(request: LayoutRequest, word: Word, widthMm: number) {
  return (
    <div style={{ display: 'flex', width: '100%', alignItems: 'center' }}>
      {factLines(request, word, widthMm).map((lines, index) => (
        <Lines
          lines={lines}
          style={factStyle(request.type)}
          box={{ width: mm(widthMm * columns[index]!.share) }}
        />
      ))}
    </div>
  )
}
