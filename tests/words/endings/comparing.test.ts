import { expect, test } from 'vitest'
import { comparativeOf, superlativeOf } from '../../../src/words/endings/comparing.js'

test.each([
  ['wet', 'W EH1 T', 'wetter', 'wettest', 'double the last letter'],
  ['windy', 'W IH1 N D IY0', 'windier', 'windiest', 'y to i'],
  ['wide', 'W AY1 D', 'wider', 'widest', 'drop e'],
  ['cold', 'K OW1 L D', 'colder', 'coldest', ''],
  ['narrow', 'N EH1 R OW0', 'narrower', 'narrowest', ''],
  ['gentle', 'JH EH1 N T AH0 L', 'gentler', 'gentlest', 'drop e'],
])('%s, %s', (text, pronunciation, more, most, rule) => {
  const before = rule === '' ? '' : `${rule}, `
  expect(comparativeOf({ text, pronunciation })).toEqual({ form: more, rule: `${before}add er` })
  expect(superlativeOf({ text, pronunciation })).toEqual({ form: most, rule: `${before}add est` })
})

test('good and bad have forms of their own', () => {
  expect(comparativeOf({ text: 'good' })).toEqual({ form: 'better', rule: 'irregular ending' })
  expect(superlativeOf({ text: 'bad' })).toEqual({ form: 'worst', rule: 'irregular ending' })
})

test('long words take more and most instead', () => {
  expect(comparativeOf({ text: 'careful', pronunciation: 'K EH1 R F AH0 L' })).toBeNull()
  expect(superlativeOf({ text: 'important', pronunciation: 'IH2 M P AO1 R T AH0 N T' })).toBeNull()
})
