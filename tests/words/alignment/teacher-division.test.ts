import { describe, expect, test } from 'vitest'
import { alignDivision, readDivision } from '../../../src/words/alignment/teacher-division.js'
import { written } from './written-graphemes.js'

function divided(word: string, division: string, ...pronunciations: string[]) {
  const parts = readDivision(word, division.split(' '))!
  const found = alignDivision(word, parts, pronunciations)
  return found && { graphemes: written(found.graphemes), pronunciation: found.pronunciation }
}

describe("the teacher's division into sounds", () => {
  test('her letters win and the known sounds are fitted to them', () => {
    expect(divided('marsh', 'm ar sh', 'M AA1 R SH')?.graphemes).toBe('m:M ar:AA+R sh:SH')
    expect(divided('walk', 'w al k', 'W AO1 K')?.graphemes).toBeUndefined()
    expect(divided('pond', 'p o nd', 'P AA1 N D')?.graphemes).toBe('p:P o:AA nd:N+D')
  })

  test('a sound whose letters stand apart has its second part after the next sound', () => {
    expect(divided('lake', 'l a_e k', 'L EY1 K')?.graphemes).toBe('l:L a:EY k:K e:-')
  })

  test('of two pronunciations the one that fits her division is taken', () => {
    expect(divided('hour', 'h ou r', 'AW1 R', 'HH AW1 R')?.pronunciation).toBe('HH AW1 R')
  })

  test('a vowel and an r may be two sounds to her where the dictionary writes one', () => {
    expect(divided('around', 'a r ou n d', 'ER0 AW1 N D')).toEqual({
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
  ])('%s does not add up to "%s"', (word, division) => {
    expect(readDivision(word, division.split(' '))).toBeUndefined()
  })

  test('hyphens and apostrophes need not be written', () => {
    expect(divided("don't", 'd o n t', 'D OW1 N T')?.graphemes).toBe("d:D o:OW n:N 't:T")
  })
})
