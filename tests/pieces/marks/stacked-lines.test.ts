import { describe, expect, it } from 'vitest'
import { assignStyles } from '../../../src/pieces/marks/assign-styles.js'
import { stackedLines } from '../../../src/pieces/marks/stacked-lines.js'
import type { PlanMark } from '../../../src/plan/plan.js'
import { openLexicon } from '../../../src/words/lexicon/lexicon.js'
import { studyWord } from '../../../src/words/study.js'

const lexicon = openLexicon()

const words = ['night', 'high', 'reed'].map(text => {
  const word = studyWord({ text, place: { file: 'plan.yaml' }, overrides: {} }, lexicon)
  if (!word.ok) throw new Error(`${text} cannot be studied`)
  return word.value
})

const mark = (letters: string, line: string): PlanMark => ({
  place: { file: 'plan.yaml' },
  target: { kind: 'letters', letters },
  line,
})

const told = (...marks: readonly PlanMark[]) =>
  stackedLines(words, assignStyles(marks).marks).map(({ message }) => message)

describe('two straight lines', () => {
  it('are warned of where they stand under the same letters, with the words', () => {
    const same: PlanMark = { ...mark('igh', 'double'), target: { kind: 'pattern', pattern: 'trigraph' } }
    expect(told(same, mark('igh', 'single'))).toEqual([
      'the lines of trigraph and "igh" stand under the same letters and may be read as one: night, high',
    ])
  })

  it('are not where one is longer, or not straight, or they never meet', () => {
    expect(told(mark('igh', 'double'), mark('gh', 'single'))).toEqual([])
    expect(told(mark('igh', 'double'), mark('igh', 'wavy'))).toEqual([])
    expect(told(mark('igh', 'double'), mark('ee', 'single'))).toEqual([])
  })
})
