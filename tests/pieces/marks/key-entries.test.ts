import { describe, expect, it } from 'vitest'
import { keyEntries } from '../../../src/pieces/marks/key-entries.js'
import { drawKeySample } from '../../../src/pieces/marks/key-sample.js'
import type { StyledMark } from '../../../src/pieces/marks/styled-mark.js'
import { lineNames, outlineNames } from '../../../src/pieces/marks/styles.js'
import type { Word } from '../../../src/words/word.js'
import { bundledTypeface } from '../bundled-typefaces.js'
import { spillMm } from '../pixels.js'

const andika = bundledTypeface('andika')

function wordOf(text: string): Word {
  return {
    text,
    known: true,
    source: 'lexicon',
    pronunciations: [],
    graphemes: [],
    soundCount: 0,
    phonemeCount: 0,
    pieces: [],
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

  it('shows each mark on letters that no other mark stands on, though others come more often', () => {
    const marks = [
      markOf({ target: { kind: 'letters', letters: 'sh' } }),
      markOf({ target: { kind: 'pattern', pattern: 'consonant-digraph' } }, { line: 'dotted' }),
    ]
    const found = ['sh', 'sh', 'th'].map((letters, index) => {
      const finding = {
        pattern: 'consonant-digraph',
        letters,
        start: 0,
        end: 2,
        place: 'beginning',
        why: '',
      } as const
      return { ...wordOf(`${letters}${'aeo'[index]}d`), patterns: [finding] }
    })
    expect(keyEntries(found, marks).map(({ letters }) => letters)).toEqual(['sh', 'th'])
  })

  it('says each pattern in words for a child, below her label, and exact letters by themselves', () => {
    const pattern = { kind: 'pattern', pattern: 'vowel-team' } as const
    const marks = [
      markOf({ target: pattern, label: 'vowel friends' }),
      markOf({ target: { kind: 'letters', letters: 'sh' } }),
    ]
    expect(keyEntries(words, marks).map(({ label, says }) => [label, says])).toEqual([
      ['vowel friends', 'letters that make one vowel sound together'],
      ['sh', undefined],
    ])
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
