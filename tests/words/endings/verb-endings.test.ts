import { describe, expect, test } from 'vitest'
import { ingFormOf, pastOf, sFormOf } from '../../../src/words/endings/verb-endings.js'

describe('-ed, its rule and its sound', () => {
  test.each([
    ['jump', 'JH AH1 M P', 'jumped', 'add ed', 't'],
    ['sail', 'S EY1 L', 'sailed', 'add ed', 'd'],
    ['wait', 'W EY1 T', 'waited', 'add ed', 'id'],
    ['hop', 'HH AA1 P', 'hopped', 'double the last letter, add ed', 't'],
    ['hope', 'HH OW1 P', 'hoped', 'drop e, add ed', 't'],
    ['carry', 'K AE1 R IY0', 'carried', 'y to i, add ed', 'd'],
    ['play', 'P L EY1', 'played', 'add ed', 'd'],
    ['open', 'OW1 P AH0 N', 'opened', 'add ed', 'd'],
    ['admit', 'AH0 D M IH1 T', 'admitted', 'double the last letter, add ed', 'id'],
    ['fix', 'F IH1 K S', 'fixed', 'add ed', 't'],
    ['snow', 'S N OW1', 'snowed', 'add ed', 'd'],
    ['picnic', 'P IH1 K N IH2 K', 'picnicked', 'add k, add ed', 't'],
    ['tie', 'T AY1', 'tied', 'drop e, add ed', 'd'],
    ['laugh', 'L AE1 F', 'laughed', 'add ed', 't'],
  ])('%s', (text, pronunciation, form, rule, sound) => {
    expect(pastOf({ text, pronunciation })).toEqual({ form, rule, sound })
  })

  test('an irregular verb says so', () => {
    expect(pastOf({ text: 'swim' })).toEqual({ form: 'swam', rule: 'changes inside', sound: null })
    expect(pastOf({ text: 'cut' })).toEqual({ form: 'cut', rule: 'stays the same', sound: null })
    expect(pastOf({ text: 'dream' })).toEqual({
      form: 'dreamed',
      rule: 'two forms in use',
      alternatives: ['dreamt'],
      sound: null,
    })
  })

  test('without a pronunciation the letters tell the sound', () => {
    expect(pastOf({ text: 'land' }).sound).toBe('id')
    expect(pastOf({ text: 'squash' }).sound).toBe('t')
    expect(pastOf({ text: 'climb' }).sound).toBe('d')
  })
})

describe('-ing', () => {
  test.each([
    ['row', 'rowing', 'add ing'],
    ['swim', 'swimming', 'double the last letter, add ing'],
    ['bake', 'baking', 'drop e, add ing'],
    ['see', 'seeing', 'add ing'],
    ['lie', 'lying', 'ie to y, add ing'],
    ['carry', 'carrying', 'add ing'],
    ['quit', 'quitting', 'double the last letter, add ing'],
    ['fix', 'fixing', 'add ing'],
    ['begin', 'beginning', 'double the last letter, add ing'],
    ['listen', 'listening', 'add ing'],
    ['singe', 'singeing', 'add ing'],
  ])('%s → %s', (text, form, rule) => expect(ingFormOf({ text })).toEqual({ form, rule }))
})

describe('-s', () => {
  test.each([
    ['row', 'rows', 'add s'],
    ['squash', 'squashes', 'add es after ch, sh, s, x, z'],
    ['fly', 'flies', 'y to i, add es'],
    ['play', 'plays', 'add s'],
    ['go', 'goes', 'irregular ending'],
    ['echo', 'echoes', 'ends in o: add es'],
  ])('%s → %s', (text, form, rule) => expect(sFormOf({ text })).toEqual({ form, rule }))
})

test('capitals stay', () => {
  expect(pastOf({ text: 'Bake' }).form).toBe('Baked')
  expect(ingFormOf({ text: 'SWIM' }).form).toBe('SWIMMING')
})
