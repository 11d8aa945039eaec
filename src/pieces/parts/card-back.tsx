import type { Size } from '../../geometry.js'
import type { BackKind } from '../../plan/plan.js'
import type { Card } from '../../sets/card-set.js'
import { soundsInASentence } from '../../words/sounds-in-words.js'
import type { Word } from '../../words/word.js'
import { type CardFace, faceOf, mm, type SlotContent } from '../faces/face.js'
import { Slot } from '../faces/slot.js'
import type { Art } from '../piece.js'
import { balancedLines } from '../text/balanced-lines.js'
import {
  breakAtCommas,
  breakLinesWithin,
  linesHeight,
  type TextMeasure,
  type TextStyle,
} from '../text/break-lines.js'
import type { TypeScale } from '../text/type-scale.js'
import { CardFrame, contentRoom } from './card-frame.js'
import { type Picture, pictureSlot } from './picture-slot.js'
import { textRoom } from './text-card.js'

export interface CardBackRequest {
  readonly back: Exclude<BackKind, 'none'>
  readonly card: Card
  readonly size: Size
  readonly shortSetTitle: string
  readonly type: TypeScale
  readonly measure: TextMeasure
  readonly pictureOf: (word: Word) => Picture | undefined
  /** The em of running text that all backs of the set share; the type scale's own where left out. */
  readonly textMm?: number
  /** Lines kept for a word's sounds on all backs of the set, so that their words stand level. */
  readonly soundLines?: number
  /** A pattern over the whole piece. */
  readonly drawPattern: (size: Size) => Art
}

/** What stands on a card's back. A board, which has no one word, gets the set's name instead of a word's back. */
export function cardBackFace(request: CardBackRequest): CardFace {
  const { card, size } = request
  const { tree, slots } = contentOf(request)
  return { ...faceOf(card, size), text: [], tree, slots }
}

interface BackContent {
  readonly tree: CardFace['tree']
  readonly slots: Readonly<Record<string, SlotContent>>
}

function contentOf(request: CardBackRequest): BackContent {
  const { back, card, shortSetTitle } = request
  const word = card.words.length === 1 ? card.words[0] : undefined
  if (back === 'pattern') return patternContent(request)
  if (word === undefined || back === 'name') return textContent(request, shortSetTitle)
  switch (back) {
    case 'clue':
      return textContent(request, word.clue ?? '')
    case 'answer':
      return answerContent(request, word)
    case 'picture':
      return pictureContent(request, word)
  }
}

function patternContent({ drawPattern }: CardBackRequest): BackContent {
  return {
    tree: <Slot name="pattern" style={{ width: '100%', height: '100%' }} />,
    slots: { pattern: { kind: 'art', draw: drawPattern } },
  }
}

function textContent({ type, measure, size, textMm }: CardBackRequest, text: string): BackContent {
  const style: TextStyle = { sizeMm: textMm ?? type.textMm, align: 'centre' }
  const room = textRoom(size, undefined, type)
  const maximum = Math.max(1, Math.floor(room.heightMm / linesHeight(1, style.sizeMm)))
  const balanced = balancedLines(text, room.widthMm, style, measure)
  const lines =
    balanced.length <= maximum
      ? balanced
      : breakLinesWithin(text, { widthMm: room.widthMm, maximum }, style, measure)
  return {
    tree: (
      <CardFrame type={type} border={undefined}>
        <Slot name="text" style={{ flexGrow: 1, width: '100%' }} />
      </CardFrame>
    ),
    slots: { text: { kind: 'text', lines, style } },
  }
}

/** Lines that the sounds of a word take on its back. */
export function linesOfSounds(
  { type, measure, size }: Pick<CardBackRequest, 'type' | 'measure' | 'size'>,
  word: Word,
): readonly string[] {
  const { widthMm } = contentRoom(size, undefined, type)
  return breakAtCommas(soundsInASentence(word), widthMm - 4, { sizeMm: type.textMm }, measure)
}

/** The word marked, and its sounds counted and divided. */
function answerContent(request: CardBackRequest, word: Word): BackContent {
  const { type, soundLines = 0 } = request
  const style: TextStyle = { sizeMm: type.textMm, align: 'centre' }
  const lines = linesOfSounds(request, word)
  const keptLines = Math.max(soundLines, lines.length)
  return {
    tree: (
      <CardFrame type={type} border={undefined}>
        <Slot name="word" style={{ flexGrow: 1, width: '100%' }} />
        <Slot
          name="sounds"
          style={{ width: '100%', height: mm(linesHeight(keptLines, style.sizeMm)), flexShrink: 0 }}
        />
      </CardFrame>
    ),
    slots: {
      word: { kind: 'word', word, marked: true, sizeGroup: 'back', align: 'centre', paddingMm: 2 },
      sounds: { kind: 'text', lines, style },
    },
  }
}

function pictureContent({ type, pictureOf }: CardBackRequest, word: Word): BackContent {
  return {
    tree: (
      <CardFrame type={type} border={undefined}>
        <Slot name="picture" style={{ flexGrow: 1, width: '100%' }} />
      </CardFrame>
    ),
    slots: { picture: pictureSlot(pictureOf(word), word.text) },
  }
}
