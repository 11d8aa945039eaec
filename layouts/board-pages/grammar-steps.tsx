/** Words under what they most often are; one and more than one with the rule. */
import type { Size } from '../../src/geometry.js'
import { mm } from '../../src/pieces/faces/face.js'
import { Slot } from '../../src/pieces/faces/slot.js'
import { breakLines, linesHeight, type TextStyle } from '../../src/pieces/text/break-lines.js'
import { Lines } from '../../src/pieces/text/lines.js'
import { pluralAsked } from '../../src/sets/practice/plurals.js'
import { isGuessed } from '../../src/sets/practice/practice.js'
import type { PartOfSpeech, Word } from '../../src/words/word.js'
import type { PageFace } from '../layout.js'
import { plainWord } from '../plain-word.js'
import { leastRoom, listSlot } from '../word-lists/list-measure.js'
import type { Board, BoardContent } from './board-key.js'
import { boardFace, contentRoom } from './board-page.js'
import { sharedOverPages, wordsInColumns } from './words-in-columns.js'

/** The words bare, then under the names of their parts of speech; none where all of them are one. */
export function kindPages(request: Board, room: Size): readonly PageFace[] {
  const words = request.words.filter(
    ({ partsOfSpeech, partsOfSpeechGuessed }) => partsOfSpeech.length > 0 && partsOfSpeechGuessed !== true,
  )
  const parts = [...new Set(words.map(({ partsOfSpeech }) => partsOfSpeech[0]!))]
  if (parts.length < 2) return []
  const inner = contentRoom(request, room, 'nothing')
  const bare = sharedOverPages(request, { words, marks: [] }, inner).map((share, page) => ({
    heading: 'What kind of word is each?',
    content: wordsInColumns(
      request,
      { words: share, marks: [], marked: false, sizeGroup: `kinds ${page}` },
      inner,
    ),
  }))
  const sorted = sortedOverPages(request, words, { parts, room: inner }).map(columns => ({
    heading: 'What each word most often is',
    content: kindColumns(request, columns, inner),
  }))
  return [...bare, ...sorted].map(each => boardFace(request, { ...each, key: [], keyAt: 'nothing' }, room))
}

interface KindColumn {
  readonly part: PartOfSpeech
  readonly words: readonly Word[]
}

/** Under the name of a part of speech, in lines of the least em. */
const HEAD_LINES = 1.6
const GAP_EM = 0.8

/** As many parts of speech side by side as have room, and as many words below each: the rest on further pages. */
function sortedOverPages(
  request: Board,
  words: readonly Word[],
  { parts, room }: { readonly parts: readonly PartOfSpeech[]; readonly room: Size },
): readonly (readonly KindColumn[])[] {
  const { type, measure } = request
  const least = leastRoom({ ...request, words, marks: [] })
  const nameMm = Math.max(...parts.map(part => measure(part, type.textMm, 700)))
  const columnMm = Math.max(nameMm, least.widthMm) + type.textMm * GAP_EM
  const across = Math.max(1, Math.min(parts.length, Math.floor(room.widthMm / columnMm)))
  const down = Math.max(1, Math.floor((room.heightMm - headHeight(request)) / (least.heightMm * 1.05)))
  const pages: KindColumn[][] = []
  for (let first = 0; first < parts.length; first += across) {
    const beside = parts.slice(first, first + across)
    const all = beside.map(part => words.filter(({ partsOfSpeech }) => partsOfSpeech[0] === part))
    const fullest = Math.max(...all.map(({ length }) => length))
    const share = Math.ceil(fullest / Math.ceil(fullest / down))
    for (let from = 0; from < fullest; from += share)
      pages.push(
        beside
          .map((part, index) => ({ part, words: all[index]!.slice(from, from + share) }))
          .filter(column => column.words.length > 0),
      )
  }
  return pages
}

function headHeight({ type }: Board): number {
  return linesHeight(HEAD_LINES, type.textMm)
}

const MOST_ROW = 4

function kindColumns(request: Board, columns: readonly KindColumn[], room: Size): BoardContent {
  const { type } = request
  const style: TextStyle = { sizeMm: type.textMm, weight: 700 }
  const headMm = headHeight(request)
  const widthMm = room.widthMm / columns.length
  const leastMm = leastRoom({ ...request, words: columns.flatMap(({ words }) => words), marks: [] }).heightMm
  const fullest = Math.max(...columns.map(({ words }) => words.length))
  const heightMm = Math.min((room.heightMm - headMm) / fullest, leastMm * MOST_ROW)
  const name = (column: KindColumn, place: number) => `${column.part} ${column.words[place]!.text}`
  return {
    slots: Object.fromEntries(
      columns.flatMap(column =>
        column.words.map((word, place) => [
          name(column, place),
          { ...listSlot(word, false), sizedAsMarked: false, sizeGroup: 'sorted' },
        ]),
      ),
    ),
    tree: (
      <div style={{ display: 'flex', width: '100%', height: '100%' }}>
        {columns.map(column => (
          <div style={{ display: 'flex', flexDirection: 'column', width: mm(widthMm) }}>
            <Lines lines={[column.part]} style={style} box={{ height: mm(headMm) }} />
            {column.words.map((_, place) => (
              <Slot
                name={name(column, place)}
                style={{ width: mm(widthMm - type.textMm * GAP_EM), height: mm(heightMm) }}
              />
            ))}
          </div>
        ))}
      </div>
    ),
  }
}

