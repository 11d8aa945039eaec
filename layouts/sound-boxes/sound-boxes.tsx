import type { Size } from '../../src/geometry.js'
import { andThen, failWith, succeed } from '../../src/outcomes.js'
import { type CardFace, mm, type SlotContent } from '../../src/pieces/faces/face.js'
import { Slot } from '../../src/pieces/faces/slot.js'
import { cardFace } from '../../src/pieces/parts/card-face.js'
import { contentRoom } from '../../src/pieces/parts/card-frame.js'
import { pictureSlot } from '../../src/pieces/parts/picture-slot.js'
import { choice, option } from '../../src/plan/values/options.js'
import { errorAt, type Outcome, type Problem, warningAt } from '../../src/problems.js'
import type { Card, CardSet } from '../../src/sets/card-set.js'
import type { Word } from '../../src/words/word.js'
import { grownUpPages } from '../grown-up-pages.js'
import { defineLayout, type RequestWith } from '../layout.js'
import { oneCardAWord, wordSlot } from '../one-card-a-word.js'
import { stripAnswers } from '../strip-answers.js'
import { ARROW_MM, drawSoundBoxes, LEAST_BOX_MM, MOST_BOX_MM } from './sound-box-row.js'

const options = {
  show: option('what stands above the boxes', choice(['picture', 'word', 'nothing'], undefined), {
    usual: 'your picture where there is one, else nothing',
  }),
}

type SoundBoxRequest = RequestWith<typeof options>

/**
 * Strips with a box for each sound of a word, into which a child pushes a counter as she says the sound. The way of
 * working is D. B. Elkonin's (1963, in B. Simon and J. Simon, Educational Psychology in the USSR): a picture, and
 * under it as many boxes as the word has sounds, no letters.
 */
export const soundBoxes = defineLayout({
  kind: 'pieces',
  name: 'sound-boxes',
  summary:
    'strips with a box for each sound, to push counters into; the words and sounds on a page of their own',
  inWeek: { day: 'practice', given: 'each child' },
  options,
  marks: 'none',
  perSheet: { columns: 1, rows: 5 },
  perSheetLarge: { columns: 1, rows: 4 },
  set: request => {
    const note =
      'A box for each sound: the child says the word slowly and pushes a counter into a box at each sound (Elkonin 1963).'
    return andThen(oneCardAWord(request), cards => succeed({ ...cards, notes: [note] }))
  },
  faces: soundFaces,
  pages: (request, set, room) => {
    const { type, measure } = request
    const rows = stripAnswers({
      set,
      asks: 'sounds',
      widthMm: room.widthMm,
      textMm: type.adultTextMm,
      measure,
    })
    return grownUpPages(request, { kind: 'answers', what: 'answers', rows, room })
  },
})

/** What stands beside the boxes: what the teacher says, or the pictures where there are any. */
function shown({ options, words }: SoundBoxRequest): 'picture' | 'word' | 'nothing' {
  return options.show ?? (words.some(word => word.picture !== undefined) ? 'picture' : 'nothing')
}

/** For a counter and the finger that pushes it: common practice, no source. */
const GOOD_BOX_MM = 18
/** Between what is shown and the boxes. */
const GUTTER_MM = 4
/** Of the strip's width, for its word. */
const WORD_SHARE = 0.34

/** How every strip of the set is divided. */
interface StripPlan {
  readonly size: Size
  readonly besideMm: number
  readonly boxMm: number
  readonly arrow: boolean
}

function soundFaces(request: SoundBoxRequest, set: CardSet, size: Size): Outcome<readonly CardFace[]> {
  const { type, item, words } = request
  const inside = contentRoom(size, item.border, type)
  const widthMm = inside.widthMm - 2 * PADDING_MM
  const heightMm = inside.heightMm - 2 * PADDING_MM
  const besideMm = besideWidth(request, { widthMm, heightMm })
  const most = Math.max(...words.map(word => word.soundCount))
  const alongMm = (widthMm - besideMm - 1) / most
  const boxOf = (roomMm: number) => Math.min(MOST_BOX_MM, alongMm, roomMm - 1)
  // Every strip of the set has the arrow, or none: it takes room only as long as a counter and a finger have theirs.
  const besideArrowMm = boxOf(heightMm - ARROW_MM)
  const arrow = besideArrowMm >= Math.min(GOOD_BOX_MM, boxOf(heightMm))
  const boxMm = arrow ? besideArrowMm : boxOf(heightMm)
  const problems = [...boxProblems(request, boxMm, most, arrow), ...missingPictures(request)]
  if (boxMm < LEAST_BOX_MM) return failWith(problems)
  const plan: StripPlan = { size, besideMm, boxMm, arrow }
  return succeed(
    set.cards.map(card => stripFace(request, card, set, plan)),
    problems,
  )
}

