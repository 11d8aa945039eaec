import { describe, expect, it, test } from 'vitest'
import { problemInSvg } from '../../../src/plan/words/svg-picture.js'
import { filesInMemory, planOf, problemsOf, weekOf } from '../reading.js'

const svg = (inside: string, before = '') =>
  `${before}<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10">${inside}</svg>`

describe('an SVG picture', () => {
  test.each([
    ['shapes', svg('<path d="M0 0L9 9"/>')],
    ['a declaration before it', svg('<path d="M0 0L9 9"/>', '<?xml version="1.0"?>\n')],
    [
      'references to its own parts',
      svg('<linearGradient id="a"/><path fill="url(#a)" d="M0 0"/><use href="#a"/>'),
    ],
    ['a picture of pixels inside it', svg('<image xlink:href="data:image/png;base64,iVBORw0KGgo="/>')],
  ])('may have %s', (_, text) => {
    expect(problemInSvg(text)).toBeUndefined()
  })

  test.each([
    ['a file', svg('<image href="../secret.png"/>'), 'points outside itself: ../secret.png'],
    ['a file in single quotes', svg("<image href='secret.png'/>"), 'points outside itself: secret.png'],
    [
      'a page of the web',
      svg('<use xlink:href="https://heron.example/a.svg#b"/>'),
      'points outside itself: https://heron.example/a.svg#b',
    ],
    [
      'a style that fetches',
      svg('<style>path { fill: url("//heron.example/x") }</style>'),
      'points outside itself: //heron.example/x',
    ],
    ['a style sheet', svg('<style>@import "a.css";</style>'), 'points outside itself: @import'],
    [
      'an entity',
      svg('<path/>', '<!DOCTYPE svg [<!ENTITY a SYSTEM "file:///etc/hostname">]>'),
      'points outside itself: <!ENTITY',
    ],
    [
      'another SVG inside it',
      svg('<image href="data:image/svg+xml;base64,AAAA"/>'),
      'points outside itself: data:image/svg+xml;base64,AAAA',
    ],
    ['letters', svg('<text>reed</text>'), 'has letters that need a typeface of their own'],
  ])('may not have %s', (_, text, problem) => {
    expect(problemInSvg(text)?.problem).toBe(problem)
  })

  it('is a page of the web, not a picture, where it has no svg element', () => {
    expect(problemInSvg('<!doctype html><p>reed</p>')?.problem).toBe('is no SVG picture')
  })
})

describe('a word with an SVG picture', () => {
  const files = filesInMemory({
    'reed.svg': svg('<path d="M0 0L9 9"/>'),
    'bad.svg': svg('<image href="reed.png"/>'),
    'blanks.svg': svg('<path d="M0 0L9 9"/>', '\n'.repeat(20)),
    'large.svg': svg(`<path d="${'M0 0L9 9'.repeat(800_000)}"/>`),
  })

  it('has its path', () => {
    expect(planOf(weekOf(['{word: reed, picture: reed.svg}']), files).words[0]?.picture).toMatch(/reed\.svg$/)
  })

  it('has it after blank lines too', () => {
    expect(planOf(weekOf(['{word: reed, picture: blanks.svg}']), files).words[0]?.picture).toMatch(
      /blanks\.svg$/,
    )
  })

  test.each([
    ['bad.svg', 'the picture "bad.svg" points outside itself: reed.png'],
    ['large.svg', 'the picture "large.svg" has 6.4 million bytes'],
  ])('%s is refused where it is named', (file, message) => {
    const told = problemsOf(weekOf([`{word: reed, picture: ${file}}`]), files)
    expect(told).toEqual([`week.yaml:2:27: error: ${message}`])
  })
})
