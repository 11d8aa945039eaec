import { describe, expect, it } from 'vitest'
import { loadTypeface } from '../../../fonts/load-typeface.js'
import { wordFacts } from '../../../layouts/word-lists/word-facts.js'
import { typeScale } from '../../../src/pieces/text/type-scale.js'
import { wordsOfAWeek } from '../../sets/sorts/words-of-a-week.js'

const words = wordsOfAWeek('reed, marsh, shrub, thrush, leaf, wren, moth, berry, fox, deer, frog, perch')
const loaded = loadTypeface({ name: 'andika', place: { file: 'plan.yaml' } })
if (!loaded.ok) throw new Error('andika does not load')
const type = typeScale({ kind: 'normal' }, loaded.value)

/** How many texts are measured to find the height of every row. */
function measuredFor(copies: number): number {
  const list = Array.from({ length: copies }, () => words).flat()
  let measured = 0
  const measure = (text: string, sizeMm: number) => {
    measured += 1
    return text.length * sizeMm * 0.5
  }
  const facts = wordFacts({ words: list, type, measure })
  for (const word of list) facts.heightMm(word, 120)
  return measured
}

describe('what stands beside the words of a marked list', () => {
  it('is divided into columns once, not once a word', () => {
    expect(measuredFor(8) / measuredFor(2)).toBeLessThan(5)
  })
})
