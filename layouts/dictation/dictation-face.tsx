import type { Size } from '../../src/geometry.js'
import { fail, succeed } from '../../src/outcomes.js'
import { type CardFace, mm } from '../../src/pieces/faces/face.js'
import { cardFace } from '../../src/pieces/parts/card-face.js'
import { contentRoom } from '../../src/pieces/parts/card-frame.js'
import { errorAt, type Outcome, type Problem } from '../../src/problems.js'
import type { CardSet } from '../../src/sets/card-set.js'
import {
  BESIDE_LINES_MM,
  LabelledRow,
  leastLabelled,
  leastLineMm,
  linesToWrite,
  mostWriting,
  WritingRow,
} from '../writing/writing-lines.js'
import { type DictationPart, type DictationRequest, partsOf, sentenceOf } from './dictation-options.js'

/** White between the lines and the set mark below them. */
const ABOVE_MARK_MM = 2

/** The same lines for every child; an error where they are too close, or too short, to write on. */
export function dictationFaces(
  request: DictationRequest,
  set: CardSet,
  size: Size,
): Outcome<readonly CardFace[]> {
  const { type, item, words, measure } = request
  const room = contentRoom(size, item.border, type)
  const labelMm = measure(String(words.length), type.textMm) + 4
  const lineLengthMm = room.widthMm - labelMm - BESIDE_LINES_MM
  const neededMm = leastLineMm(words)
  if (lineLengthMm < neededMm) return fail(tooShort(request, lineLengthMm, neededMm))
  const parts = partsOf(request).map(part => ({
    ...part,
    sentences: part.words.map(word => {
      const sentence = sentenceOf(request, word)
      return sentence === undefined ? 0 : linesToWrite(sentence, lineLengthMm)
    }),
  }))
  const leastMm = leastLabelled(type)
  const lines = Math.max(...parts.map(linesOf))
  const lineMm = Math.min(mostWriting(leastMm), (room.heightMm - ABOVE_MARK_MM) / lines)
  if (lineMm < leastMm) return fail(tooClose(request, lines, lineMm))
  return succeed(
    set.cards.map(card => {
      const part = parts[(card.part?.number ?? 1) - 1]!
      return cardFace({
        ...request,
        card,
        set,
        size,
        border: item.border,
        text: ['Name', ...part.words.map((_, index) => String(part.from + index))],
        content: <PartLines part={part} sizeMm={type.textMm} lineMm={lineMm} labelMm={labelMm} />,
        slots: {},
      })
    }),
  )
}

interface PartToWrite extends DictationPart {
  /** How many lines each word's sentence takes. */
  readonly sentences: readonly number[]
}

/** For the name, for each word and for the sentences. */
function linesOf({ words, sentences }: PartToWrite): number {
  return 1 + words.length + sentences.reduce((sum, count) => sum + count, 0)
}

function PartLines({
  part: { words, from, sentences },
  sizeMm,
  lineMm,
  labelMm,
}: {
  readonly part: PartToWrite
  readonly sizeMm: number
  readonly lineMm: number
  readonly labelMm: number
}) {
  return (
    <div style={{ display: 'flex', flexDirection: 'column', flexGrow: 1, width: '100%' }}>
      <LabelledRow label="Name" heightMm={lineMm} sizeMm={sizeMm} />
      {words.map((_, index) => (
        <div style={{ display: 'flex', flexDirection: 'column', width: '100%' }}>
          <LabelledRow label={String(from + index)} heightMm={lineMm} sizeMm={sizeMm} labelMm={labelMm} />
          <div
            style={{ display: 'flex', flexDirection: 'column', marginLeft: mm(labelMm - BESIDE_LINES_MM) }}
          >
            {Array.from({ length: sentences[index]! }, () => (
              <WritingRow heightMm={lineMm} />
            ))}
          </div>
        </div>
      ))}
    </div>
  )
}

function tooShort({ item }: DictationRequest, lineMm: number, neededMm: number): Problem {
  return errorAt(
    item.place,
    `the lines of the sheet would be ${lineMm.toFixed(0)} mm long, and its longest word takes ${neededMm.toFixed(0)} mm in a child’s hand`,
    'Put fewer columns on a sheet with across, or choose larger paper.',
  )
}

function tooClose({ item, type }: DictationRequest, lines: number, lineMm: number): Problem {
  return errorAt(
    item.place,
    `the ${lines} lines of the sheet would be ${lineMm.toFixed(1)} mm apart, and ${leastLabelled(type).toFixed(0)} mm is the least to write on`,
    'Give fewer words or shorter sentences, write sentences: no or parts: 2, or choose larger paper.',
  )
}
