/** A card with the teacher's picture of its word above or beside it. */
import type { JSXNode } from 'satori/jsx'
import type { Size } from '../src/geometry.js'
import { andThen, succeed } from '../src/outcomes.js'
import { type CardFace, mm } from '../src/pieces/faces/face.js'
import { Slot } from '../src/pieces/faces/slot.js'
import { pictureSlot } from '../src/pieces/parts/picture-slot.js'
import { type Outcome, warningAt } from '../src/problems.js'
import type { Card, CardSet } from '../src/sets/card-set.js'
import type { RequestWith } from './layout.js'
import { whiteAround, wordAloneFace, wordCardFace } from './one-card-a-word.js'
import type { pictureOption } from './word-options.js'

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
    place: { align: 'centre', ...whiteAround(size) },
    content: picture === 'above' ? pictureAbove(size) : pictureBeside(size),
    moreSlots: { picture: pictureSlot(request.pictureOf(word), word.text) },
  })
}

/** Of the card's height, or width: the picture is what a child looks at first, the word what she reads. */
const PICTURE_SHARE = { above: 0.48, beside: 0.4 } as const
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
        style={{ width: mm(widthMm * 0.8), height: mm(heightMm * PICTURE_SHARE.above), flexShrink: 0 }}
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
        style={{ width: mm(widthMm * PICTURE_SHARE.beside), height: mm(heightMm * 0.7), flexShrink: 0 }}
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
