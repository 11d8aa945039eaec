import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { divideSyllables, divisionOf } from '../../../src/words/syllables/divide.js'
import type { Grapheme } from '../../../src/words/word.js'
import { divided, divisionOfWord, familiarWords } from './dividing.js'

/** `r:R a:AE bb:B …` → graphemes. */
function spelled(division: string): { text: string; graphemes: readonly Grapheme[] } {
  let start = 0
  const graphemes = division.split(' ').map(part => {
    const [letters = '', sounds = ''] = part.split(':')
    start += letters.length
    return { letters, start: start - letters.length, sounds: sounds === '' ? [] : sounds.split('+') }
  })
  return { text: graphemes.map(({ letters }) => letters).join(''), graphemes }
}

describe('rules of letters and sounds alone', () => {
  test.each([
    ['rab·bit', 'r:R a:AE bb:B i:AH t:T', 'double consonant'],
    ['ti·ger', 't:T i:AY g:G er:ER', 'the first vowel is long'],
    ['cab·in', 'c:K a:AE b:B i:AH n:N', 'the first vowel is short'],
    ['sun·set', 's:S u:AH n:N s:S e:EH t:T', 'VC·CV'],
    ['chil·dren', 'ch:CH i:IH l:L d:D r:R e:AH n:N', 'a blend or digraph stays together'],
    ['ham·ster', 'h:HH a:AE m:M s:S t:T er:ER', 'a blend or digraph stays together'],
    ['ta·ble', 't:T a:EY b:B le:AH+L', 'consonant + le'],
    ['lit·tle', 'l:L i:IH tt:T le:AH+L', 'one of a pair'],
    ['pick·le', 'p:P i:IH ck:K le:AH+L', 'stays with its vowel'],
    ['cas·tle', 'c:K a:AE st:S le:AH+L', 'one of a pair'],
    ['ze·bra', 'z:Z e:IY b:B r:R a:AH', 'a blend stays together'],
    ['moth·er', 'm:M o:AH th:DH er:ER', 'the first vowel is short'],
    ['fa·ther', 'f:F a:AA th:DH er:ER', 'the first vowel is long'],
    ['ro·bin', 'r:R o:OW b:B i:IH n:N', 'the first vowel is long'],
    ['li·on', 'l:L i:AY o:AH n:N', 'vowel · vowel'],
    ['tax·i', 't:T a:AE x:K+S i:IY', 'x stays with its vowel'],
    ['mar·ket', 'm:M ar:AA+R k:K e:AH t:T', 'after r'],
    ['want·ed', 'w:W a:AA n:N t:T e:IH d:D', 'ending -ed'],
    ['box·es', 'b:B o:AA x:K+S e:AH s:Z', 'ending -es'],
    ['use·ful', 'u:Y+UW s:S e: f:F u:AH l:L', 'after a silent e'],
  ])('%s', (expected, division, rule) => {
    const found = divisionOf(spelled(division))
    expect(found.syllables.join('·')).toBe(expected)
    expect(found.rules.join(' ')).toContain(rule)
  })

  test('stress tells a weak vowel from a short one', () => {
    const about = spelled('a:AH b:B ou:AW t:T')
    expect(divideSyllables({ ...about, pronunciation: 'AH0 B AW1 T' })).toEqual(['a', 'bout'])
    const study = spelled('s:S t:T u:AH d:D y:IY')
    expect(divideSyllables({ ...study, pronunciation: 'S T AH1 D IY0' })).toEqual(['stud', 'y'])
  })

  test('a word of one vowel sound is one piece', () => {
    expect(divideSyllables(spelled('p:P l:L ay:EY ed:D'))).toEqual(['played'])
    expect(divideSyllables(spelled('th:TH r:R ea:EH d:D'))).toEqual(['thread'])
  })

  test('capitals stay', () => {
    expect(divideSyllables(spelled('R:R a:AE bb:B i:AH t:T'))).toEqual(['Rab', 'bit'])
  })
})

describe('words inside words', () => {
  test.each([
    ['jump·ing', 'ending -ing'],
    ['run·ning', 'after a doubled consonant'],
    ['mak·ing', 'ending -ing'],
    ['fall·ing', 'ending -ing'],
    ['han·dling', 'as in handle: consonant + le'],
    ['teach·er', 'ending -er'],
    ['eas·i·er', 'as in easy: ending -y'],
    ['un·hap·py', 'prefix un-'],
    ['un·doubt·ed·ly', 'prefix un-'],
    ['im·pend·ing', 'ending -ing'],
    ['mi·cro·scope', 'scope stays whole'],
    ['mis·sion·ar·y', 'tion, sion and gion stay whole'],
    ['hill·bil·ly', 'VC·CV'],
    ['de·scend', 'sc stays together before the stress'],
    ['week·end', 'compound: week + end'],
    ['ev·ery·thing', 'as in every: listed'],
    ['gui·tar·ist', 'as in guitar'],
  ])('%s', (expected, rule) => {
    const found = divisionOfWord(expected.replaceAll('·', ''))
    expect(found.syllables.join('·')).toBe(expected)
    expect(found.rules.join(' ')).toContain(rule)
  })

  test.each([
    'cor·ner',
    'num·ber',
    'par·ty',
    'win·ter',
    'o·pen',
    'un·cle',
    'no·tice',
    'of·fice',
    'be·gin',
    'hun·ger',
    'trea·ty',
    'u·ni·ty',
    'fel·o·ny',
    'ho·ly',
    'e·mer·gen·cy',
    'bro·ken',
    'light·ning',
  ])('%s only looks as if it had an ending, a prefix or two halves', expected =>
    expect(divided(expected.replaceAll('·', ''))).toBe(expected),
  )

  test.each(["o'·clock", 'mer·ry-·go-·round', "did·n't"])('%s: signs stay with their letters', expected =>
    expect(divided(expected.replaceAll('·', ''))).toBe(expected),
  )
})

describe('familiar words divided by hand', () => {
  const lines = readFileSync(join(import.meta.dirname, 'divided-words.txt'), 'utf8').split('\n')
  const byHand = lines.filter(line => line !== '' && !line.startsWith('#')).flatMap(line => line.split(' '))

  test('are more than 600', () => expect(byHand.length).toBeGreaterThan(600))

  test('come out the same', () => {
    const wrong = byHand
      .map(word => word.toLowerCase())
      .map(word => ({ word, got: divided(word.replaceAll('·', '')) }))
      .filter(({ word, got }) => word !== got)
    expect(wrong).toEqual([])
  })
})

describe('every familiar word', () => {
  const words = familiarWords(6000)

  test('has its letters, all of them, in order', () => {
    fc.assert(
      fc.property(fc.constantFrom(...words), ({ word }) => divisionOfWord(word).syllables.join('') === word),
      { numRuns: 3000 },
    )
  })

  test('has a syllable for each vowel sound, fire and hour apart', () => {
    const odd = words
      .map(({ word, pronunciation }) => ({
        word,
        vowels: pronunciation.match(/\d/g)?.length ?? 0,
        pieces: divisionOfWord(word).syllables.length,
      }))
      .filter(({ vowels, pieces }) => pieces !== Math.max(1, vowels))
      .map(({ word }) => word)
    expect(odd.filter(word => !/(?:ire|our|oir)/.test(word))).toEqual([])
    expect(odd.length).toBeLessThan(60)
  })
})
