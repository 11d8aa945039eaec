import type { Size } from '../src/geometry.js'
import { succeed } from '../src/outcomes.js'
import { type CardFace, mm } from '../src/pieces/faces/face.js'
import { Slot } from '../src/pieces/faces/slot.js'
import { contentRoom } from '../src/pieces/parts/card-frame.js'
import { Rule } from '../src/pieces/parts/rules.js'
import { tableRows, textRow } from '../src/pieces/parts/table-rows.js'
import { titlesInRoom } from '../src/pieces/parts/text-card.js'
import { balancedLines } from '../src/pieces/text/balanced-lines.js'
import { linesHeight } from '../src/pieces/text/break-lines.js'
import { fitTexts } from '../src/pieces/text/fit-texts.js'
import { Lines } from '../src/pieces/text/lines.js'
import { choice, option } from '../src/plan/values/options.js'
import type { Outcome } from '../src/problems.js'
import type { Card, CardSet } from '../src/sets/card-set.js'
import { chainCards as chainOfCards } from '../src/sets/games/chain-cards.js'
import { promptKinds } from '../src/sets/games/prompt.js'
import { grownUpPages } from './grown-up-pages.js'
import { defineLayout, type RequestWith } from './layout.js'
import { wordCardFace } from './one-card-a-word.js'

const options = { ask: option('what a card asks for its next one by', choice(promptKinds, 'clue')) }

type ChainRequest = RequestWith<typeof options>

/** Cards that answer one another round in a loop: each has a word, and the clue or plural of the next one. */
export const chainCards = defineLayout({
  kind: 'pieces',
  name: 'chain-cards',
  summary:
    'cards that call one another round the class: a word, and the clue or plural of the next card’s word',
  options,
  marks: 'none',
  perSheet: { columns: 2, rows: 4 },
  perSheetLarge: { columns: 1, rows: 3 },
  set: request => {
    const { words, item, options, itemName, plan } = request
    return chainOfCards({
      words,
      ask: options.ask,
      copies: item.copies,
      seed: plan.seed,
      label: itemName,
      place: item.place,
    })
  },
  faces: chainFaces,
  pages: (request, set, room) => {
    const { options, type, measure } = request
    const cards = new Map(set.cards.filter(card => card.copy === 1).map(card => [card.number, card]))
    const named = (number: number) => `${number} ${cards.get(number)!.words[0]!.text}`
    const rows = [
      textRow(
        'Hand out all the cards. Whoever begins reads the foot of the card; the child with the word for it reads on. The last card leads back to the first.',
        { style: { sizeMm: type.adultTextMm }, widthMm: room.widthMm, measure },
      ),
      ...tableRows({
        columns: [
          { heading: 'card', share: 0.25 },
          { heading: `reads the ${options.ask}`, share: 0.5 },
          { heading: 'which calls', share: 0.25 },
        ],
        cells: (set.answers ?? []).map(({ numbers: [from = 0, to = 0] }) => [
          named(from),
          cards.get(from)!.title!,
          named(to),
        ]),
        widthMm: room.widthMm,
        textMm: type.adultTextMm,
        measure,
      }),
    ]
    return grownUpPages(request, { kind: 'answers', what: 'answers', rows, room })
  },
})

/** How the lower half of a card divides its room. */
interface PromptPart {
  readonly leadIn: string
  readonly leadInMm: number
  readonly room: Size
}

/** White kept beside the prompt. */
const PADDING_MM = 2.5

function promptPart(request: ChainRequest, size: Size): PromptPart {
  const { type, item, options, measure } = request
  const inside = contentRoom(size, item.border, type)
  const widthMm = inside.widthMm - 2 * PADDING_MM
  // In large print the short one, before it takes a wider card.
  const leadIns = [options.ask === 'clue' ? 'Next clue:' : 'Next plural:', 'Next:']
  const leadIn = leadIns.find(text => measure(text, type.textMm) <= widthMm) ?? leadIns[0]!
  return {
    leadIn,
    leadInMm: type.textMm,
    room: {
      widthMm,
      heightMm: inside.heightMm * PROMPT_SHARE - linesHeight(1, type.textMm) - 1,
    },
  }
}

/** The prompt's share of a card: a word stands on one line, a clue on two or three. */
const PROMPT_SHARE = 0.56

function chainFaces(request: ChainRequest, set: CardSet, size: Size): Outcome<readonly CardFace[]> {
  const { type, item, options, measure } = request
  const part = promptPart(request, size)
  // A sentence larger than this only makes more lines; a plural is one word, no larger than the words that answer it.
  const mostMm = Math.min(size.heightMm / (options.ask === 'clue' ? 9 : 5), type.wordMaximumMm)
  const fitting = { weight: 400, measure, place: item.place, minimumMm: type.textMm } as const
  const oneLine = { widthMm: part.room.widthMm, heightMm: linesHeight(1, part.leadInMm) }
  const leadIn = { text: part.leadIn, on: 'each card', room: oneLine }
  const led = fitTexts({ ...fitting, texts: [leadIn], maximumMm: type.textMm })
  if (!led.ok) return led
  const fit = fitTexts({
    ...fitting,
    texts: titlesInRoom(set.cards, part.room),
    maximumMm: Math.max(type.textMm, mostMm),
  })
  if (!fit.ok) return fit
  const faces = set.cards.map(card => chainFace(request, card, set, { size, part, textMm: fit.value }))
  return succeed(faces)
}

function chainFace(
  request: ChainRequest,
  card: Card,
  set: CardSet,
  { size, part, textMm }: { readonly size: Size; readonly part: PromptPart; readonly textMm: number },
): CardFace {
  const prompt = card.title!
  const style = { sizeMm: textMm, align: 'centre' } as const
  const lines = balancedLines(prompt, part.room.widthMm, style, request.measure)
  return wordCardFace(request, {
    card,
    set,
    size,
    place: { align: 'centre', paddingMm: size.heightMm / 24 },
    content: (
      <>
        <div style={{ display: 'flex', flexGrow: 1, flexBasis: 0, position: 'relative' }}>
          <Slot name="word" style={{ flexGrow: 1, height: '100%' }} />
          <Rule color="#404040" />
        </div>
        <div
          style={{
            display: 'flex',
            flexDirection: 'column',
            flexShrink: 0,
            height: mm(part.room.heightMm + linesHeight(1, part.leadInMm) + 1),
            paddingTop: mm(1),
            boxSizing: 'border-box',
          }}
        >
          <Lines lines={[part.leadIn]} style={{ sizeMm: part.leadInMm, align: 'centre', color: '#404040' }} />
          <Slot name="prompt" style={{ flexGrow: 1, width: '100%' }} />
        </div>
      </>
    ),
    moreText: [prompt],
    moreSlots: { prompt: { kind: 'text', lines, style } },
  })
}
