import { describe, expect, it } from 'vitest'
import { soundSpans } from '../../../src/pieces/marks/sound-marks.js'
import { rowHeightEm } from '../../../src/pieces/typeface/glyph-outline.js'
import { drawWord } from '../../../src/pieces/word/word-art.js'
import { openLexicon } from '../../../src/words/lexicon/lexicon.js'
import { studyWord } from '../../../src/words/study.js'
import { bundledTypefaces } from '../bundled-typefaces.js'

const SIZE_MM = 12
/** Ink is known by rows: no two marks can be told to hang nearer to one level than that. */
const rowMm = rowHeightEm * SIZE_MM

const lexicon = openLexicon()

function studied(text: string) {
  const word = studyWord({ text, place: { file: 'plan.yaml' }, overrides: {} }, lexicon)
  if (!word.ok) throw new Error(`${text} is no word`)
  return word.value
}

describe.each(bundledTypefaces.map(typeface => [typeface.name, typeface] as const))(
  'in %s',
  (_, typeface) => {
    it.each(['puppy', 'jumping', 'frog', 'queen', 'marsh', 'yellow'])(
      'the sound marks of %s keep one level, whatever reaches down between them',
      word => {
        const { marks } = drawWord({ typeface, word, spans: soundSpans(studied(word)), sizeMm: SIZE_MM })
        expect(marks.length).toBeGreaterThan(2)
        const tops = marks.map(({ yMm }) => yMm)
        expect(Math.max(...tops) - Math.min(...tops)).toBeLessThan(rowMm * 1.01)
      },
    )
  },
)

describe('sound marks', () => {
  it('are as many as the word’s pieces that are heard', () => {
    for (const word of ['knife', 'marsh', 'queen', 'box', 'rabbit'])
      expect(soundSpans(studied(word))).toHaveLength(
        studied(word).pieces.filter(piece => !piece.silent).length,
      )
  })

  it('are seen under as many of them as asked for, from the first, and keep the others’ place', () => {
    const spans = soundSpans(studied('knife'), 'bar', 2)
    expect(spans.map(({ unseen = false }) => unseen)).toEqual([false, false, true])
  })
})
