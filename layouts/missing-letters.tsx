import type { Size } from '../src/geometry.js'
import { succeed } from '../src/outcomes.js'
import { type CardFace, mm, type SlotContent } from '../src/pieces/faces/face.js'
import { Slot } from '../src/pieces/faces/slot.js'
import { targetsOf } from '../src/pieces/marks/find-targets.js'
import { cardFace } from '../src/pieces/parts/card-face.js'
import { tableRows } from '../src/pieces/parts/table-rows.js'
import { textRoom } from '../src/pieces/parts/text-card.js'
import { balancedLines } from '../src/pieces/text/balanced-lines.js'
import { fitTexts } from '../src/pieces/text/fit-texts.js'
import { choice, option, wholeNumber } from '../src/plan/values/options.js'
import type { Outcome } from '../src/problems.js'
import type { Card, CardSet } from '../src/sets/card-set.js'
import {
  missingLetters as cardsWithGaps,
  type GapWord,
  lettersOfGap,
} from '../src/sets/games/missing-letters.js'
import { commonLetters } from '../src/words/find/common-letters.js'
import { offeredTexts } from '../src/words/find/offered-file.js'
import { unfitWords } from '../src/words/fitness/unfit-file.js'
import type { Word } from '../src/words/word.js'
import { grownUpPages } from './grown-up-pages.js'
import { howToPlayPages } from './how-to-play.js'
import { defineLayout, type LayoutRequest, type PageFace, type RequestWith } from './layout.js'
import { wordSlot } from './one-card-a-word.js'
import { plainWord } from './plain-word.js'

const options = {
  choices: option('how many letters to choose from', wholeNumber(0, 4, 3)),
  hint: option('what else the card tells of its word', choice(['clue', 'nothing'], undefined), {
    example: 'nothing',
    usual: 'the clue, where every word has one',
  }),
}

type GapRequest = RequestWith<typeof options>

/** Words without the letters that the plan marks, and letters to choose from. */
export const missingLetters = defineLayout({
  kind: 'pieces',
  name: 'missing-letters',
  summary: 'each word with a gap where its marked letters were, and letters to choose from below it',
  inWeek: { day: 'practice', given: 'each child' },
  options,
  marks: 'none',
  perSheet: { columns: 2, rows: 5 },
  perSheetLarge: { columns: 1, rows: 3 },
  set: request => {
    const { words, item, options, itemName, plan } = request
    return cardsWithGaps({
      words: words.map(word => gapWord(request, word)),
      choices: options.choices,
      isWord: text => offeredTexts().has(text),
      isUnfit: text => unfitWords().has(text),
      isTold: word => hintOf(request, word) !== undefined,
      copies: item.copies,
      seed: plan.seed,
      label: itemName,
      place: item.place,
    })
  },
  faces: gapFaces,
  pages: gapPages,
})

/** What the first mark of the plan stands on, of those that the word shows on its letters. */
function gapWord({ marks }: LayoutRequest, word: Word): GapWord {
  const gap = targetsOf(word, marks).find(({ mark }) => mark.mark.target.kind !== 'word')
  const target = gap?.mark.mark.target
  return { word, gap, alike: target?.kind === 'pattern' ? commonLetters(target.pattern) : [] }
}

function hintOf({ options, words }: GapRequest, word: Word): string | undefined {
  const shown = options.hint ?? (words.every(({ clue }) => clue !== undefined) ? 'clue' : 'nothing')
  return shown === 'clue' ? word.clue : undefined
}

/** Of a card's height: the clue above, the letters below. */
const CLUE_SHARE = 0.3
const CHOICES_SHARE = 0.28

function gapFaces(request: GapRequest, set: CardSet, size: Size): Outcome<readonly CardFace[]> {
  const { type, item, measure } = request
  const room = textRoom(size, item.border, type)
  const clues = set.cards.map(card => hintOf(request, card.words[0]!))
  const clueRoom = { ...room, heightMm: room.heightMm * CLUE_SHARE }
  const fit = fitTexts({
    texts: clues.flatMap((clue, index) =>
      clue === undefined ? [] : [{ text: clue, on: `card ${set.cards[index]!.number}`, room: clueRoom }],
    ),
    minimumMm: type.textMm,
    maximumMm: Math.max(type.textMm, size.heightMm / 12),
    weight: 400,
    measure,
    place: item.place,
  })
  if (!fit.ok) return fit
  const clueStyle = { sizeMm: fit.value, align: 'centre' } as const
  const isTold = clues.some(clue => clue !== undefined)
  return succeed(
    set.cards.map((card, index) => {
      const clue = clues[index] ?? ''
      const lines = balancedLines(clue, clueRoom.widthMm, clueStyle, measure)
      const clueSlot: SlotContent = { kind: 'text', lines, style: clueStyle }
      return gapFace(request, card, set, { size, ...(isTold ? { clue, clueSlot } : {}) })
    }),
  )
}

