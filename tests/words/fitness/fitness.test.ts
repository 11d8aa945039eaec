import { describe, expect, test } from 'vitest'
import { gatherNames } from '../../../src/words/fitness/gather-names.js'
import { gatherUnfit } from '../../../src/words/fitness/gather-unfit.js'
import { readFamiliarity } from '../../../src/words/lexicon/sources.js'

describe('words not to be offered to children', () => {
  const unfit = gatherUnfit(['gunshots', 'beerhouse', 'marsh'])

  test.each(['gun', 'guns', 'murdered', 'beer', 'cigarettes', 'drugs', 'naked', 'poison', 'stupid', 'dying'])(
    '%s is one',
    word => expect(unfit.has(word)).toBe(true),
  )

  test.each([
    ...[
      'church',
      'banana',
      'color',
      'knife',
      'swallow',
      'crack',
      'screw',
      'trap',
      'peck',
      'kid',
      'tongue',
      'black',
    ],
    ...[
      'butter',
      'ginger',
      'summer',
      'marsh',
      'harbor',
      'bakery',
      'witch',
      'ghost',
      'sword',
      'blood',
      'thief',
    ],
    ...['assist', 'class', 'grass', 'cocoa', 'peacock', 'title', 'analyst', 'scrape', 'shell'],
  ])('%s is none', word => expect(unfit.has(word)).toBe(false))

  test('coarse letters inside a longer word put it out', () => {
    const longer = ['bull', 'horse'].map(start => `${start}shit`)
    const found = gatherUnfit(longer)
    expect(longer.every(word => found.has(word))).toBe(true)
  })
})

describe('names and fragments', () => {
  const heard = readFamiliarity()
  const words = [...names(), ...ordinary(), 'isn', 'll', 's', 'b', 'atm', 'zzyzx']
  const found = gatherNames({
    words,
    isCapitalised: word => heard.get(word)?.capitalised ?? false,
    pronunciationOf: word => (word === 'atm' ? 'EY1 T IY2 EH1 M' : undefined),
    hasPartOfSpeech: word => word !== 'zzyzx',
  })

  test.each(names())('%s is a name', word => expect(found.has(word)).toBe(true))

  test.each(ordinary())('%s is a word, though often written with a capital', word =>
    expect(found.has(word)).toBe(false),
  )

  test.each(['isn', 'll', 's', 'b', 'atm', 'zzyzx'])('%s is no word', word =>
    expect(found.has(word)).toBe(true),
  )

  test('a and i are words of one letter', () => {
    const single = gatherNames({
      words: ['a', 'i'],
      isCapitalised: () => true,
      pronunciationOf: () => undefined,
      hasPartOfSpeech: () => true,
    })
    expect([...single]).toEqual([])
  })
})

function names(): readonly string[] {
  return [
    ...['london', 'peter', 'susan', 'chicago', 'english', 'monday', 'january', 'christmas'],
    // An ending that no noun takes (beech, wild), and names with an s.
    ...['beecher', 'wilder', 'johns', 'bibles'],
  ]
}

function ordinary(): readonly string[] {
  return [
    'marsh',
    'otter',
    'swan',
    'come',
    'mom',
    'turtle',
    'harbor',
    'berry',
    'what',
    'yes',
    'hello',
    'bees',
    'sailing',
  ]
}
