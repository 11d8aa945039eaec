import { describe, expect, test } from 'vitest'
import { fitDivision, readDivision } from '../../../src/words/alignment/teacher-division.js'
import { written } from './written-graphemes.js'

function divided(word: string, division: string, ...pronunciations: string[]) {
  const parts = readDivision(word, division.split(' '))!
  const found = fitDivision(word, parts, pronunciations)
  return {
    graphemes: written(found.graphemes),
    pronunciation: found.pronunciation,
    impossible: found.impossible.map(({ letters }) => letters),
    struck: found.struck.map(({ letters }) => letters),
  }
}

describe("the teacher's division into sounds", () => {
  test('her letters win and the known sounds are fitted to them', () => {
    expect(divided('marsh', 'm ar sh', 'M AA1 R SH').graphemes).toBe('m:M ar:AA+R sh:SH')
    expect(divided('walk', 'w al k', 'W AO1 K').graphemes).toBe('w:W al:AO k:K')
    expect(divided('pond', 'p o nd', 'P AA1 N D').graphemes).toBe('p:P o:AA nd:N+D')
  })

  test('a sound whose letters stand apart has its second part after the next sound', () => {
    expect(divided('lake', 'l a_e k', 'L EY1 K').graphemes).toBe('l:L a:EY k:K e:-')
  })

  test.each([
    ['cake', 'c a k e', 'K EY1 K', 'c:K a:EY k:K e:-'],
    ['horse', 'h or s e', 'HH AO1 R S', 'h:HH or:AO+R s:S e:-'],
    ['have', 'h a v e', 'HH AE1 V', 'h:HH a:AE v:V e:-'],
    ['knight', 'k n igh t', 'N AY1 T', 'k:- n:N igh:AY t:T'],
    ['walk', 'w a l k', 'W AO1 K', 'w:W a:AO l:- k:K'],
  ])('a piece of %s as %s may say nothing: the alignment finds out which', (word, division, said, found) => {
    expect(divided(word, division, said)).toMatchObject({ graphemes: found, impossible: [], struck: [] })
  })

  test('the three ways to write a silent letter are one', () => {
    const ways = ['c a k e', 'c a k (e)', 'c a_e k'].map(way => divided('cake', way, 'K EY1 K').graphemes)
    expect(new Set(ways)).toEqual(new Set(['c:K a:EY k:K e:-']))
  })

  test('brackets say which of two letters says nothing', () => {
    expect(divided('reed', 'r e (e) d', 'R IY1 D').graphemes).toBe('r:R e:IY e:- d:D')
    expect(divided('reed', 'r (e) e d', 'R IY1 D').graphemes).toBe('r:R e:- e:IY d:D')
  })

  test('a piece in brackets says nothing even where the dictionary hears it, and that is told', () => {
    expect(divided('car', 'c a (r)', 'K AA1 R')).toEqual({
      graphemes: 'c:K a:AA r:-',
      pronunciation: 'K AA1',
      impossible: [],
      struck: ['r'],
    })
  })

  test('a cut through a team is impossible where no part of it can spell the sound alone', () => {
    expect(divided('coin', 'c o i n', 'K OY1 N').impossible).not.toEqual([])
    expect(divided('boat', 'b o a t', 'B OW1 T').impossible).toEqual([])
  })

  test('what no rule explains is not laid to her charge', () => {
    expect(divided('one', 'o n e', 'HH EH1 N').impossible).toEqual([])
  })

  test('of two pronunciations the one that fits her division is taken', () => {
    expect(divided('herb', 'h er b', 'ER1 B', 'HH ER1 B').pronunciation).toBe('HH ER1 B')
    expect(divided('herb', '(h) er b', 'HH ER1 B', 'ER1 B').pronunciation).toBe('ER1 B')
    expect(divided('live', 'l i v e', 'L IH1 V', 'L AY1 V').pronunciation).toBe('L IH1 V')
  })

  test('a vowel and an r may be two sounds to her where the dictionary writes one', () => {
    expect(divided('around', 'a r ou n d', 'ER0 AW1 N D')).toMatchObject({
      graphemes: 'a:AH r:R ou:AW n:N d:D',
      pronunciation: 'AH0 R AW1 N D',
    })
  })

  test.each([
    ['reed', 'r e d'],
    ['reed', 'r ee d s'],
    ['lake', 'l a_e'],
    ['lake', 'l a_e_k'],
    ['lake', '_ l a k e'],
    ['lake', 'l a_e (k)_'],
    ['lake', 'l a k (e'],
    ['lake', 'l a k () e'],
  ])('%s does not add up to "%s"', (word, division) => {
    expect(readDivision(word, division.split(' '))).toBeUndefined()
  })

  test('hyphens and apostrophes need not be written', () => {
    expect(divided("don't", 'd o n t', 'D OW1 N T').graphemes).toBe("d:D o:OW n:N 't:T")
  })
})
