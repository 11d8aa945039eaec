import { describe, expect, it } from 'vitest'
import { adviceFor, planOf, problemsOf, toldAtMark, weekOf } from '../reading.js'

const plan = (more: string) => planOf(weekOf(['reed'], more))

describe('the accent', () => {
  it.each([
    ['accent: american', { rhotic: true, cotCaught: 'apart', wh: 'w' }],
    ['accent: R-less', { rhotic: false, cotCaught: 'apart', wh: 'w' }],
    [
      'accent: {r: dropped, cot and caught: merged, wh: own}',
      { rhotic: false, cotCaught: 'merged', wh: 'own' },
    ],
    ['accent: {wh: own}', { rhotic: true, cotCaught: 'apart', wh: 'own' }],
  ])('%s', (more, accent) => {
    expect(plan(more).accent).toEqual(accent)
  })

  it.each([
    ['accent: ▸welsh', 'unknown accent "welsh"'],
    ['accent: {wh: ▸perhaps}', 'unknown value of "wh" "perhaps"'],
    ['accent: {▸rr: dropped}', 'unknown key "rr" in an accent'],
    ['accent: ▸[american]', 'expected an accent, found a list'],
  ])('%s is refused', (more, message) => {
    expect(toldAtMark(weekOf(['reed'], more))).toEqual([`▸ ${message}`])
  })
})

describe('the printer’s shift', () => {
  it.each([
    ['printer: {back shift: 1.2 mm right, 0.8 mm down}', 1.2, 0.8],
    ['printer:\n  back shift: 1.2 mm right, 0.8 mm down', 1.2, 0.8],
    ['printer: {back shift: "0.5 mm up and 2 left"}', -2, -0.5],
    ['printer: {back-shift: 1 mm to the left}', -1, 0],
  ])('%s', (more, rightMm, downMm) => {
    expect(plan(more).printer).toEqual({ backShift: { rightMm, downMm } })
  })

  it.each([
    ['printer: {back shift: ▸1.2 mm}', '"1.2 mm" is no shift to a side and up or down'],
    [
      'printer: {back shift: ▸1 mm right, 2 mm left}',
      '"1 mm right, 2 mm left" is no shift to a side and up or down',
    ],
    ['printer: {back shift: ▸30 mm right}', 'the shift "30 mm right" is too large'],
    ['printer: {▸front shift: 1 mm right}', 'unknown key "front shift" in the printer'],
    ['printer: ▸laser', 'expected what is known of the printer, found "laser"'],
  ])('%s is refused', (more, message) => {
    expect(toldAtMark(weekOf(['reed'], more))).toEqual([`▸ ${message}`])
  })
})

describe('card fed a second time by hand', () => {
  it.each([
    ['printer: {passes: two}', { handFed: { pile: 'in order' } }],
    ['printer: {passes: Two, pile: last-sheet-first}', { handFed: { pile: 'last sheet first' } }],
    ['printer: {passes: one}', {}],
    [
      'printer: {back shift: 1 mm right, 2 mm up, passes: two}',
      { backShift: { rightMm: 1, downMm: -2 }, handFed: { pile: 'in order' } },
    ],
  ])('%s', (more, printer) => {
    expect(plan(more).printer).toEqual(printer)
  })

  it.each([
    ['printer: {passes: ▸three}', 'unknown value of "passes" "three"'],
    ['printer: {passes: two, pile: ▸upside down}', 'unknown value of "pile" "upside down"'],
    ['printer: {pile: ▸in order}', '"pile" says nothing without "passes: two"'],
  ])('%s is refused', (more, message) => {
    expect(toldAtMark(weekOf(['reed'], more))).toEqual([`▸ ${message}`])
  })
})

describe('the contrast', () => {
  it.each([
    ['black on white', '#000000', '#ffffff'],
    ['White On Black', '#ffffff', '#000000'],
    ['"black on #fff6d5"', '#000000', '#fff6d5'],
    ['"#123 on light yellow"', '#112233', '#ffffe0'],
  ])('%s', (text, ink, ground) => {
    expect(plan(`contrast: ${text}`).contrast).toEqual({ ink, ground })
  })

  it('shows how to quote a colour that became a note', () => {
    const text = weekOf(['reed'], 'contrast: black on #fff6d5')
    expect(problemsOf(text)).toEqual(['week.yaml:5:11: error: "black on" is not one colour on another'])
    expect(adviceFor(text)).toEqual(['A # begins a note; put it in quotes: "black on #fff6d5".'])
  })
})
