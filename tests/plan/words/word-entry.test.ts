import { describe, expect, it } from 'vitest'
import { filesInMemory, planOf, problemsOf, toldAtMark, weekOf } from '../reading.js'

const overridesOf = (keys: string) => planOf(weekOf([`{${keys}}`])).words[0]?.overrides

describe('a word with keys', () => {
  it('carries the clue', () => {
    expect(planOf(weekOf(['word: marsh\n    clue: wet,   grassy land'])).words[0]).toMatchObject({
      text: 'marsh',
      clue: 'wet, grassy land',
      place: { line: 2, column: 11 },
    })
  })

  it.each([
    ['word: marsh, sounds: m ar sh', { sounds: ['m', 'ar', 'sh'] }],
    ['word: marsh, sounds: m-ar-sh', { sounds: ['m', 'ar', 'sh'] }],
    ['word: marsh, sounds: [m, ar, sh]', { sounds: ['m', 'ar', 'sh'] }],
    ['word: Marsh, sounds: m ar sh', { sounds: ['m', 'ar', 'sh'] }],
    ['word: lake, sounds: l a_e k', { sounds: ['l', 'a_e', 'k'] }],
    ['word: cake, sounds: c a k (e)', { sounds: ['c', 'a', 'k', '(e)'] }],
    ['word: cake, sounds: c a k(e)', { sounds: ['c', 'a', 'k', '(e)'] }],
    ['word: cake, sounds: [c, a, k, (e)]', { sounds: ['c', 'a', 'k', '(e)'] }],
    ['word: "don\'t", sounds: d o n t', { sounds: ['d', 'o', 'n', 't'] }],
    ['word: market, syllables: mar·ket', { syllables: ['mar', 'ket'] }],
    ['word: market, syllables: mar-ket', { syllables: ['mar', 'ket'] }],
    ['word: well-known, syllables: well known', { syllables: ['well', 'known'] }],
    ['word: marsh, part of speech: noun', { partsOfSpeech: ['noun'] }],
    ['word: fish, part of speech: [Noun, verb]', { partsOfSpeech: ['noun', 'verb'] }],
    ['word: fish, parts of speech: noun and verb', { partsOfSpeech: ['noun', 'verb'] }],
    ['word: fish, plural: fish', { plural: 'fish' }],
    ['word: mud, plural: none', { noPlural: true }],
    ['word: bunch, not: digraph-blend', { notPatterns: [{ pattern: 'digraph-blend' }] }],
    ['word: bunch, not: digraph-blend nch', { notPatterns: [{ pattern: 'digraph-blend', letters: 'nch' }] }],
    ['word: lake, also: silent-e a_e', { alsoPatterns: [{ pattern: 'silent-e', letters: 'a_e' }] }],
    [
      'word: knot, also: [{pattern: Silent Letters, letters: kn}]',
      { alsoPatterns: [{ pattern: 'silent-letters', letters: 'kn' }] },
    ],
  ])('{%s}', (keys, overrides) => {
    expect(overridesOf(keys)).toEqual(overrides)
  })

  it.each([
    ['{word: marsh, sounds: ▸m a sh}', 'the sounds "m a sh" do not add up to "marsh", but to "mash"'],
    ['{word: lake, sounds: ▸l a k}', 'the sounds "l a k" do not add up to "lake", but to "lak"'],
    ['{word: lake, sounds: ▸l k a_e}', 'the sounds "l k a_e" do not add up to "lake"'],
    ['{word: lake, sounds: ▸l a k (e}', 'the sounds "l a k (e" do not add up to "lake"'],
    ['{word: shh, sounds: ▸(sh) (h)}', 'all letters of "shh" are in brackets'],
    ['{word: marsh, syllables: ▸mash}', 'the syllables "mash" do not add up to "marsh", but to "mash"'],
    ['{word: marsh, sounds: ▸{a: b}}', 'expected a division of the word, found a group of keys'],
    ['{word: marsh, part of speech: ▸thing}', 'unknown part of speech "thing"'],
    ['{word: marsh, part of speech: ▸[]}', 'expected a part of speech, found a list'],
    ['{word: marsh, plural: ▸2}', '"2" has a digit in it'],
    ['{word: marsh, not: ▸digraf-blend}', 'unknown pattern "digraf-blend"'],
    ['{word: marsh, not: ▸digraph-blend xy}', 'the letters "xy" do not stand in "marsh"'],
    ['{word: marsh, also: ▸digraph-blend}', 'it is not said which letters of "marsh" show digraph-blend'],
    ['{word: marsh, also: [▸{letters: sh}]}', 'a pattern finding has no "pattern"'],
    ['{word: marsh, ▸clue: ""}', '"clue" has no value'],
    ['▸{clue: wet}', 'an entry of the word list has no "word"'],
    ['{word: ▸[marsh]}', 'expected a word, found a list'],
  ])('%s is refused', (word, message) => {
    expect(toldAtMark(weekOf([word]))).toEqual([`▸ ${message}`])
  })

  it('points at the letters of a finding', () => {
    const [problem] = problemsOf(weekOf(['word: marsh\n    not:\n      - digraph-blend\n      - vowel-teem']))
    expect(problem).toBe('week.yaml:5:9: error: unknown pattern "vowel-teem"')
  })
})

describe('what the teacher settles of a word', () => {
  it('is known by its place, in the plan and in the class file, so that problems point at it', () => {
    const files = filesInMemory({
      'room-7.yaml': 'words:\n  - {word: marsh, sounds: m ar sh, plural: marshes}\n',
    })
    const plan = weekOf(['{word: marsh, plural: none}', 'reed'], 'class file: room-7.yaml\n')
    const [marsh, reed] = planOf(plan, files).words
    expect(marsh?.overridePlaces).toEqual({
      sounds: { file: 'room-7.yaml', line: 2, column: 27 },
      plural: { file: 'week.yaml', line: 2, column: 27 },
    })
    expect(reed).not.toHaveProperty('overridePlaces')
  })
})

describe('a picture', () => {
  const png = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0)
  const jpeg = Uint8Array.of(0xff, 0xd8, 0xff, 0xe0, 0, 0)
  const files = filesInMemory({ 'a.png': png, 'b.jpg': jpeg, 'c.png': 'GIF89a', 'd.png': '', folder: null })
  const withPicture = (path: string) => weekOf([`{word: reed, picture: ${path}}`])

  it.each(['a.png', 'b.jpg'])('%s is known by its first bytes', path => {
    expect(planOf(withPicture(path), files).words[0]?.picture).toMatch(new RegExp(`^(?:/|[A-Z]:).*${path}$`))
  })

  it.each([
    ['c.png', '"c.png" is neither a PNG nor a JPEG nor an SVG picture'],
    ['d.png', '"d.png" is neither a PNG nor a JPEG nor an SVG picture'],
    ['e.png', 'no picture "e.png" is there'],
    ['folder', '"folder" is a folder, not a picture'],
  ])('%s is refused', (path, message) => {
    expect(problemsOf(withPicture(path), files)).toEqual([`week.yaml:2:27: error: ${message}`])
  })
})
