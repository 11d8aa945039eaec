import { describe, expect, it } from 'vitest'
import { linesOn, marshWithClues, marshWords, printItem } from './print-item.js'

const text = async (item = '{layout: home-page}', plan = marshWithClues) =>
  linesOn(await printItem(item, plan), 'list').join(' ')
const withWords = (words: readonly string[], marks = '  - pattern: consonant-digraph\n') =>
  `title: Along the marsh\nwords: [${words.join(', ')}]\n${marks === '' ? '' : `marks:\n${marks}`}print:\n`

describe('a page for home', () => {
  it('has the words, the key, how to practise and three ideas', async () => {
    const told = await text()
    for (const word of marshWords) expect(told).toContain(word)
    expect(told).toContain('consonant digraph')
    expect(told).toContain('How to practise')
    expect(told).toContain('Three ideas for ten minutes')
    for (const idea of ['Look, cover, write, check', 'Word hunt', 'Guess my word'])
      expect(told).toContain(idea)
  })

  it('asks for nothing with a screen', async () => {
    expect(await text()).not.toMatch(/\b(?:online|website|app|screen|video|password|log ?in)\b/i)
  })

  it('hunts for what the plan marks first, and for the words themselves where nothing is marked', async () => {
    expect(await text()).toContain('more words like “marsh” (consonant digraph)')
    expect(await text('{layout: home-page}', withWords(marshWords, ''))).toContain(
      'Look for the words of the list in a book',
    )
  })

  it('is made in a wide font, whose headings take a second line', async () => {
    const sheets = (await printItem('{layout: home-page, font: opendyslexic, paper: a4}')).sheets
    expect(sheets).toHaveLength(1)
  })

  const thirty = [
    ...marshWords,
    ...'fox city wolf goose box queen branch sheep happy bake cry slow run knee hop big carry snake'.split(
      ' ',
    ),
  ]
  const eight = [
    'consonant-digraph',
    'vowel-team',
    'silent-letters',
    'beginning-blend',
    'ending-blend',
    'silent-e',
    'r-controlled',
    'short-vowel',
  ]
    .map(pattern => `  - pattern: ${pattern}\n`)
    .join('')

  it.each([
    ['four words', marshWords.slice(0, 4), undefined],
    ['twelve words', marshWords, undefined],
    ['thirty words and eight marks', thirty, eight],
  ])('is one page of letter and of A4 for %s', async (_, words, marks) => {
    for (const paper of ['letter', 'a4'])
      expect(
        (await printItem(`{layout: home-page, paper: ${paper}}`, withWords(words, marks))).sheets,
      ).toHaveLength(1)
  })

  it('is two pages at most in large print for a week’s words', async () => {
    const { sheets } = await printItem('{layout: home-page, size: large}')
    expect(sheets.length).toBeLessThanOrEqual(2)
  })
})
