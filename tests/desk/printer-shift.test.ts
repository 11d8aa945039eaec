import { expect, it } from 'vitest'
import { readShift, writtenShift } from '../../src/desk/printer-shift.js'

it.each([
  ['1.2 mm right, 0.8 mm down', { rightMm: 1.2, downMm: 0.8 }, '1.2 mm right, 0.8 mm down'],
  ['2 to the left', { rightMm: -2, downMm: 0 }, '2 mm left'],
  ['1 mm right and 0.5 cm up', { rightMm: 1, downMm: -5 }, '1 mm right, 5 mm up'],
  ['', { rightMm: 0, downMm: 0 }, ''],
])('reads the shift of the backs off "%s" and writes it again', (text, shift, written) => {
  expect(readShift({ 'back shift': text }).shift).toEqual(shift)
  expect(writtenShift(shift)).toBe(written)
})

it('joins a shift that braces have cut off at its comma', () => {
  expect(readShift({ 'back shift': '1 mm right', '0.8 mm up': '', passes: 'two' })).toEqual({
    shift: { rightMm: 1, downMm: -0.8 },
    text: '1 mm right, 0.8 mm up',
    isCutOff: true,
  })
})

it('leaves a shift in inches as it is written', () => {
  expect(readShift({ 'back shift': '1/16 in right' })).toEqual({
    shift: undefined,
    text: '1/16 in right',
    isCutOff: false,
  })
})
