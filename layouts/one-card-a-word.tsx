/** What layouts share that print a card for each word: the set of cards, and the card that shows its word. */
import type { JSXNode } from 'satori/jsx'
import type { Size } from '../src/geometry.js'
import { succeed } from '../src/outcomes.js'
import type { CardFace, SlotContent, WordSlot } from '../src/pieces/faces/face.js'
import { Slot } from '../src/pieces/faces/slot.js'
import { cardFace } from '../src/pieces/parts/card-face.js'
import { setMarkHeightMm } from '../src/pieces/parts/set-mark.js'
import type { Outcome } from '../src/problems.js'
import type { Card, CardSet } from '../src/sets/card-set.js'
import { cardsForWords } from '../src/sets/word-set.js'
import type { Word } from '../src/words/word.js'
import type { LayoutRequest } from './layout.js'

/** A card for each word in the order of the list, in as many copies as the item asks for. */
export function oneCardAWord({ words, item, itemName, plan }: LayoutRequest): Outcome<CardSet> {
  const value = cardsForWords({
    words,
    copies: item.copies,
    order: 'given',
    seed: plan.seed,
    label: itemName,
    prefix: 'card',
  })
  return succeed(value)
}

/** How a word stands in its slot. */
export type WordPlace = Pick<WordSlot, 'align' | 'paddingMm' | 'paddingAboveMm' | 'loweredMm'>

/** A word as the item shows its words; all of a set are of one size. */
export function wordSlot({ marked, shownWithWords }: LayoutRequest, word: Word, place: WordPlace): WordSlot {
  return { kind: 'word', word, marked, ...shownWithWords, sizeGroup: 'main', ...place }
}

/** Kept free around the word of a card: above and below a wide one no more than its height has to give. */
export function whiteAround({ widthMm, heightMm }: Size): Pick<WordPlace, 'paddingMm' | 'paddingAboveMm'> {
  return { paddingMm: widthMm / 22, paddingAboveMm: Math.min(widthMm, heightMm) / 22 }
}

export interface WordCard {
  readonly card: Card
  readonly set: CardSet
  readonly size: Size
  readonly place: WordPlace
  /** What stands on the card, a slot named `word` among it. */
  readonly content: JSXNode
  /** What the card says besides its word. */
  readonly moreText?: readonly string[]
  readonly moreSlots?: Readonly<Record<string, SlotContent>>
}

/** A card that shows its word, with whatever else the layout puts on it. */
export function wordCardFace(request: LayoutRequest, wordCard: WordCard): CardFace {
  const { card, place, moreText = [], moreSlots = {} } = wordCard
  const word = card.words[0]!
  return cardFace({
    ...request,
    ...wordCard,
    border: request.item.border,
    text: [word.text, ...moreText],
    slots: { word: wordSlot(request, word, place), ...moreSlots },
  })
}

/** A card with its word alone in the middle. */
export function wordAloneFace(request: LayoutRequest, card: Card, set: CardSet, size: Size): CardFace {
  return wordCardFace(request, {
    card,
    set,
    size,
    place: {
      align: 'centre',
      ...whiteAround(size),
      loweredMm: setMarkHeightMm(request.type) / 2,
    },
    content: <Slot name="word" style={{ flexGrow: 1, width: '100%' }} />,
  })
}
