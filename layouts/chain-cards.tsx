import type { Size } from '../src/geometry.js'
import { succeed } from '../src/outcomes.js'
import { type CardFace, mm } from '../src/pieces/faces/face.js'
import type { Row } from '../src/pieces/faces/flow-page.js'
import { Slot } from '../src/pieces/faces/slot.js'
import { contentRoom } from '../src/pieces/parts/card-frame.js'
import { Rule } from '../src/pieces/parts/rules.js'
import { tableRows, textRow } from '../src/pieces/parts/table-rows.js'
import { titlesInRoom } from '../src/pieces/parts/text-card.js'
import { balancedLines } from '../src/pieces/text/balanced-lines.js'
import { linesHeight } from '../src/pieces/text/break-lines.js'
import { fitTexts } from '../src/pieces/text/fit-texts.js'
import { Lines } from '../src/pieces/text/lines.js'
import { choice, option, wholeNumber } from '../src/plan/values/options.js'
import type { Outcome } from '../src/problems.js'
import type { Answer, Card, CardSet } from '../src/sets/card-set.js'
import { chainCards as chainOfCards, END_OF_CHAIN } from '../src/sets/games/chain-cards.js'
import { isPrompt, type LinkKind, linkKinds } from '../src/sets/games/chain-links.js'
import { isWord } from '../src/sets/games/prompt.js'
import { grownUpPages } from './grown-up-pages.js'
import { howToPlayPages } from './how-to-play.js'
import { defineLayout, type PageFace, type RequestWith } from './layout.js'
import { offeredPrompts } from './offered-prompts.js'
import { wordCardFace } from './one-card-a-word.js'

const options = {
  ask: option('what a card asks for its next one by', choice(linkKinds, 'clue')),
  loops: option('into how many loops the words are dealt, each for a group of its own', wholeNumber(1, 6, 1)),
}

type ChainRequest = RequestWith<typeof options>

/** Cards that answer one another round in a loop: each has a word, and what leads to the next one. */
export const chainCards = defineLayout({
  kind: 'pieces',
  name: 'chain-cards',
  summary: 'cards that call one another round the class: a word, and what leads to the next card’s word',
  inWeek: { day: 'centres', given: 'once' },
  options,
  marks: 'none',
  perSheet: { columns: 2, rows: 4 },
  perSheetLarge: { columns: 1, rows: 3 },
  set: request => {
    const { words, item, options, itemName, plan } = request
    return chainOfCards({
      words,
      ask: options.ask,
      loops: options.loops,
      promptOf: offeredPrompts,
      copies: item.copies,
      seed: plan.seed,
      label: itemName,
      place: item.place,
    })
  },
  faces: chainFaces,
  pages: chainPages,
})

/** What the child listens for, as the foot of the card introduces it and as the rules say it. */
const wording: Readonly<Record<LinkKind, { readonly leadIn: string; readonly listen: string }>> = {
  clue: { leadIn: 'Next clue:', listen: 'Does your word answer the clue?' },
  plural: { leadIn: 'Next plural:', listen: 'Is that the word for more than one of yours?' },
  'past form': { leadIn: 'Next, yesterday:', listen: 'Is that your word for yesterday?' },
  'ing form': { leadIn: 'Next with ing:', listen: 'Is that your word with ing?' },
  'sound change': { leadIn: 'Next:', listen: 'Change that one sound. Is it your word?' },
  'last letters': { leadIn: 'Next:', listen: 'Does your word begin like that?' },
}

/** A loop ends with the step that leads back to its first card. */
function loopsOf(steps: readonly Answer[]): readonly (readonly Answer[])[] {
  const ends = [...steps.keys()].filter(
    step => step === steps.length - 1 || steps[step + 1]!.numbers[0] !== steps[step]!.numbers[1],
  )
  return ends.map((end, loop) => steps.slice(loop === 0 ? 0 : ends[loop - 1]! + 1, end + 1))
}

