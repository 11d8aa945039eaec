import type { Size } from '../src/geometry.js'
import { succeed } from '../src/outcomes.js'
import type { CardFace } from '../src/pieces/faces/face.js'
import { Slot } from '../src/pieces/faces/slot.js'
import { targetsOf } from '../src/pieces/marks/find-targets.js'
import { cardFace } from '../src/pieces/parts/card-face.js'
import { pictureSlot } from '../src/pieces/parts/picture-slot.js'
import { tableRows } from '../src/pieces/parts/table-rows.js'
import { textCardFace, textRoom, titlesInRoom } from '../src/pieces/parts/text-card.js'
import { fitTexts } from '../src/pieces/text/fit-texts.js'
import { option, twoOf } from '../src/plan/values/options.js'
import type { Outcome } from '../src/problems.js'
import type { Card, CardSet } from '../src/sets/card-set.js'
import { matchingPairs as pairedCards } from '../src/sets/games/matching-pairs.js'
import { type PairSide, pairSides } from '../src/sets/games/pair-sides.js'
import { grownUpPages } from './grown-up-pages.js'
import { howToPlayPages } from './how-to-play.js'
import { defineLayout, type PageFace, type RequestWith } from './layout.js'
import { offeredPrompts } from './offered-prompts.js'
import { whiteAround, wordAloneFace } from './one-card-a-word.js'
import { plainWord } from './plain-word.js'

const options = {
  pair: option(
    'what makes two cards a pair: what one shows and what the other shows',
    twoOf(pairSides, 'word', { 'same word': ['word', 'word'] }, ['word', 'word']),
    { example: 'clue and plural', usual: 'same word' },
  ),
}

type PairsRequest = RequestWith<typeof options>

/** Cards of which two and two belong together: any two of what there is to show of a word. */
export const matchingPairs = defineLayout({
  kind: 'pieces',
  name: 'matching-pairs',
  summary: 'cards of which two and two belong together, for a memory game or to lay side by side',
  inWeek: { day: 'centres', given: 'each pair' },
  options,
  marks: 'none',
  marksSome: ({ pair }) => pair.includes('marked word'),
  perSheet: { columns: 3, rows: 5 },
  perSheetLarge: { columns: 2, rows: 4 },
  set: ({ words, item, options, itemName, plan, pictureOf, marks }) =>
    pairedCards({
      words,
      sides: options.pair,
      atHand: {
        promptOf: offeredPrompts,
        hasPicture: word => pictureOf(word) !== undefined,
        isMarked: word => targetsOf(word, marks).length > 0,
      },
      copies: item.copies,
      accent: plan.accent,
      seed: plan.seed,
      label: itemName,
      place: item.place,
    }),
  faces: pairFaces,
  pages: pairPages,
})

function pairFaces(request: PairsRequest, set: CardSet, size: Size): Outcome<readonly CardFace[]> {
  const { type, item, options, measure } = request
  const running = set.cards.filter(({ shows }) => shows !== 'form')
  const fit = fitTexts({
    texts: titlesInRoom(running, textRoom(size, item.border, type)),
    minimumMm: type.textMm,
    // Running text larger than this only makes more lines; a number of sounds is short.
    maximumMm: Math.max(type.textMm, size.heightMm / (options.pair.includes('clue') ? 8 : 4)),
    weight: 400,
    measure,
    place: item.place,
  })
  if (!fit.ok) return fit
  const style = { sizeMm: fit.value, align: 'centre' } as const
  const onlySome = options.pair.includes('marked word')
  const faces = set.cards.map(card => {
    const plain = { ...request, marked: request.marked && !onlySome }
    if (card.shows === 'picture') return pictureAloneFace(request, card, set, size)
    if (card.shows === 'marks') return wordAloneFace(request, card, set, size)
    if (card.title === undefined) return wordAloneFace(plain, card, set, size)
    if (card.shows === 'form')
      return wordAloneFace(
        { ...request, marked: false },
        { ...card, words: [plainWord(card.title)] },
        set,
        size,
      )
    return textCardFace({ ...request, card, set, size, text: card.title, style, border: item.border })
  })
  return succeed(faces)
}

function pictureAloneFace(request: PairsRequest, card: Card, set: CardSet, size: Size): CardFace {
  const word = card.words[0]!
  const { paddingMm = 0 } = whiteAround(size)
  return cardFace({
    ...request,
    card,
    set,
    size,
    border: request.item.border,
    text: [`picture of ${word.text}`],
    content: (
      <div style={{ display: 'flex', flexGrow: 1, width: '100%', padding: `${paddingMm}mm` }}>
        <Slot name="picture" style={{ flexGrow: 1, height: '100%' }} />
      </div>
    ),
    slots: { picture: pictureSlot(request.pictureOf(word), word.text) },
  })
}

/** What a card shows, and what its partner shows, said to a child. */
const told: Readonly<Record<PairSide, { readonly a: string; readonly its: string }>> = {
  word: { a: 'a word', its: 'its word' },
  'marked word': { a: 'a word with its marks', its: 'the same word with its marks' },
  picture: { a: 'a picture', its: 'its picture' },
  clue: { a: 'a clue', its: 'its own clue' },
  plural: { a: 'a word for more than one', its: 'its word for more than one' },
  sounds: { a: 'a number of sounds', its: 'its number of sounds' },
  'past form': { a: 'a word for yesterday', its: 'its word for yesterday' },
  'ing form': { a: 'a word with ing', its: 'its word with ing' },
  'sound alike': { a: 'a word', its: 'a word that sounds the same' },
}

function whatMakesAPair([one, other]: readonly [PairSide, PairSide]): string {
  if (one === other) return 'The same card twice is a pair.'
  return `A pair is ${told[one].a} and ${told[other].its}.`
}

function pairPages(request: PairsRequest, set: CardSet, room: Size): readonly PageFace[] {
  const { type, measure, options } = request
  const rows = tableRows({
    columns: [
      { heading: 'cards', share: 0.2 },
      { heading: 'pair', share: 0.8 },
    ],
    cells: (set.answers ?? []).map(({ text, numbers }) => [numbers.join(' and '), text]),
    widthMm: room.widthMm,
    textMm: type.adultTextMm,
    measure,
  })
  const cards = 2 * (set.answers?.length ?? 0)
  return [
    ...howToPlayPages(
      request,
      {
        play: [
          'Mix the cards. Lay them face down in rows.',
          'Turn up two cards. Read both aloud.',
          `${whatMakesAPair(options.pair)} Keep it and turn up two more.`,
          'No pair? Turn them back. The next child goes on. In the end most pairs win.',
        ],
        prepare: `one set of ${cards} cards for two to four children; copies prints more sets. Card through which the words can be seen from behind gives the game away: print a back, or take thicker card.`,
        help: 'look up the two numbers at the foot of the cards on the answer page. Whoever turns up a pair reads it once more before it is kept.',
        easier: 'lay the cards face up, or play with half of the pairs.',
        harder:
          'say a sentence with the word before a pair is kept, or find all pairs while a sand timer runs.',
      },
      room,
    ),
    ...grownUpPages(request, { kind: 'answers', what: 'answers', rows, room }),
  ]
}
