import { describe, expect, it } from 'vitest'
import { keyEntries } from '../../../src/pieces/marks/key-entries.js'
import { drawKeySample } from '../../../src/pieces/marks/key-sample.js'
import { soundSpans } from '../../../src/pieces/marks/sound-marks.js'
import type { StyledMark } from '../../../src/pieces/marks/styled-mark.js'
import { lineNames, outlineNames } from '../../../src/pieces/marks/styles.js'
import type { Grapheme, Word } from '../../../src/words/word.js'
import { bundledTypeface } from '../bundled-typefaces.js'
import { spillMm } from '../pixels.js'

const andika = bundledTypeface('andika')

function wordOf(text: string, graphemes: readonly Grapheme[] = []): Word {
  return {
    text,
    known: true,
    source: 'lexicon',
    pronunciations: [],
    graphemes,
    soundCount: 0,
    syllables: [text],
    patterns: text.includes('ea')
      ? [
          {
            pattern: 'vowel-team',
            letters: 'ea',
            start: text.indexOf('ea'),
            end: text.indexOf('ea') + 2,
            place: 'middle',
            why: '',
          },
        ]
      : [],
    partsOfSpeech: [],
    plural: null,
  }
}

function markOf(
  mark: Partial<StyledMark['mark']>,
  looks: Partial<StyledMark> = { line: 'single' },
): StyledMark {
  const target = { kind: 'letters', letters: 'sh' } as const
  return {
    mark: { place: { file: 'plan.yaml' }, target, ...mark },
    index: 0,
    descenders: 'clear',
    assigned: false,
    ...looks,
  }
}

describe('the key', () => {
  const words = ['marsh', 'Shore', 'heath', 'reed'].map(text => wordOf(text))

  it('has only the marks that these words use, in the order of the plan', () => {
    const marks = [
      markOf({ target: { kind: 'letters', letters: 'mb' } }),
      markOf({ target: { kind: 'pattern', pattern: 'vowel-team' } }),
      markOf({ target: { kind: 'letters', letters: 'sh' } }),
    ]
    expect(
      keyEntries(words, marks).map(({ label, letters, examples }) => [label, letters, examples]),
    ).toEqual([
      ['vowel team', 'ea', ['heath']],
      ['sh', 'sh', ['marsh', 'Shore']],
    ])
  })

  it('calls a mark as the teacher does', () => {
    expect(keyEntries(words, [markOf({ label: 'quiet sound' })])[0]!.label).toBe('quiet sound')
  })
})

describe('a sample in the key', () => {
  const room = { widthMm: 24, heightMm: 12 }

  it.each([...lineNames.map(line => ({ line })), ...outlineNames.map(outline => ({ outline }))])(
    'shows %o on letters that reach down, within its room',
    looks => {
      for (const letters of ['igh', 'a_e', 'y']) {
        const art = drawKeySample({ typeface: andika, mark: markOf({}, looks), letters, sizeMm: 9, room })
        expect(art).toMatchObject(room)
        expect(spillMm(art)).toBeLessThan(0.1)
      }
    },
  )
})

describe('sound marks', () => {
  it('are a dot under a letter with a sound of its own, a dash under a team, nothing under a silent letter', () => {
    const graphemes = [
      { letters: 'sh', start: 0, sounds: ['SH'] },
      { letters: 'a', start: 2, sounds: ['EY'] },
      { letters: 'k', start: 3, sounds: ['K'] },
      { letters: 'e', start: 4, sounds: [] },
    ]
    const spans = soundSpans(wordOf('shake', graphemes))
    expect(spans.map(({ mark, ranges }) => [mark.line, ranges[0].start, ranges[0].end])).toEqual([
      ['single', 0, 2],
      ['sound dot', 2, 3],
      ['sound dot', 3, 4],
    ])
  })
})
