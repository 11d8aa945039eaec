import { describe, expect, test } from 'vitest'
import { heteronyms } from '../../../src/words/pronunciation/listed-pronunciations.js'
import { orderPronunciations } from '../../../src/words/pronunciation/order.js'

function first(word: string, ...listed: string[]) {
  return orderPronunciations(word, listed)[0]
}

describe('which pronunciation comes first, where the dictionary lists several in its own order', () => {
  test.each([
    ['around', ['ER0 AW1 N', 'ER0 AW1 N D'], 'AH0 R AW1 N D', 'every sound is spelled'],
    ['and', ['AH0 N D', 'AE1 N D'], 'AE1 N D', 'the full form'],
    ['caught', ['K AA1 T', 'K AO1 T'], 'K AO1 T', 'cot and caught apart'],
    ['chalk', ['CH AA1 K', 'CH AO1 K'], 'CH AO1 K', 'cot and caught apart'],
    ['on', ['AA1 N', 'AO1 N'], 'AA1 N', 'o before other letters'],
    ['want', ['W AA1 N T', 'W AO1 N T'], 'W AA1 N T', 'a after w'],
    ['fire', ['F AY1 ER0', 'F AY1 R'], 'F AY1 R', 'one syllable'],
    ['several', ['S EH1 V R AH0 L', 'S EH1 V ER0 AH0 L'], 'S EH1 V ER0 AH0 L', 'no vowel passed over'],
    [
      'struggling',
      ['S T R AH1 G AH0 L IH0 NG', 'S T R AH1 G L IH0 NG'],
      'S T R AH1 G L IH0 NG',
      'none added',
    ],
    ['rabbit', ['R AE1 B AH0 T', 'R AE1 B IH0 T'], 'R AE1 B IH0 T', 'unstressed i'],
    ['friday', ['F R AY1 D IY0', 'F R AY1 D EY2'], 'F R AY1 D EY2', 'names of days'],
    ['plenty', ['P L EH1 N IY0', 'P L EH1 N T IY0'], 'P L EH1 N T IY0', 'a written t is said'],
  ])('%s', (word, listed, expected, why) => {
    expect(first(word, ...listed), why).toBe(expected)
  })

  test('equals keep the order of the dictionary', () => {
    expect(first('either', 'IY1 DH ER0', 'AY1 DH ER0')).toBe('IY1 DH ER0')
  })

  test.each([
    ['read', 'R IY1 D'],
    ['live', 'L IH1 V'],
    ['wind', 'W IH1 N D'],
    ['tear', 'T IH1 R'],
    ['lead', 'L IY1 D'],
    ['bow', 'B OW1'],
    ['close', 'K L OW1 Z'],
    ['use', 'Y UW1 Z'],
  ])('of the heteronym %s the first in the table', (word, pronunciation) => {
    expect(orderPronunciations(word, [])[0]).toBe(pronunciation)
  })

  test('every heteronym is said in two ways or more', () => {
    expect([...heteronyms()].filter(([, uses]) => uses.length < 2)).toEqual([])
  })

  test('none is lost', () => {
    const listed = ['R EH1 D', 'R IY1 D']
    expect([...orderPronunciations('read', listed)].sort()).toEqual(listed)
  })

  test('a slip of the dictionary is replaced', () => {
    expect(orderPronunciations('tern', ['T ER1 N Z'])).toEqual(['T ER1 N'])
  })
})
