import type { Size } from '../../src/geometry.js'
import { fail, present, succeed } from '../../src/outcomes.js'
import type { CardFace } from '../../src/pieces/faces/face.js'
import { Slot } from '../../src/pieces/faces/slot.js'
import { type CardFaceRequest, cardFace } from '../../src/pieces/parts/card-face.js'
import { pictureSlot } from '../../src/pieces/parts/picture-slot.js'
import { textRow } from '../../src/pieces/parts/table-rows.js'
import { textCardFace, textRoom, titlesInRoom } from '../../src/pieces/parts/text-card.js'
import { fitTexts } from '../../src/pieces/text/fit-texts.js'
import { option, yesNo } from '../../src/plan/values/options.js'
import { errorAt, type Outcome, type Problem } from '../../src/problems.js'
import type { Card, CardSet } from '../../src/sets/card-set.js'
import { closedSort as closedSortSet } from '../../src/sets/sorts/closed-sort.js'
import type { SortHeading } from '../../src/sets/sorts/sort-heading.js'
import { partnersIn } from '../../src/sets/sorts/sort-pairs.js'
import { inPlainSounds } from '../../src/words/pronunciation/respelling.js'
import { ratedSortsFor } from '../chosen-sort.js'
import { grownUpPages } from '../grown-up-pages.js'
import { defineLayout, type RequestWith } from '../layout.js'
import { whiteAround, wordAloneFace, wordSlot } from '../one-card-a-word.js'
import { plainWord } from '../plain-word.js'
import {
  chooseHeadings,
  headingOptions,
  roomierHeadings,
  type SortRequest,
} from '../sort-sheets/chosen-headings.js'
import { talkOver } from '../sort-talk.js'
import { answerColumns } from './answer-columns.js'

const options = {
  ...headingOptions,
  pairs: option(
    'whether each word has a partner on a card of its own in a sort by plural or ending: fox and foxes, hop and hopping',
    yesNo(false),
  ),
}

type ClosedSortRequest = RequestWith<typeof options>

/** Headers that name the columns, unmarked cards to lay under them, and the answers on a page of their own. */
export const closedSort = defineLayout<typeof options>({
  kind: 'pieces',
  name: 'closed-sort',
  summary: 'headers that name the columns, cards to lay under them, the answers on a page of their own',
  inWeek: { day: 'centres', given: 'each pair' },
  options,
  marks: 'none',
  perSheet: { columns: 3, rows: 6 },
  perSheetLarge: { columns: 2, rows: 4 },
  set: request => {
    const chosen = chooseHeadings(request)
    if (!chosen.ok) return chosen
    const { rated, sort } = chosen.value
    const { words, item, itemName, plan } = request
    const partnerOf = request.options.pairs ? partnersIn(rated.family.kind) : undefined
    if (request.options.pairs && partnerOf === undefined) return fail(noPairs(request, sort.name))
    const set = closedSortSet({
      ...chosen.value,
      words,
      ...present({ partnerOf }),
      copies: item.copies,
      seed: plan.seed,
      label: itemName,
    })
    return succeed({ ...set, notes: [`The sort is "${sort.name}". ${sort.why}`] }, chosen.problems)
  },
  roomier: roomierHeadings,
  faces: closedSortFaces,
  pages: (request, set, room) => {
    const { type, measure } = request
    const chosen = chooseHeadings(request)
    if (!chosen.ok) return []
    const { rated, sort, headings } = chosen.value
    const paragraph = (said: string) =>
      textRow(inPlainSounds(said), { style: { sizeMm: type.adultTextMm }, widthMm: room.widthMm, measure })
    const rows = [
      paragraph(`The columns show ${sort.basis}. The numbers are those on the cards.`),
      ...keyWordRows(headings).map(paragraph),
      ...(request.options.pairs ? [paragraph('A word and its partner lie side by side.')] : []),
      ...answerColumns(request, set, room.widthMm),
      ...(sort.leftoverReasons.length === 0
        ? []
        : [
            paragraph('Left over:'),
            ...sort.leftoverReasons.map(({ word, why }) => paragraph(`${word} ${why}.`)),
          ]),
      ...talkOver(request, room.widthMm)(rated, 'To talk over:'),
    ]
    return grownUpPages(request, { kind: 'answers', what: 'answers', rows, room })
  },
})

