/** What layouts share that print a card for each word: the set of cards, and the card that shows its word. */
import type { JSXNode } from 'satori/jsx'
import type { Size } from '../src/geometry.js'
import { andThen, succeed } from '../src/outcomes.js'
import { type CardFace, mm, type SlotContent, type WordSlot } from '../src/pieces/faces/face.js'
import { Slot } from '../src/pieces/faces/slot.js'
import { cardFace } from '../src/pieces/parts/card-face.js'
import { pictureSlot } from '../src/pieces/parts/picture-slot.js'
import { setMarkHeightMm } from '../src/pieces/parts/set-mark.js'
import { type Outcome, warningAt } from '../src/problems.js'
import type { Card, CardSet } from '../src/sets/card-set.js'
import { cardsForWords } from '../src/sets/word-set.js'
import type { Word } from '../src/words/word.js'
import type { LayoutRequest, RequestWith } from './layout.js'
import type { pictureOption } from './word-options.js'

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
export type WordPlace = Pick<WordSlot, 'align' | 'paddingMm' | 'loweredMm'>

/** A word as the item shows its words; all of a set are of one size. */
export function wordSlot({ marked, shownWithWords }: LayoutRequest, word: Word, place: WordPlace): WordSlot {
  return { kind: 'word', word, marked, ...shownWithWords, sizeGroup: 'main', ...place }
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
      paddingMm: size.widthMm / 22,
      loweredMm: setMarkHeightMm(request.type) / 2,
    },
    content: <Slot name="word" style={{ flexGrow: 1, width: '100%' }} />,
  })
}

type PicturedRequest = RequestWith<typeof pictureOption>

/** A card with its word alone, or with the teacher's picture of it. */
export function wordFace(request: PicturedRequest, card: Card, set: CardSet, size: Size): CardFace {
  const { picture } = request.options
  if (picture === 'none') return wordAloneFace(request, card, set, size)
  const word = card.words[0]!
  return wordCardFace(request, {
    card,
    set,
    size,
    place: { align: 'centre', paddingMm: size.widthMm / 22 },
    content: picture === 'above' ? pictureAbove(size) : pictureBeside(size),
    moreSlots: { picture: pictureSlot(request.pictureOf(word), word.text) },
  })
}

/** Of the card: the picture is what a child looks at first, the word what she reads. */
const PICTURE_SHARE = 0.55
/** Between the edge of the card and its picture. */
const AIR_SHARE = 0.05

function pictureAbove({ heightMm, widthMm }: Size): JSXNode {
  return (
    <div
      style={{ display: 'flex', flexDirection: 'column', alignItems: 'center', flexGrow: 1, width: '100%' }}
    >
      <div style={{ display: 'flex', height: mm(heightMm * AIR_SHARE), flexShrink: 0 }} />
      <Slot
        name="picture"
        style={{ width: mm(widthMm * 0.8), height: mm(heightMm * PICTURE_SHARE), flexShrink: 0 }}
      />
      <Slot name="word" style={{ flexGrow: 1, width: '100%' }} />
    </div>
  )
}

function pictureBeside({ heightMm, widthMm }: Size): JSXNode {
  return (
    <div style={{ display: 'flex', alignItems: 'center', flexGrow: 1, width: '100%' }}>
      <div style={{ display: 'flex', width: mm(widthMm * AIR_SHARE), flexShrink: 0 }} />
      <Slot
        name="picture"
        style={{ width: mm(widthMm * (1 - PICTURE_SHARE)), height: mm(heightMm * 0.7), flexShrink: 0 }}
      />
      <Slot name="word" style={{ flexGrow: 1, height: '100%' }} />
    </div>
  )
}

/** The set, with a warning that names the words whose cards were to have a picture and have none. */
export function missingPictures(
  { options, words, pictureOf, item }: PicturedRequest,
  set: Outcome<CardSet>,
): Outcome<CardSet> {
  if (options.picture === 'none') return set
  const without = words.filter(word => pictureOf(word) === undefined)
  if (without.length === 0) return set
  const warning = warningAt(
    item.place,
    `no picture for ${without.map(word => `"${word.text}"`).join(', ')}: its place stays empty`,
    'Give each word its picture in the plan, or leave "picture" out here.',
  )
  return andThen(set, cards => succeed(cards, [warning]))
}
