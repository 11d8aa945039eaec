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

  describe('in large print, for twelve words and three marks', () => {
    const marks = ['consonant-digraph', 'vowel-team', 'silent-letters']
    const plan = withWords(marshWords, marks.map(pattern => `  - pattern: ${pattern}\n`).join(''))
    const pages = async (keys: string) => (await printItem(`{layout: home-page, ${keys}}`, plan)).sheets

    it.each(['large', '24 pt', '28 pt'])('is one page at size %s', async size => {
      for (const paper of ['letter', 'a4'])
        expect(await pages(`size: ${size}, paper: ${paper}`)).toHaveLength(1)
    })

    it('keeps what the marks are in the key where that has room, and their names in any case', async () => {
      expect(await text('{layout: home-page, size: large}', plan)).toContain('two letters, one sound')
      const named = await text('{layout: home-page, size: 28 pt}', plan)
      expect(named).toContain('consonant digraph')
      expect(named).not.toContain('two letters, one sound')
    })

    it('is the two sides of one sheet where it is larger still', async () => {
      expect(await pages('size: 36 pt')).toHaveLength(2)
    })
  })
})
