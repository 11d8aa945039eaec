import { describe, expect, it } from 'vitest'
import { slotWordFinder, syllableStarts } from '../../../src/pieces/faces/slot-words.js'
import { openLexicon } from '../../../src/words/lexicon/lexicon.js'
import { studyWord } from '../../../src/words/study.js'
import type { Word } from '../../../src/words/word.js'

function study(text: string): Word {
  const studied = studyWord({ text, place: { file: 'plan.yaml' }, overrides: {} }, openLexicon())
  if (!studied.ok) throw new Error(`${text} cannot be studied`)
  return studied.value
}

const slot = { kind: 'word', marked: false, sizeGroup: 'main', align: 'centre', paddingMm: 1 } as const

describe('sound marks', () => {
  const marksOf = (text: string) =>
    slotWordFinder([])({ ...slot, word: study(text), soundMarks: 'bar' }).spans.map(({ mark, ranges }) => [
      text.slice(ranges[0].start, ranges[0].end),
      mark.line,
    ])

  it('are alike for a letter and for letters that spell one sound, and nothing for a silent letter', () => {
    expect(marksOf('marsh')).toEqual([
      ['m', 'sound bar'],
      ['ar', 'sound bar'],
      ['sh', 'sound bar'],
    ])
    expect(marksOf('snake').map(([letters]) => letters)).toEqual(['s', 'n', 'a', 'k'])
  })

  it('are two bars for x, which spells two sounds', () => {
    expect(marksOf('fox').at(-1)).toEqual(['x', '2 sound bars'])
  })
})

describe('syllable breaks', () => {
  it('stand where each further syllable begins', () => {
    expect(syllableStarts({ text: 'otter', syllables: ['ot', 'ter'] })).toEqual([2])
    expect(syllableStarts({ text: 'dragonfly', syllables: ['drag', 'on', 'fly'] })).toEqual([4, 6])
    expect(syllableStarts({ text: 'reed', syllables: ['reed'] })).toEqual([])
  })

  it('are left out where a hyphen divides the word already', () => {
    expect(syllableStarts({ text: 'dry-dock', syllables: ['dry', 'dock'] })).toEqual([])
  })

  it('read the teacher’s division whatever its capitals', () => {
    expect(syllableStarts({ text: 'Heron', syllables: ['her', 'on'] })).toEqual([3])
  })
})

describe('a slot’s word', () => {
  it('is the same for slots that show it alike, another where one shows more', () => {
    const find = slotWordFinder([])
    const word = study('otter')
    expect(find({ ...slot, word })).toBe(find({ ...slot, word, align: 'left' }))
    expect(find({ ...slot, word, syllableBreaks: true }).syllableBreaks).toEqual([2])
    expect(find({ ...slot, word, syllableBreaks: true }).key).not.toBe(find({ ...slot, word }).key)
  })
})
