import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { studyPlanFile } from '../../../src/pipeline.js'
import { formatProblem } from '../../../src/problems.js'
import type { Word } from '../../../src/words/word.js'
import { folderWith } from '../plan-folder.js'

/** The plan's words as the layouts get them, by their text. */
function studied(files: Readonly<Record<string, string>>, plan = 'week.yaml'): ReadonlyMap<string, Word> {
  const read = studyPlanFile({ planFile: join(folderWith(files), plan) })
  if (!read.ok) throw new Error(read.problems.map(formatProblem).join('\n'))
  return new Map([...read.value.words.values()].map(word => [word.text, word]))
}

function problems(files: Readonly<Record<string, string>>): readonly string[] {
  const read = studyPlanFile({ planFile: join(folderWith(files), 'week.yaml') })
  return read.problems.map(problem => formatProblem(problem).split('\n')[0]!.replace(/^.*\//, ''))
}

const patternsOf = (word: Word | undefined) =>
  word?.patterns.map(({ pattern, letters }) => `${pattern} ${letters}`)

const classFile = `words:
  - {word: marsh, plural: none, clue: where the herons stand}
  - {word: bread, sounds: b r e_d ea, syllables: bread}
`

describe("the teacher's word, from the plan to the studied word", () => {
  test('sounds, syllables, part of speech, plural and findings are hers, and the word says so', () => {
    const words = studied({
      'week.yaml': `words:
  - {word: lake, sounds: l a_e k}
  - {word: harbor, syllables: harb or}
  - {word: wind, part of speech: verb}
  - {word: reed, plural: reed}
  - {word: mud, plural: none}
  - {word: thread, not: digraph-blend, also: consonant-digraph th}
  - heron
print: [word-cards]
`,
    })
    expect(words.get('lake')).toMatchObject({ source: 'teacher', overridden: ['sounds'], soundCount: 3 })
    expect(words.get('harbor')).toMatchObject({ source: 'teacher', syllables: ['harb', 'or'] })
    expect(words.get('wind')).toMatchObject({ source: 'teacher', partsOfSpeech: ['verb'], plural: null })
    expect(words.get('reed')?.plural).toEqual({ form: 'reed', rule: 'as the teacher writes it' })
    expect(words.get('mud')).toMatchObject({ plural: null, overridden: ['plural'] })
    expect(patternsOf(words.get('thread'))).toEqual(['consonant-digraph th', 'vowel-team ea'])
    expect(words.get('heron')).toMatchObject({ source: 'lexicon' })
    expect(words.get('heron')).not.toHaveProperty('overridden')
  })

  test('the class file carries it from week to week, and the plan of the week wins', () => {
    const carried = `words:
  - {word: marsh, plural: none, clue: where the herons stand}
  - {word: thread, not: digraph-blend}
accent: r-less
`
    const files = {
      'room-7.yaml': carried,
      'week.yaml': 'class file: room-7.yaml\nwords: [marsh, thread]\nprint: [word-cards]\n',
      'next.yaml':
        'class file: room-7.yaml\naccent: american\nwords: [{word: Marsh, plural: marshes}, reed]\nprint: [word-cards]\n',
    }
    const week = studied(files)
    expect(week.get('marsh')).toMatchObject({
      plural: null,
      clue: 'where the herons stand',
      overridden: ['plural'],
      phonemeCount: 3,
    })
    expect(patternsOf(week.get('thread'))).toEqual(['vowel-team ea'])
    const next = studied(files, 'next.yaml')
    expect(next.get('Marsh')).toMatchObject({
      plural: { form: 'marshes' },
      clue: 'where the herons stand',
      phonemeCount: 4,
    })
  })

  test.each([
    [
      '{word: reed, sounds: r e d}',
      'week.yaml:2:26: error: the sounds "r e d" do not add up to "reed", but to "red"',
    ],
    [
      '{word: reed, syllables: re d}',
      'week.yaml:2:29: error: the syllables "re d" do not add up to "reed", but to "red"',
    ],
    ['{word: reed, part of speech: thing}', 'week.yaml:2:34: error: unknown part of speech "thing"'],
    ['{word: reed, not: digraff}', 'week.yaml:2:23: error: unknown pattern "digraff"'],
    ['{word: reed, also: vowel-team oa}', 'week.yaml:2:24: error: the letters "oa" do not stand in "reed"'],
  ])('%s cannot be right: an error at its place', (word, problem) => {
    expect(problems({ 'week.yaml': `words:\n  - ${word}\nprint: [word-cards]\n` })).toEqual([problem])
  })

  test('so is one in the class file, at its place there', () => {
    const files = {
      'room-7.yaml': classFile,
      'week.yaml': 'class file: room-7.yaml\nwords: [marsh]\nprint: [word-cards]\n',
    }
    expect(problems(files)).toEqual([
      'room-7.yaml:3:27: error: the sounds "b r e_d ea" do not add up to "bread", but to "breead"',
    ])
  })
})

describe('a division into sounds that a class file carries', () => {
  test('is told of at its place there, once a word of the plan takes it', () => {
    const carried = 'words:\n  - {word: coin, sounds: c o i n}\n  - {word: boat, sounds: b o a t}\n'
    const week = (words: string) => ({
      'room-7.yaml': carried,
      'week.yaml': `class file: room-7.yaml\nwords: [${words}]\nprint: [word-cards]\n`,
    })
    expect(problems(week('coin, marsh'))).toEqual([
      'room-7.yaml:2:26: error: the sounds "c o i n" cut "oi", which spells one sound in "coin"',
    ])
    expect(problems(week('boat, marsh'))).toEqual([
      'room-7.yaml:3:26: warning: the sounds "b o a t" cut "oa", which spells one sound in "boat"; counted as b·o·(a)·t',
    ])
    expect(problems(week('marsh'))).toEqual([])
  })
})

describe("a class's accent", () => {
  const week = (accent: string) => ({
    'week.yaml': `accent: ${accent}\nwords: [marsh, fire, care, starfish, caught, water, whale, paw]\nprint: [word-cards]\n`,
  })
  const homophones = (word: Word | undefined) =>
    word?.patterns.filter(({ pattern }) => pattern === 'homophone').map(({ why }) => why) ?? []

  test('r dropped: phonemes are fewer, letters and their patterns stay, words that fall together are homophones', () => {
    const american = studied(week('american'))
    const rLess = studied(week('r-less'))
    const counts = (words: ReadonlyMap<string, Word>) =>
      [...words.values()].map(({ phonemeCount }) => phonemeCount)
    expect(counts(american)).toEqual([4, 3, 3, 7, 3, 4, 3, 2])
    expect(counts(rLess)).toEqual([3, 2, 2, 6, 3, 4, 3, 2])
    for (const text of ['marsh', 'fire', 'care', 'starfish', 'water'])
      expect(patternsOf(rLess.get(text))).toEqual(patternsOf(american.get(text)))
    expect(rLess.get('marsh')?.patterns[0]?.why).toBe(
      'the r changes the vowel and is not said itself in this accent: ar spells /AA/ as in hot',
    )
    expect(homophones(american.get('paw'))).toEqual([])
    expect(homophones(rLess.get('paw'))).toEqual(['sounds the same as pour and pore and poor'])
    expect(homophones(rLess.get('caught'))).toEqual(['sounds the same as court'])
  })

  test('cot and caught merged: one vowel, the same count and syllables', () => {
    const merged = studied(week('{cot and caught: merged}'))
    expect(merged.get('caught')).toMatchObject({ phonemeCount: 3, pronunciations: ['K AA1 T'] })
    expect(homophones(merged.get('caught'))).toEqual(['sounds the same as cot'])
    expect(merged.get('water')).toMatchObject({ syllables: ['wa', 'ter'] })
  })

  test('wh its own: two phonemes as the dictionary writes it, and whale is not wail', () => {
    const own = studied(week('{wh: own}'))
    expect(own.get('whale')).toMatchObject({ phonemeCount: 4 })
    expect(homophones(own.get('whale'))).toEqual([])
    expect(own.get('whale')?.patterns[0]?.why).toBe('wh has its own sound in this accent, /HH W/')
    expect(homophones(studied(week('american')).get('whale'))).toEqual(['sounds the same as wail'])
  })
})

test('before a vowel the r is said in every accent', () => {
  const words = studied({
    'week.yaml': 'accent: r-less\nwords: [story, storm]\nprint: [word-cards]\n',
  })
  const whys = (text: string) =>
    words.get(text)?.patterns.flatMap(({ pattern, why }) => (pattern === 'r-controlled' ? [why] : []))
  expect(whys('story')).toEqual(['the r changes the vowel: or spells /AO R/'])
  expect(whys('storm')).toEqual([
    'the r changes the vowel and is not said itself in this accent: or spells /AO/ as in saw',
  ])
})

describe('a mark that misses its words', () => {
  const plan = (mark: string) => ({
    'week.yaml': `words: [shrub, fish]\nmarks:\n  - {${mark}}\nprint: [word-cards]\n`,
  })

  test('is told as a warning, with the words and the place of the mark', () => {
    expect(problems(plan('pattern: consonant-digraph'))).toEqual([
      'week.yaml:3:5: warning: the mark on consonant-digraph does not reach the digraph inside a blend: shrub',
    ])
    expect(problems(plan('pattern: soft-c'))).toEqual([
      'week.yaml:3:5: warning: the mark on soft-c stands on no word',
    ])
    expect(problems(plan('pattern: consonant-digraph, inside blends: yes'))).toEqual([])
  })
})
