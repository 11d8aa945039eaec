import type { Size } from '../../src/geometry.js'
import { andThen, succeed } from '../../src/outcomes.js'
import { moveArt } from '../../src/pieces/art/move-art.js'
import type { SlotContent } from '../../src/pieces/faces/face.js'
import { pictureSlot } from '../../src/pieces/parts/picture-slot.js'
import { balancedLines } from '../../src/pieces/text/balanced-lines.js'
import { fitTexts } from '../../src/pieces/text/fit-texts.js'
import type { Outcome } from '../../src/problems.js'
import type { Word } from '../../src/words/word.js'
import type { LayoutRequest } from '../layout.js'
import { type WordPlace, wordSlot } from '../one-card-a-word.js'
import { plainWord } from '../plain-word.js'
import type { ShownKind } from './played-words.js'

/** What fills the cell of a word. */
export type CellOf = (word: Word, place: WordPlace) => SlotContent

/** Of the cell's width and height, round a picture. */
const AROUND_PICTURE = 0.08
/** Beside a clue, in mm. */
const BESIDE_TEXT_MM = 2

export interface CellsWanted {
  readonly show: ShownKind
  readonly words: readonly Word[]
  /** What is shown of each word, in words. */
  readonly shown: readonly string[]
  readonly cell: Size
}

/** As the boards show their words; an error where a clue has no room in its cell. */
export function cellContents(
  request: LayoutRequest,
  { show, words, shown, cell }: CellsWanted,
): Outcome<CellOf> {
  const textOf = new Map(words.map((word, index) => [word, shown[index]!]))
  switch (show) {
    case 'word':
      return succeed((word, place) => wordSlot(request, word, place))
    case 'picture':
      return succeed(word => pictureInCell(request, word))
    case 'clue':
      return cluesInCells(request, textOf, cell)
    default:
      return succeed((word, place) =>
        wordSlot({ ...request, marked: false }, plainWord(textOf.get(word)!), place),
      )
  }
}

function pictureInCell({ pictureOf }: LayoutRequest, word: Word): SlotContent {
  const slot = pictureSlot(pictureOf(word), word.text)
  return {
    ...slot,
    draw: room => {
      const white = Math.min(room.widthMm, room.heightMm) * AROUND_PICTURE
      const inside = { widthMm: room.widthMm - 2 * white, heightMm: room.heightMm - 2 * white }
      return moveArt(slot.draw(inside), white, white, room)
    },
  }
}

function cluesInCells(
  { type, measure, item }: LayoutRequest,
  textOf: ReadonlyMap<Word, string>,
  cell: Size,
): Outcome<CellOf> {
  const room = { widthMm: cell.widthMm - 2 * BESIDE_TEXT_MM, heightMm: cell.heightMm - 2 * BESIDE_TEXT_MM }
  const fit = fitTexts({
    texts: [...textOf].map(([word, text]) => ({ text, on: `the cell of ${word.text}`, room })),
    minimumMm: type.textMm,
    maximumMm: Math.max(type.textMm, cell.heightMm / 7),
    weight: 400,
    measure,
    place: item.place,
  })
  return andThen(fit, sizeMm => {
    const style = { sizeMm, align: 'centre' } as const
    return succeed((word: Word): SlotContent => {
      const lines = balancedLines(textOf.get(word)!, room.widthMm, style, measure)
      return { kind: 'text', lines, style }
    })
  })
}