interface PluralShown {
  readonly word: Word
  readonly plural: string
  readonly rule: string
}

/** So many rows are read well from the last bench: our own judgement, no source. */
const MOST_ROWS = 5

/** One, then more than one with the rule; only plurals that are sure. */
export function pluralPages(request: Board, room: Size): readonly PageFace[] {
  const shown = request.words.flatMap((word): PluralShown[] => {
    const isHers = word.overridden?.includes('plural') === true
    const found = isGuessed(word) && !isHers ? { why: '' } : pluralAsked(word)
    return 'asked' in found ? [{ word, plural: found.asked.answer, rule: found.asked.why ?? '' }] : []
  })
  if (shown.length === 0) return []
  const inner = contentRoom(request, room, 'nothing')
  const pages = Math.ceil(shown.length / MOST_ROWS)
  const from = (page: number) => Math.round((page * shown.length) / pages)
  return Array.from({ length: pages }, (_, page) => shown.slice(from(page), from(page + 1))).flatMap(
    (share, page) =>
      [false, true].map(told =>
        boardFace(
          request,
          {
            heading: told ? 'One and more than one' : 'One: how do we write more than one?',
            key: [],
            keyAt: 'nothing',
            content: pluralRows(request, share, { told, name: `plural ${page}`, room: inner }),
          },
          room,
        ),
      ),
  )
}

/** Of the page's width: for one and for more than one, where that is enough; and for the rule, at least. */
const SHARES = { one: 0.3, more: 0.32, rule: 0.26 }

/** The rule stands beside the words, or below them where they are long. */
function pluralRows(
  request: Board,
  shown: readonly PluralShown[],
  { told, name, room }: { readonly told: boolean; readonly name: string; readonly room: Size },
): BoardContent {
  const { type, measure } = request
  const style: TextStyle = { sizeMm: type.textMm, color: '#404040' }
  const gapMm = type.textMm * GAP_EM
  const plurals = shown.map(({ plural }) => plainWord(plural))
  const least = (words: readonly Word[]) => leastRoom({ ...request, words, marks: [] })
  const [one, more] = [least(shown.map(({ word }) => word)), least(plurals)]
  const oneMm = Math.max(room.widthMm * SHARES.one, one.widthMm + gapMm)
  const moreMm = Math.max(room.widthMm * SHARES.more, more.widthMm + gapMm)
  const besideMm = room.widthMm - oneMm - moreMm
  const below = besideMm < room.widthMm * SHARES.rule
  const [leftMm, rightMm] = below ? [room.widthMm / 2, room.widthMm / 2] : [oneMm, moreMm]
  const rowMm = room.heightMm / Math.max(4, shown.length)
  const rules = shown.map(({ rule }) => breakLines(rule, below ? room.widthMm : besideMm, style, measure))
  const ruleMm = below ? linesHeight(Math.max(...rules.map(({ length }) => length)), style.sizeMm) : 0
  const heightMm = rowMm - ruleMm
  const slot = (word: Word) => ({
    ...listSlot(word, false),
    sizedAsMarked: false,
    sizeGroup: name,
    maximumMm: heightMm * 0.5,
  })
  const place = (widthMm: number) => ({
    height: mm(heightMm),
    flexShrink: 0,
    width: mm(widthMm - gapMm),
    marginRight: mm(gapMm),
  })
  return {
    slots: Object.fromEntries(
      shown.flatMap(({ word }, index) => [
        [`${name} one ${index}`, slot(word)] as const,
        ...(told ? [[`${name} more ${index}`, slot(plurals[index]!)] as const] : []),
      ]),
    ),
    tree: (
      <div style={{ display: 'flex', flexDirection: 'column', width: '100%', height: '100%' }}>
        {rules.map((lines, index) => (
          <div style={{ display: 'flex', flexDirection: 'column', width: '100%', height: mm(rowMm) }}>
            <div style={{ display: 'flex', height: mm(heightMm), alignItems: 'center' }}>
              <Slot name={`${name} one ${index}`} style={place(leftMm)} />
              {told ? <Slot name={`${name} more ${index}`} style={place(rightMm)} /> : null}
              {told && !below ? <Lines lines={lines} style={style} /> : null}
            </div>
            {told && below ? <Lines lines={lines} style={style} /> : null}
          </div>
        ))}
      </div>
    ),
  }
}
