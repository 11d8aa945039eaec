import type { Size } from '../../src/geometry.js'
import { fail, succeed } from '../../src/outcomes.js'
import { type CardFace, mm } from '../../src/pieces/faces/face.js'
import { facesAlike } from '../../src/pieces/parts/card-face.js'
import { contentRoom } from '../../src/pieces/parts/card-frame.js'
import { errorAt, type Outcome, type Problem } from '../../src/problems.js'
import type { CardSet } from '../../src/sets/card-set.js'
import {
  BESIDE_LINES_MM,
  LabelledRow,
  leastLabelled,
  linesToWrite,
  mostWriting,
  WritingRow,
} from '../writing/writing-lines.js'
import { type DictationRequest, sentenceOf } from './dictation-options.js'

/** White between the lines and the set mark below them. */
const ABOVE_MARK_MM = 2

/** The same sheet for every child; an error where its lines are too close to write on. */
export function dictationFaces(
  request: DictationRequest,
  set: CardSet,
  size: Size,
): Outcome<readonly CardFace[]> {
  const { type, item, words, measure } = request
  const room = contentRoom(size, item.border, type)
  const sizeMm = type.textMm
  const labelMm = measure(String(words.length), sizeMm) + 4
  const lineLengthMm = room.widthMm - labelMm - BESIDE_LINES_MM
  const sentences = words.map(word => {
    const sentence = sentenceOf(request, word)
    return sentence === undefined ? 0 : linesToWrite(sentence, lineLengthMm)
  })
  const leastMm = leastLabelled(type)
  const lines = 1 + words.length + sentences.reduce((sum, count) => sum + count, 0)
  const lineMm = Math.min(mostWriting(leastMm), (room.heightMm - ABOVE_MARK_MM) / lines)
  if (lineMm < leastMm) return fail(tooClose(request, lines, lineMm))
  const content = (
    <div style={{ display: 'flex', flexDirection: 'column', flexGrow: 1, width: '100%' }}>
      <LabelledRow label="Name" heightMm={lineMm} sizeMm={sizeMm} />
      {words.map((_, index) => (
        <div style={{ display: 'flex', flexDirection: 'column', width: '100%' }}>
          <LabelledRow label={String(index + 1)} heightMm={lineMm} sizeMm={sizeMm} labelMm={labelMm} />
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
  return succeed(
    facesAlike({
      ...request,
      set,
      size,
      border: item.border,
      text: ['Name', ...words.map((_, index) => String(index + 1))],
      content,
      slots: {},
    }),
  )
}

function tooClose({ item, type }: DictationRequest, lines: number, lineMm: number): Problem {
  return errorAt(
    item.place,
    `the ${lines} lines of the sheet would be ${lineMm.toFixed(1)} mm apart, and ${leastLabelled(type).toFixed(0)} mm is the least to write on`,
    'Give fewer words or shorter sentences, write sentences: no, or choose larger paper.',
  )
}
