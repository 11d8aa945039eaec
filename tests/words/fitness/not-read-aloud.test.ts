import { describe, expect, test } from 'vitest'
import { findWords } from '../../../src/words/find/find-words.js'
import { openOfferedWords } from '../../../src/words/find/offered-file.js'
import { offeredWord } from '../../../src/words/find/offered-word.js'
import { wordsToOffer } from '../../../src/words/find/words-to-offer.js'
import { openLexicon } from '../../../src/words/lexicon/lexicon.js'
import { rowsOf, wordsOf } from '../../../src/words/tables/installed-tables.js'
import { readFreshWords } from '../fresh/fresh-table.js'
import { analysed, rowsOf as goldRows } from '../gold/gold.js'

const lexicon = openLexicon()
const offered = new Set(wordsToOffer(lexicon))

describe('words that no teacher would read aloud are not offered', () => {
  test('nor is any line of the table', () => {
    const listed = wordsOf('fitness/not-read-aloud')
    expect(listed.length).toBeGreaterThan(300)
    expect(listed.filter(word => offered.has(word))).toEqual([])
  })

  test.each([
    'wench',
    'goddam',
    'hustler',
    'topless',
    'sadist',
    'seductive',
    'hardcore',
    'atm',
    'beecher',
    'quaker',
  ])('%s', word => expect(offered.has(word)).toBe(false))

  test.each([
    'wenches',
    'sadistic',
    'traumatized',
    'harassment',
    'lotteries',
    'communism',
    'divorcing',
    'sinned',
  ])('%s, kin of one', word => expect(offered.has(word)).toBe(false))

  test.each(['ugliest', 'abusive', 'violently', 'pricks', 'homicidal', 'bombings'])(
    '%s, kin of a word unfit for children',
    word => expect(offered.has(word)).toBe(false),
  )

  test('among words like another', () => {
    const query = { like: offeredWord(analysed('junk'), 0), count: 200 }
    const like = findWords(query, openOfferedWords()).map(({ word }) => word.text)
    expect(like).toContain('trunk')
    expect(like.filter(word => lexicon.lookUp(word)?.notReadAloud)).toEqual([])
    expect(like).not.toContain('punk')
  })

  test('a teacher may list one: it is studied like any word', () => {
    expect(analysed('homeless').syllables).toEqual(['home', 'less'])
  })
})

describe('words of a class stay', () => {
  test.each(
    'sword arrow knight battle pirate thief witch ghost skull kiss marry fool hate fight church pray danger reply happy miller baa suction cracks'.split(
      ' ',
    ),
  )('%s', word => expect(offered.has(word)).toBe(true))

  const gold = ['aligned.tsv', 'parts-of-speech.tsv', 'patterns.tsv', 'plurals.tsv'].flatMap(table =>
    goldRows(table).map(([word = '']) => word),
  )

  test('none of the words of a primary classroom that other tables of ours were made from is kept back', () => {
    const wanted = [...new Set([...readFreshWords('fresh-words.tsv').map(({ text }) => text), ...gold])]
    expect(wanted.length).toBeGreaterThan(1000)
    expect(wanted.filter(word => lexicon.lookUp(word)?.notReadAloud)).toEqual([])
  })

  test('a word odd by its form passes on nothing but an s', () => {
    const odd = new Set(['speech', 'foreign', 'brand', 'dated', 'abbreviation'])
    const forms = rowsOf('fitness/not-read-aloud').flatMap(([word = '', why = '']) =>
      odd.has(why) ? [`${word}ly`, `${word}er`, `${word}ed`, `${word}py`] : [],
    )
    expect(forms.filter(form => lexicon.lookUp(form)?.notReadAloud)).toEqual([])
  })
})