/** Names the sorts of these words that have pairs. */
function noPairs(request: ClosedSortRequest, name: string): Problem {
  const withPairs = ratedSortsFor(request)
    .filter(({ family }) => partnersIn(family.kind) !== undefined)
    .map(({ sort }) => `sort: ${sort.name}`)
  return errorAt(
    request.item.place,
    `a sort named "${name}" has no pairs: they belong to a sort by plural or by ending`,
    withPairs.length === 0
      ? 'Leave pairs out, or give words with an ending, such as hopping, or nouns whose plurals are made in two ways.'
      : `Write ${withPairs.join(', or ')}; or leave pairs out.`,
  )
}

/** What the key words stand for. */
function keyWordRows(headings: readonly SortHeading[]): readonly string[] {
  const told = headings.flatMap(({ title, keyWord }) =>
    keyWord === undefined ? [] : [`“${keyWord.text}” for ${title}`],
  )
  return told.length === 0 ? [] : [`Over the columns stand ${told.join(', ')}.`]
}

function closedSortFaces(request: SortRequest, set: CardSet, size: Size): Outcome<readonly CardFace[]> {
  const { type, item, measure } = request
  const border = headerBorder(item.border)
  const titled = set.cards.filter(({ kind, words }) => kind === 'header' && words.length === 0)
  const fit = fitTexts({
    texts: titlesInRoom(titled, textRoom(size, border, type)),
    minimumMm: type.textMm,
    maximumMm: Math.min(type.wordMaximumMm, size.heightMm * 0.22),
    weight: 700,
    measure,
    place: item.place,
  })
  if (!fit.ok) return fit
  const style = { sizeMm: onOneLine(request, titled, fit.value, size), weight: 700, align: 'centre' } as const
  const faces = set.cards.map(card => {
    if (card.kind !== 'header') return wordAloneFace(request, asWord(card), set, size)
    if (card.words.length === 0)
      return textCardFace({ ...request, card, set, size, text: card.title!, style, border })
    return keyWordFace(request, { card, set, size, border })
  })
  return succeed(faces)
}

/** The partner of a word is a word to look at, too; what the analysis found is of the other, and so it has no marks. */
function asWord(card: Card): Card {
  return card.shows === 'form' ? { ...card, words: [plainWord(card.title!)] } : card
}

/** Smaller by so much at most, headers that stand on one line each look alike. */
const LEAST_OF_LARGEST = 0.6

function onOneLine(
  { measure, item, type }: SortRequest,
  titled: CardSet['cards'],
  largestMm: number,
  size: Size,
): number {
  const widest = Math.max(0, ...titled.map(({ title }) => measure(title ?? '', 1, 700)))
  const { widthMm } = textRoom(size, headerBorder(item.border), type)
  const oneLineMm = Math.max(type.textMm, (widthMm - 0.1) / Math.max(widest, 0.01))
  return oneLineMm < largestMm && oneLineMm >= largestMm * LEAST_OF_LARGEST ? oneLineMm : largestMm
}

/** A header with its key word, and the teacher's picture of it where she wants that. */
function keyWordFace(
  request: SortRequest,
  { card, set, size, border }: Pick<CardFaceRequest, 'card' | 'set' | 'size' | 'border'>,
): CardFace {
  const word = card.words[0]!
  const picture = request.options.headers === 'key picture' ? request.pictureOf(word) : undefined
  return cardFace({
    ...request,
    card,
    set,
    size,
    border,
    text: [word.text],
    content: (
      <div style={{ display: 'flex', flexGrow: 1, width: '100%', alignItems: 'center' }}>
        {picture !== undefined && (
          <Slot name="picture" style={{ width: '35%', height: '86%', marginLeft: '4%', flexShrink: 0 }} />
        )}
        <Slot name="word" style={{ flexGrow: 1, height: '100%' }} />
      </div>
    ),
    slots: {
      word: wordSlot(request, word, { align: 'centre', ...whiteAround(size) }),
      ...(picture === undefined ? {} : { picture: pictureSlot(picture, word.text) }),
    },
  })
}

/** A heavy line around each header; another one where the words have a heavy line themselves. */
function headerBorder(wordBorder: string | undefined): string {
  return wordBorder?.startsWith('thick') ? 'double-cut' : 'thick-round'
}