function chainPages(request: ChainRequest, set: CardSet, room: Size): readonly PageFace[] {
  const { options, type, measure } = request
  const first = set.cards.filter(card => card.copy === 1)
  const cards = new Map(first.map(card => [card.number, card]))
  const named = (number: number) => `${number} ${cards.get(number)!.words[0]!.text}`
  const paragraph = (text: string) =>
    textRow(text, { style: { sizeMm: type.adultTextMm }, widthMm: room.widthMm, measure })
  const loopHeading = (loop: number): readonly Row[] => {
    const style = { sizeMm: type.adultTextMm, weight: 700 } as const
    const heading = textRow(`Loop ${loop + 1}`, { style, widthMm: room.widthMm, measure })
    const white: Row = {
      heightMm: type.adultTextMm,
      keepsWithNext: true,
      tree: <div style={{ display: 'flex' }} />,
    }
    return [white, { ...heading, keepsWithNext: true }]
  }
  const loops = loopsOf(set.answers ?? [])
  const rows = [
    ...(set.notes ?? []).map(paragraph),
    ...loops.flatMap((steps, loop) => [
      ...(loops.length === 1 ? [] : loopHeading(loop)),
      ...tableRows({
        columns: [
          { heading: 'card', share: 0.25 },
          { heading: isPrompt(options.ask) ? `reads the ${options.ask}` : 'reads', share: 0.5 },
          { heading: 'which calls', share: 0.25 },
        ],
        cells: steps.map(({ numbers: [from = 0, to] }) => [
          named(from),
          cards.get(from)!.title!,
          to === undefined ? '' : named(to),
        ]),
        widthMm: room.widthMm,
        textMm: type.adultTextMm,
        measure,
      }),
    ]),
  ]
  const ends = first.some(({ title }) => title === END_OF_CHAIN)
  const begins = cards.get(set.answers?.[0]?.numbers[0] ?? 1)!.words[0]!.text
  const { leadIn } = wording[options.ask]
  return [
    ...howToPlayPages(
      request,
      {
        play: [
          ends
            ? `Mix the cards and share them all out. Whoever has “${begins}” begins.`
            : `Mix the cards${options.loops === 1 ? '' : ' of your loop'} and share them all out. Anyone may begin.`,
          `Read aloud what stands under “${leadIn}”`,
          `Listen. ${wording[options.ask].listen} Then say the word and read on.`,
          ends ? 'The card with “the end” ends the chain.' : 'Back at the first card? You did it together.',
        ],
        prepare:
          options.loops === 1
            ? `one set of ${first.length} cards for a class or a group, dealt out until none is left; copies prints more sets.`
            : `one set of ${first.length} cards for ${options.loops} groups. ${set.notes?.[0] ?? ''}`,
        help: 'the answer page has the order. Where the chain stops, read the lower half of the last card once more and ask who has the word.',
        easier: 'lay the cards open on a table and build the chain there, one card after another.',
        harder: 'time the chain from its first card to its last, and beat that time next week.',
      },
      room,
    ),
    ...grownUpPages(request, { kind: 'answers', what: 'answers', rows, room }),
  ]
}

/** How the lower half of a card divides its room. */
interface PromptPart {
  readonly leadIn: string
  readonly leadInMm: number
  readonly room: Size
}

/** White between the prompt and the set mark below it. */
const ABOVE_MARK_MM = 1.6

/** White kept beside the prompt. */
const PADDING_MM = 2.5

function promptPart(request: ChainRequest, size: Size): PromptPart {
  const { type, item, options, measure } = request
  const inside = contentRoom(size, item.border, type)
  const widthMm = inside.widthMm - 2 * PADDING_MM
  // In large print the short one, before it takes a wider card.
  const leadIns = [wording[options.ask].leadIn, 'Next:']
  const leadIn = leadIns.find(text => measure(text, type.textMm) <= widthMm) ?? leadIns[0]!
  return {
    leadIn,
    leadInMm: type.textMm,
    room: {
      widthMm,
      heightMm: inside.heightMm * PROMPT_SHARE - linesHeight(1, type.textMm) - 1 - ABOVE_MARK_MM,
    },
  }
}

/** The prompt's share of a card: a word stands on one line, a clue on two or three. */
const PROMPT_SHARE = 0.56

function chainFaces(request: ChainRequest, set: CardSet, size: Size): Outcome<readonly CardFace[]> {
  const { type, item, options, measure } = request
  const part = promptPart(request, size)
  // A sentence larger than this only makes more lines; a form is one word, no larger than the words that answer it.
  const isForm = isPrompt(options.ask) && isWord(options.ask)
  const mostMm = Math.min(size.heightMm / (isForm ? 5 : 9), type.wordMaximumMm)
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
            height: mm(part.room.heightMm + linesHeight(1, part.leadInMm) + 1 + ABOVE_MARK_MM),
            paddingTop: mm(1),
            paddingBottom: mm(ABOVE_MARK_MM),
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