/** White around everything, inside the border. */
const PADDING_MM = 1.5

function besideWidth(request: SoundBoxRequest, { widthMm, heightMm }: Size): number {
  switch (shown(request)) {
    case 'picture':
      return Math.min(heightMm, widthMm * WORD_SHARE) + GUTTER_MM
    case 'word':
      return widthMm * WORD_SHARE + GUTTER_MM
    case 'nothing':
      return 0
  }
}

function boxProblems(
  { item, words }: SoundBoxRequest,
  boxMm: number,
  most: number,
  arrow: boolean,
): readonly Problem[] {
  if (boxMm >= GOOD_BOX_MM) {
    if (arrow) return []
    const message = 'the strips are too low for the arrow that shows a child which way to go: it is left out'
    return [warningAt(item.place, message, 'Print fewer on a sheet, or show the way by hand.')]
  }
  const longest = words.find(word => word.soundCount === most)!
  const message = `the sound boxes are ${boxMm.toFixed(1)} mm wide, because "${longest.text}" has ${most} sounds`
  const advice = 'Print fewer on a sheet (across: 1), turn the paper, or leave that word out.'
  return boxMm < LEAST_BOX_MM
    ? [errorAt(item.place, `${message}: no counter goes in`, advice)]
    : [warningAt(item.place, `${message}; ${GOOD_BOX_MM} mm suits a counter`, advice)]
}

function missingPictures(request: SoundBoxRequest): readonly Problem[] {
  if (shown(request) !== 'picture') return []
  const without = request.words.filter(word => request.pictureOf(word) === undefined)
  if (without.length === 0) return []
  return [
    warningAt(
      request.item.place,
      `no picture for ${without.map(word => `"${word.text}"`).join(', ')}: the place beside the boxes stays empty`,
      'Give each word a picture, or write show: word or show: nothing.',
    ),
  ]
}

function stripFace(
  request: SoundBoxRequest,
  card: Card,
  set: CardSet,
  { size, besideMm, boxMm, arrow }: StripPlan,
): CardFace {
  const word = card.words[0]!
  const beside = shown(request)
  const align = beside === 'nothing' ? 'centre' : 'left'
  return cardFace({
    ...request,
    card,
    set,
    size,
    border: request.item.border,
    text: beside === 'word' ? [word.text] : [],
    content: (
      <div style={{ display: 'flex', flexGrow: 1, padding: mm(PADDING_MM), boxSizing: 'border-box' }}>
        <Beside request={request} widthMm={besideMm} />
        <Slot name="boxes" style={{ flexGrow: 1, height: '100%' }} />
      </div>
    ),
    slots: {
      ...besideSlots(request, word),
      boxes: {
        kind: 'art',
        draw: room => drawSoundBoxes({ boxes: word.soundCount, boxMm, arrow, align, room }),
      },
    },
  })
}

function Beside({ request, widthMm }: { readonly request: SoundBoxRequest; readonly widthMm: number }) {
  if (shown(request) === 'nothing') return null
  return (
    <div style={{ display: 'flex', width: mm(widthMm), height: '100%', flexShrink: 0 }}>
      <Slot name="beside" style={{ width: mm(widthMm - GUTTER_MM), height: '100%' }} />
    </div>
  )
}

function besideSlots(request: SoundBoxRequest, word: Word): Readonly<Record<string, SlotContent>> {
  switch (shown(request)) {
    case 'picture':
      return { beside: pictureSlot(request.pictureOf(word), word.text) }
    case 'word':
      return { beside: wordSlot(request, word, { align: 'left', paddingMm: 1 }) }
    case 'nothing':
      return {}
  }
}
