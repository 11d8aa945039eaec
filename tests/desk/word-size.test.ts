import { expect, it } from 'vitest'
import { centimetres, readSize, writtenSize } from '../../src/desk/word-size.js'

it.each([
  [undefined, { kind: 'normal' }, undefined],
  ['Large', { kind: 'large' }, 'large'],
  ['24 pt', { kind: 'points', amount: '24', exactly: false }, '24 pt'],
  ['exactly 28pt', { kind: 'points', amount: '28', exactly: true }, 'exactly 28 pt'],
  ['x-height 6.5 mm', { kind: 'x-height', amount: '6.5', exactly: false }, 'x-height 6.5 mm'],
  [{ 'x-height': '6 mm' }, { kind: 'x-height', amount: '6', exactly: false }, 'x-height 6 mm'],
  ['x-height 0.3 in', { kind: 'other', text: 'x-height 0.3 in' }, 'x-height 0.3 in'],
  [
    { for: { acuity: '20/200', distance: '25 cm', reserve: '3' } },
    { kind: 'acuity', acuity: '20/200', distance: '25 cm', reserve: '3' },
    { for: { acuity: '20/200', distance: '25 cm', reserve: '3' } },
  ],
])('reads the size %j by its parts and writes it again', (value, size, written) => {
  expect(readSize(value)).toEqual(size)
  expect(writtenSize(readSize(value))).toEqual(written)
})

it.each([
  ['25 cm', '25'],
  ['250 mm', '25'],
  ['333', '33.3'],
  ['', ''],
  ['10 in', undefined],
])('has %s as %s centimetres', (text, cm) => {
  expect(centimetres(text)).toBe(cm)
})
