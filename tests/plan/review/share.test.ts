import { expect, it } from 'vitest'
import { readShare, wordsForShare } from '../../../src/plan/review/share.js'
import { toldBy } from '../reading.js'

const place = { file: 'week.yaml', line: 1, column: 1 }
const read = (text: string) => readShare({ kind: 'text', text, place })

it.each([
  ['1/4', 0.25],
  ['25 %', 0.25],
  ['12.5%', 0.125],
  ['0.5', 0.5],
  ['3 / 4', 0.75],
])('a share may be written as %s', (text, part) => {
  expect(read(text)).toMatchObject({ ok: true, value: { part, text } })
})

it.each([
  ['a bit', '"a bit" is no part of a list'],
  ['4', '"4" is no part of a list'],
  ['1/0', 'a share of 1/0 is not taken'],
  ['9/10', 'a share of 9/10 is not taken'],
  ['1/100', 'a share of 1/100 is not taken'],
])('%s is refused', (text, message) => {
  expect(toldBy(read(text))).toEqual([`week.yaml:1:1: error: ${message}`])
})

it('a share is a part of the whole list: a fourth of it is one old word to three new ones', () => {
  const old = [3, 9, 12, 10, 1].map(own => wordsForShare(own, { part: 1 / 4, text: '1/4' }))
  expect(old).toEqual([1, 3, 4, 3, 1])
})

it('a list without words of its own takes none', () => {
  expect(wordsForShare(0, { part: 1 / 4, text: '1/4' })).toBe(0)
})
