/** The list unmarked, its words pattern by pattern, and the list with all its marks. */
import type { Size } from '../../src/geometry.js'
import { type KeyEntry, keyEntries } from '../../src/pieces/marks/key-entries.js'
import type { StyledMark } from '../../src/pieces/marks/styled-mark.js'
import type { PageFace } from '../layout.js'
import type { Board } from './board-key.js'
import { boardFace, contentRoom, fitsCorner, wholeKey } from './board-page.js'
import { sharedOverPages, wordsInColumns } from './words-in-columns.js'

export function listPages(request: Board, room: Size): readonly PageFace[] {
  const { words, plan } = request
  const inner = contentRoom(request, room, 'nothing')
  return sharedOverPages(request, { words, marks: [] }, inner).map((share, page) =>
    boardFace(
      request,
      {
        heading: plan.title,
        told: `the words: ${textsOf(share)}`,
        key: [],
        keyAt: 'nothing',
        content: wordsInColumns(
          request,
          { words: share, marks: [], marked: false, sizeGroup: `list ${page}` },
          inner,
        ),
      },
      room,
    ),
  )
}

/** For each mark that the words show: those words bare, then with that mark alone, while the key grows by it. */
export function patternPages(request: Board, room: Size): readonly PageFace[] {
  const entries = keyEntries(request.words, request.marks)
  return entries.flatMap((entry, index) => {
    const before = entries.slice(0, index)
    const words = request.words.filter(({ text }) => entry.examples.includes(text))
    const shown = { words, marks: [entry.mark] }
    const inner = contentRoom(request, room, 'corner')
    return sharedOverPages(request, shown, inner).flatMap((share, page) => {
      const step = (marked: boolean) =>
        wordsInColumns(
          request,
          { words: share, marks: [entry.mark], marked, sizeGroup: `pattern ${index} ${page}` },
          inner,
        )
      const question = share.length > 1 ? 'What do these words share?' : 'What do you see in this word?'
      const told = `${entry.label}: ${textsOf(share)}`
      return [
        // Where no key has grown yet, its place stays free, so that the words stand where they will be marked.
        boardFace(
          request,
          {
            heading: question,
            told: `${told}, bare`,
            key: before,
            keyAt: 'corner',
            content: step(false),
          },
          room,
        ),
        boardFace(
          request,
          { heading: inWords(entry), told, key: [...before, entry], keyAt: 'corner', content: step(true) },
          room,
        ),
      ]
    })
  })
}

function inWords({ label, says }: KeyEntry): string {
  return says === undefined ? label : `${label}: ${says}`
}

/** All words with all their marks and the whole key; a key that has no room beside them stands on pages of its own. */
export function allMarkedPages(request: Board, room: Size): readonly PageFace[] {
  const entries = keyEntries(request.words, request.marks)
  if (entries.length === 0) return []
  const marks: readonly StyledMark[] = entries.map(({ mark }) => mark)
  const { words } = request
  const inner = contentRoom(request, room, 'corner')
  const keys = fitsCorner(request, entries, room)
    ? []
    : wholeKey(request, entries, room).map(page => boardFace(request, page, room))
  const pages = sharedOverPages(request, { words, marks }, inner).map((share, page) => {
    const own = keyEntries(share, request.marks)
    return boardFace(
      request,
      {
        heading: 'All our words',
        told: `all marks: ${textsOf(share)}`,
        key: own.length === 0 ? entries : own,
        keyAt: 'corner',
        content: wordsInColumns(
          request,
          { words: share, marks, marked: true, sizeGroup: `all ${page}` },
          inner,
        ),
      },
      room,
    )
  })
  return [...keys, ...pages]
}

function textsOf(words: Board['words']): string {
  return words.map(({ text }) => text).join(', ')
}
