import { describe, expect, it } from 'vitest'
import { problemInSvg } from '../../../src/plan/words/svg-picture.js'
import { drawnElements as drawn } from '../../../src/plan/words/svg-uses.js'

const drawnElements = (text: string) => drawn(text, 20_000)

const svg = (...parts: readonly string[]) => `<svg xmlns="http://www.w3.org/2000/svg">${parts.join('')}</svg>`
/** Ten of the one before it, so many times over: a few hundred bytes that stand for ten to that power. */
const copiesOfCopies = (levels: number) =>
  svg(
    '<g id="a0"><path d="M0 0h9"/></g>',
    ...Array.from(
      { length: levels },
      (_, index) => `<g id="a${index + 1}">${`<use href="#a${index}"/>`.repeat(10)}</g>`,
    ),
    `<use xlink:href='#a${levels}'/>`,
  )

describe('the elements that an SVG picture draws', () => {
  it('are those in it and those that it uses', () => {
    expect(drawnElements(svg('<path/>', '<path/>'))).toBe(3)
    expect(drawnElements(svg('<g id="a"><path/></g>', '<use href="#a"/>', '<use href="#a"/>'))).toBe(9)
  })

  it('are counted once where a shape uses itself', () => {
    expect(drawnElements(svg('<g id="a"><use href="#a"/></g>'))).toBeLessThan(10)
  })

  it('are too many where copies of copies are drawn, which is told before any is', () => {
    const chain = Array.from(
      { length: 5000 },
      (_, index) => `<g id="c${index}"><use href="#c${index + 1}"/></g>`,
    )
    expect(drawnElements(svg(...chain))).toBeGreaterThan(20_000)
    expect(drawnElements(svg('<g id="a">'.repeat(400_000)))).toBeGreaterThan(20_000)
    expect(drawnElements(copiesOfCopies(6))).toBeGreaterThan(1_000_000)
    expect(problemInSvg(copiesOfCopies(6))?.problem).toContain('over and over')
    expect(problemInSvg(copiesOfCopies(2))).toBeUndefined()
  })
})
