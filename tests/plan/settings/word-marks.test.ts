import { describe, expect, it } from 'vitest'
import { adviceFor, planOf, toldAtMark, weekOf } from '../reading.js'

const marksOf = (...marks: string[]) =>
  weekOf(['reed'], `marks:\n${marks.map(mark => `  - {${mark}}\n`).join('')}`)

describe('a mark on whole words', () => {
  it.each([
    ['part of speech: Noun', { feature: 'part of speech', value: 'noun' }],
    ['part_of_speech: verb', { feature: 'part of speech', value: 'verb' }],
    ['plural: add es', { feature: 'plural', value: 'add es' }],
    ['plural: "Y to I, add es"', { feature: 'plural', value: 'y to i, add es' }],
    ['sounds: 4', { feature: 'sounds', value: '4' }],
    ['syllables: 2', { feature: 'syllables', value: '2' }],
  ])('stands on %s', (mark, target) => {
    expect(planOf(marksOf(mark)).marks[0]?.target).toEqual({ kind: 'word', ...target })
  })

  it('takes a line, an outline, a colour, a label and a tag as any other', () => {
    const [mark] = planOf(
      marksOf('part of speech: noun, line: thick, outline: box, color: "#00618a", label: names, tag: n'),
    ).marks
    expect(mark).toMatchObject({ line: 'thick', outline: 'box', color: '#00618a', label: 'names', tag: 'n' })
  })

  it.each([
    ['{part of speech: ▸nown}', 'unknown part of speech "nown"'],
    ['{plural: ▸add ess}', 'unknown rule for plurals "add ess"'],
    ['{sounds: ▸many}', '"many" is no whole number'],
    ['{sounds: ▸0}', '0 is too small'],
    ['{syllables: ▸two}', '"two" is no whole number'],
    ['{syllables: 2, ▸place: end}', '"place" goes with a mark on letters, not on whole words'],
    ['{sounds: 3, ▸descenders: break}', '"descenders" goes with a mark on letters, not on whole words'],
    ['▸{sounds: 3, syllables: 1}', 'a mark with "sounds" and "syllables"'],
    ['▸{pattern: silent-e, plural: add s}', 'a mark with "pattern" and "plural"'],
  ])('%s is refused', (mark, message) => {
    expect(toldAtMark(weekOf(['reed'], `marks:\n  - ${mark}\n`))).toEqual([`▸ ${message}`])
  })

  it('suggests the nearest rule and the nearest part of speech', () => {
    expect(adviceFor(marksOf('plural: ad es'))[0]).toContain('Did you mean "add es"?')
    expect(adviceFor(marksOf('part of speech: nuon'))[0]).toContain('Did you mean "noun"?')
  })

  it('may stand beside one of another count, and is told twice where it is the same', () => {
    expect(planOf(marksOf('sounds: 3', 'sounds: 4')).marks).toHaveLength(2)
    expect(toldAtMark(weekOf(['reed'], 'marks:\n  - {sounds: 3}\n  - ▸{sounds: 3}\n'))).toEqual([
      '▸ "sounds: 3" is marked twice, on line 6 and on line 7',
    ])
  })
})

describe('the ends of a split pattern', () => {
  it('are joined by a bracket or an arc', () => {
    expect(planOf(marksOf('pattern: silent-e, link: arc')).marks[0]?.link).toBe('arc')
    expect(toldAtMark(weekOf(['reed'], 'marks:\n  - {pattern: silent-e, link: ▸rope}\n'))).toEqual([
      '▸ unknown link "rope"',
    ])
  })
})
