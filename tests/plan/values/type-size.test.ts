import { describe, expect, it } from 'vitest'
import { parseAcuity, xHeightForAcuityMm } from '../../../src/plan/values/acuity.js'
import { adviceFor, planOf, toldAtMark } from '../reading.js'

const plan = (size: string) => `words: [reed]\nprint:\n  - layout: key\n    size: ${size}\n`
const sizeOf = (size: string) => planOf(plan(size)).print[0]?.size

describe('a type size', () => {
  it.each([
    ['normal', { kind: 'normal' }],
    ['Large', { kind: 'large' }],
    ['24 pt', { kind: 'points', points: 24 }],
    ['24pt', { kind: 'points', points: 24 }],
    ['10.5 points', { kind: 'points', points: 10.5 }],
    ['exactly 28 pt', { kind: 'points', points: 28, exactly: true }],
    ['Exactly x-height 6 mm', { kind: 'x-height', mm: 6, exactly: true }],
    ['x-height 6 mm', { kind: 'x-height', mm: 6 }],
    ['X height 6', { kind: 'x-height', mm: 6 }],
    ['{x-height: 0.5 cm}', { kind: 'x-height', mm: 5 }],
    ['{for: {acuity: 20/200, distance: 40 cm}}', { kind: 'acuity', logMar: 1, distanceMm: 400, reserve: 2 }],
    [
      '{for: {acuity: 0.1, distance: 40 cm, reserve: 3}}',
      { kind: 'acuity', logMar: 1, distanceMm: 400, reserve: 3 },
    ],
    [
      '{for: {acuity: logMAR 0.7, distance: 10 in, reserve: "1.5:1"}}',
      { kind: 'acuity', logMar: 0.7, distanceMm: 254, reserve: 1.5 },
    ],
  ])('%s', (text, size) => {
    expect(sizeOf(text)).toEqual(size)
  })

  it.each([
    ['▸24', '"24" is no type size'],
    ['▸6 mm', '"6 mm" is no type size'],
    ['▸huge', '"huge" is no type size'],
    ['▸2 pt', '"2 pt" is too small'],
    ['▸exactly', '"exactly" names no size to hold'],
    ['▸exactly large', '"exactly large" names no size to hold'],
    ['▸exactly 28', '"28" is no type size'],
    ['▸exactly 2 pt', '"2 pt" is too small'],
    ['▸exactly exactly 28 pt', '"exactly 28 pt" is no type size'],
    ['▸999 pt', '"999 pt" is too large'],
    ['▸x-height big', '"big" is no length'],
    ['▸x-height 0.2 mm', '"0.2 mm" is too small'],
    ['▸[large]', 'expected a type size, found a list'],
    ['▸{}', 'a size must be said in one way'],
    ['▸{x-height: 6 mm, for: {acuity: 0.1, distance: 40 cm}}', 'a size must be said in one way'],
    ['{for: ▸{acuity: 0.1}}', '"distance" is missing in a size made for a child'],
    ['{for: {acuity: ▸20/0, distance: 40 cm}}', '"20/0" is no acuity from 2.0 down to 0.001'],
    ['{for: {acuity: 0.1, distance: ▸40 km}}', '"40 km" is no length'],
    ['{for: {acuity: 0.1, distance: 40 cm, reserve: ▸0}}', '"0" is no reserve'],
    ['{for: ▸{acuity: 0.001, distance: 5000}}', 'an x-height of 14544 mm comes of this acuity and distance'],
    ['{for: ▸large}', 'expected an acuity and a distance, found "large"'],
  ])('%s is refused', (text, message) => {
    expect(toldAtMark(plan(text))).toEqual([`▸ ${message}`])
  })

  it('tells points from mm when the unit is missing', () => {
    expect(adviceFor(plan('24'))).toEqual([
      'Write 24 pt for the type size, or x-height 24 mm for the height of an x.',
    ])
  })
})

describe('an acuity', () => {
  it.each([
    ['20/20', 0],
    ['20/200', 1],
    ['6/60', 1],
    ['6/6', 0],
    ['0.1', 1],
    ['1.0', 0],
    ['.1', 1],
    ['logMAR 1.0', 1],
    ['LogMAR 0.3', 0.3],
    ['0.3 logMAR', 0.3],
    ['logMAR -0.1', -0.1],
  ])('%s is logMAR %d', (text, logMar) => {
    expect(parseAcuity(text)).toBeCloseTo(logMar, 10)
  })

  it.each(['', '20/', '0', '0/20', 'poor', '20/20/20', 'logMAR', '-1'])('%j is none', text => {
    expect(parseAcuity(text)).toBeNull()
  })

  // 1 M unit subtends 5 minutes of arc at 1 m: 1.4544 mm (Sloan's M notation; the figure computed from the angle).
  it('of logMAR 0 at 1 m reads an x-height of one M unit', () => {
    expect(xHeightForAcuityMm({ logMar: 0, distanceMm: 1000, reserve: 1 })).toBeCloseTo(1.4544, 4)
  })

  // Computed by hand from 1.45444 mm · 10^logMAR · distance in m · reserve.
  it.each([
    [1.0, 400, 2, 11.636],
    [0.7, 250, 2, 3.645],
  ])(
    'of logMAR %d at %d mm with a reserve of %d asks for %d mm',
    (logMar, distanceMm, reserve, xHeightMm) => {
      expect(xHeightForAcuityMm({ logMar, distanceMm, reserve })).toBeCloseTo(xHeightMm, 3)
    },
  )
})