function gapFace(
  request: GapRequest,
  card: Card,
  set: CardSet,
  { size, clue, clueSlot }: { readonly size: Size; readonly clue?: string; readonly clueSlot?: SlotContent },
): CardFace {
  const choices = card.choices ?? []
  const places = Math.max(0, ...set.cards.map(each => each.choices?.length ?? 0))
  const plain = { ...request, marked: false, shownWithWords: {} }
  const share = (of: number) => `${of * 100}%`
  return cardFace({
    ...request,
    card,
    set,
    size,
    border: request.item.border,
    text: [card.title!, ...(clue === undefined || clue === '' ? [] : [clue]), ...choices],
    content: (
      <div style={{ display: 'flex', flexDirection: 'column', flexGrow: 1, width: '100%' }}>
        {clueSlot === undefined ? null : (
          <Slot name="clue" style={{ width: '100%', height: share(CLUE_SHARE) }} />
        )}
        <Slot name="word" style={{ flexGrow: 1, width: '100%' }} />
        {places === 0 ? null : (
          <div style={{ display: 'flex', width: '100%', height: share(CHOICES_SHARE), paddingBottom: mm(1) }}>
            {Array.from({ length: places }, (_, index) => (
              <Slot name={`choice ${index}`} style={{ flexGrow: 1, flexBasis: 0 }} />
            ))}
          </div>
        )}
      </div>
    ),
    slots: {
      ...(clueSlot === undefined ? {} : { clue: clueSlot }),
      word: wordSlot(plain, plainWord(card.title!), { align: 'centre', paddingMm: 2 }),
      ...Object.fromEntries(
        choices.map((letters, index) => [
          `choice ${placeOf(index, choices.length, places)}`,
          {
            ...wordSlot(plain, plainWord(letters), { align: 'centre', paddingMm: 1.5 }),
            sizeGroup: 'choices',
            maximumMm: size.heightMm / 6,
          },
        ]),
      ),
    },
  })
}

/** Two letters where others have three stand at both ends of the row. */
function placeOf(index: number, count: number, places: number): number {
  return count < 2 ? index : Math.round((index * (places - 1)) / (count - 1))
}

function gapPages(request: GapRequest, set: CardSet, room: Size): readonly PageFace[] {
  const { type, measure } = request
  const first = set.cards.filter(card => card.copy === 1)
  const rows = tableRows({
    columns: [
      { heading: 'card', share: 0.12 },
      { heading: 'with its gap', share: 0.34 },
      { heading: 'letters', share: 0.2 },
      { heading: 'word', share: 0.34 },
    ],
    cells: first.map(({ number, title, words: [word] }) => [
      String(number),
      title!,
      lettersOfGap(word!, gapWord(request, word!).gap!),
      word!.text,
    ]),
    widthMm: room.widthMm,
    textMm: type.adultTextMm,
    measure,
  })
  const hasChoices = first.some(({ choices = [] }) => choices.length > 0)
  const splitWord = first
    .flatMap(({ words }) => words)
    .find(word => gapWord(request, word).gap?.ranges.length === 2)?.text
  return [
    ...howToPlayPages(
      request,
      {
        play: [
          'Take a card. Some letters of its word are missing.',
          hasChoices
            ? 'Try the letters below in the gap, one after another.'
            : 'Think which letters belong into the gap.',
          'Say the whole word. Does it sound right?',
          'Write the letters on the card or on a slip. Read the word. Take the next card.',
        ],
        prepare:
          'one set for each pair of children; laminated cards take a dry-wipe pen. The answer page, or back: answer, lets them check.',
        help: `a gap has a line for each letter that is missing${splitWord === undefined ? '' : `; in ${splitWord} the two letters that work together are missing`}.`,
        easier: 'read the word aloud for the child, or cover one of the wrong letters.',
        harder: 'cover the letters below, or print the item with choices: 0.',
      },
      room,
    ),
    ...grownUpPages(request, { kind: 'answers', what: 'answers', rows, room }),
  ]
}
