/** Words with a box for the letters of each sound. */
import type { Size } from '../../src/geometry.js'
import { pathText, rectangle } from '../../src/pieces/art/path-text.js'
import { Slot } from '../../src/pieces/faces/slot.js'
import type { Art } from '../../src/pieces/piece.js'
import { soundPractice } from '../../src/sets/practice/sounds.js'
import type { SoundPiece, Word } from '../../src/words/word.js'
import { leastWriting } from '../writing/writing-lines.js'
import type { PracticeKind } from './practice-kind.js'
import type { PracticeRequest } from './practice-options.js'
import { promptRow, rowHeightFor, wordColumns, wordPart } from './prompt-row.js'

export const sounds: PracticeKind = {
  title: 'A box for each sound',
  task: (_, { items }) =>
    items.some(({ word }) => word.pieces.some(({ silent }) => silent))
      ? 'Write the letters of each sound in a box. Silent letters go in a dashed box.'
      : 'Say the word. Write the letters of each sound in a box.',
  practice: ({ words }) => soundPractice(words),
  nothing: {
    message: 'the sounds of every word of the list are a guess, so there is nothing to ask',
    advice: 'Write the sounds of the words, such as sounds: sh r u b, or practise something else.',
  },
  rows: (request, prompts) => {
    const { items, from, room, fillMm, leastWord } = prompts
    const words = items.map(({ word }) => word)
    const besides = wordColumns(request, prompts)
    const boxIn = (widthMm: number) => widthMm / Math.max(...words.map(({ pieces }) => boxesOf(pieces)))
    // Boxes too narrow for a team of letters stand below the word, where they have the whole width.
    const columns = boxIn(besides.answerMm) < leastBoxMm(request) ? belowWord(besides, room.widthMm) : besides
    const leastMm = Math.max(leastWord.heightMm, leastBoxMm(request) + BETWEEN_MM)
    const heightMm = rowHeightFor(request, {
      count: items.length * (columns.stacked ? 2 : 1),
      roomMm: fillMm,
      leastMm,
    })
    const boxMm = Math.min(MOST_BOX_MM, heightMm - BETWEEN_MM, boxIn(columns.answerMm))
    return items.map(({ word }, index) => {
      const number = from + index
      const name = `word ${number}`
      return promptRow(request, {
        number,
        columns,
        promptHeightMm: heightMm,
        answerHeightMm: heightMm,
        prompt: wordPart(request, word, { name, heightMm, widthMm: columns.promptMm }),
        answer: {
          slots: { [`boxes ${number}`]: { kind: 'art', draw: size => drawBoxes(word, boxMm, size) } },
          tree: <Slot name={`boxes ${number}`} style={{ width: '100%', height: '100%' }} />,
        },
        levelWith: name,
      })
    })
  },
  heads: ['word', 'letters of each sound'],
  about: (_, { items }) => [
    'Letters in brackets have no sound of their own: on the children’s page they have a dashed box.',
    ...(items.some(({ word }) => word.pieces.some(({ counts }) => counts > 1))
      ? ['A box that counts two is twice as wide, with a stroke at its foot.']
      : []),
  ],
}

function belowWord({ numberMm }: ReturnType<typeof wordColumns>, widthMm: number) {
  const restMm = widthMm - numberMm
  return { numberMm, promptMm: restMm, gapMm: 0, answerMm: restMm, stacked: true }
}

const MOST_BOX_MM = 15
/** A child's hand writes two letters in it: our own judgement, no source. */
function leastBoxMm({ type }: PracticeRequest): number {
  return leastWriting(type) + 1
}
const BETWEEN_MM = 4
const LINE_MM = 0.5
const HAIR_MM = 0.4
const DASH_MM = 1.4
/** Of the height of a box: the stroke at the foot of one that counts two. */
const STROKE_SHARE = 0.2

function boxesOf(pieces: readonly SoundPiece[]): number {
  return pieces.reduce((sum, piece) => sum + widthOf(piece), 0)
}

/** In boxes: a piece that counts two has room for two. */
function widthOf({ counts }: SoundPiece): number {
  return Math.max(1, counts)
}

/** Boxes side by side in the middle of the room's height, those of silent letters dashed. */
function drawBoxes({ pieces }: Pick<Word, 'pieces'>, boxMm: number, { widthMm, heightMm }: Size): Art {
  const top = (heightMm - boxMm) / 2
  const foot = top + boxMm - LINE_MM
  let left = 0
  const bars = pieces.flatMap(piece => {
    const from = left
    const wide = widthOf(piece) * boxMm
    left += wide
    if (piece.silent) return dashedBox(from, top, wide, boxMm)
    const right = from + wide - LINE_MM
    return [
      ...rectangle(from, top, from + LINE_MM, top + boxMm),
      ...rectangle(right, top, right + LINE_MM, top + boxMm),
      ...rectangle(from, top, right + LINE_MM, top + LINE_MM),
      ...rectangle(from, foot, right + LINE_MM, foot + LINE_MM),
      ...Array.from({ length: widthOf(piece) - 1 }, (_, index) => {
        const at = from + (index + 1) * boxMm
        return rectangle(at, foot - boxMm * STROKE_SHARE, at + HAIR_MM, foot)
      }).flat(),
    ]
  })
  return {
    widthMm,
    heightMm,
    shapes: [{ kind: 'path', d: pathText(bars), fill: '#000000' }],
    text: [],
  }
}

function dashedBox(left: number, top: number, wide: number, high: number) {
  const inset = 1
  const [x1, y1, x2, y2] = [left + inset, top + inset, left + wide - inset, top + high - inset]
  const along = (lengthMm: number) => {
    const count = Math.max(2, Math.round(lengthMm / (2 * DASH_MM)))
    const step = lengthMm / (2 * count - 1)
    return Array.from({ length: count }, (_, index) => [2 * index * step, (2 * index + 1) * step] as const)
  }
  return [
    ...along(x2 - x1).flatMap(([from, to]) => [
      ...rectangle(x1 + from, y1, x1 + to, y1 + HAIR_MM),
      ...rectangle(x1 + from, y2 - HAIR_MM, x1 + to, y2),
    ]),
    ...along(y2 - y1).flatMap(([from, to]) => [
      ...rectangle(x1, y1 + from, x1 + HAIR_MM, y1 + to),
      ...rectangle(x2 - HAIR_MM, y1 + from, x2, y1 + to),
    ]),
  ]
}
