import { describe, expect, it } from 'vitest'
import { assignStyles } from '../../../src/pieces/marks/assign-styles.js'
import { targetsOf } from '../../../src/pieces/marks/find-targets.js'
import { keyEntries } from '../../../src/pieces/marks/key-entries.js'
import type { PlanMark, WordFeature, WordOverrides } from '../../../src/plan/plan.js'
import { openLexicon } from '../../../src/words/lexicon/lexicon.js'
import { studyWord } from '../../../src/words/study.js'
import type { Word } from '../../../src/words/word.js'

const lexicon = openLexicon()

function studied(text: string, overrides: WordOverrides = {}): Word {
  const word = studyWord({ text, place: { file: 'plan.yaml' }, overrides }, lexicon)
  if (!word.ok) throw new Error(`${text} cannot be studied`)
  return word.value
}

const markOn = (feature: WordFeature, value: string, looks: Partial<PlanMark> = {}): PlanMark => ({
  place: { file: 'plan.yaml' },
  target: { kind: 'word', feature, value },
  ...looks,
})

const marked = (word: Word, mark: PlanMark) =>
  targetsOf(word, assignStyles([mark]).marks).map(({ ranges }) => ranges[0])

describe('a mark on whole words', () => {
  it.each([
    ['part of speech', 'noun', ['reed', 'stream'], ['swim', 'wet']],
    ['plural', 'add es', ['marsh', 'finch'], ['reed', 'swim']],
    ['sounds', '4', ['snake', 'shrub', 'box'], ['marsh', 'reed']],
    ['syllables', '2', ['heron', 'puffin'], ['reed']],
  ] as const)('%s: %s stands on %o from end to end, not on %o', (feature, value, on, off) => {
    const mark = markOn(feature, value)
    for (const word of on) expect(marked(studied(word), mark)).toEqual([{ start: 0, end: word.length }])
    for (const word of off) expect(marked(studied(word), mark)).toEqual([])
  })

  it('takes the part of speech that a word most often is, and each that the teacher gives it', () => {
    expect(marked(studied('duck'), markOn('part of speech', 'verb'))).toEqual([])
    const hers = studied('duck', { partsOfSpeech: ['noun', 'verb'] })
    expect(marked(hers, markOn('part of speech', 'verb'))).toHaveLength(1)
  })

  it('is a tag in the corner where she gives it no look, and takes no style from the marks on letters', () => {
    const letters: PlanMark = { place: { file: 'plan.yaml' }, target: { kind: 'letters', letters: 'sh' } }
    const [noun, sounds, syllables, plural, sh] = assignStyles([
      markOn('part of speech', 'noun'),
      markOn('sounds', '3'),
      markOn('syllables', '3'),
      markOn('plural', 'add es'),
      letters,
    ]).marks
    expect([noun!.tag, sounds!.tag, syllables!.tag, plural!.tag]).toEqual(['n', '3', '•••', '-es'])
    expect([noun!.line, noun!.outline]).toEqual([undefined, undefined])
    expect(sh!.line).toBe(assignStyles([letters]).marks[0]!.line)
  })

  it('is warned of where its tag is another’s too', () => {
    const { problems } = assignStyles([
      markOn('sounds', '3', { tag: 'x' }),
      markOn('syllables', '2', { tag: 'x' }),
    ])
    expect(problems.map(({ message }) => message)).toEqual(['3 sounds and 2 syllables look the same'])
    expect(assignStyles([markOn('sounds', '3'), markOn('sounds', '4')]).problems).toEqual([])
  })

  it('stands in the key by her label, or by what it says, with a sentence for a child', () => {
    const { marks } = assignStyles([
      markOn('sounds', '3'),
      markOn('part of speech', 'noun', { label: 'names' }),
    ])
    expect(keyEntries([studied('reed')], marks).map(({ label, says }) => [label, says])).toEqual([
      ['3 sounds', 'you hear 3 sounds'],
      ['names', 'a word that names someone or something'],
    ])
  })
})
