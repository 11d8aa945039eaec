import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { findCommand } from '../../src/commands/find.js'
import type { FindOptions } from '../../src/commands/find-options.js'
import { folderWith } from '../pipeline/plan-folder.js'

const find = (options: Partial<FindOptions>) => findCommand({ count: 20, json: false, ...options })

/** The words alone, without what stands beside them. */
const wordsIn = (output: string) => output.split('\n').map(line => line.split(' ')[0]!)

/** The files in a folder of their own; gives the path of one. */
function fileIn(files: Readonly<Record<string, string>>, name: string): string {
  return join(folderWith(files), name)
}

describe('find', () => {
  test('prints a line a word: the word, its sounds, the letters that show the pattern', async () => {
    const { output, exitCode } = await find({ pattern: ['digraph-blend'], place: 'beginning', count: 3 })
    expect(exitCode).toBe(0)
    expect(output).toBe('through  th·r·ough  thr\nthree    th·r·ee    thr\nthrow    th·r·ow    thr')
  })

  test('has no ch that is said as c is among the digraph blends', async () => {
    const { output } = await find({ pattern: ['digraph-blend'], count: 500 })
    const remarks = output.split('\n').map(line => line.split(' ').at(-1)!)
    expect(remarks.filter(letters => /sch|chr|chl/.test(letters))).toEqual([])
  })

  test('takes letters with a low line', async () => {
    const { output } = await find({ letters: 'a_e', level: 'easy' })
    const words = wordsIn(output)
    expect(words).toHaveLength(20)
    for (const word of words) expect(word).toMatch(/a([a-z]|th|sh|ch)e/)
  })

  test('puts first what is like a word in vowel and frame, the most familiar first', async () => {
    const { output } = await find({ like: 'reed', count: 3 })
    expect(wordsIn(output)).toEqual(['need', 'keep', 'feel'])
  })

  test('fits 80 columns, whatever stands beside the words', async () => {
    for (const options of [{ like: 'neighborhood' }, { like: 'shrug' }, { pattern: ['prefix', 'suffix'] }]) {
      const { output } = await find(options)
      expect(output.split('\n').filter(line => line.length > 80)).toEqual([])
    }
  })
})

describe('find with an empty answer', () => {
  const wishes = { pattern: ['digraph-blend'], sounds: 2, syllables: 3 }

  test('says which wish to drop, and how many words fit then', async () => {
    const { output, exitCode } = await find(wishes)
    expect(exitCode).toBe(0)
    const [, dropped] = /without --sounds 2 +(\d+) words fit/.exec(output)!
    const { sounds: _sounds, ...left } = wishes
    const there = await find({ ...left, count: 1000 })
    expect(wordsIn(there.output)).toHaveLength(Number(dropped))
  })

  test('prints an empty list as JSON, and the advice beside it', async () => {
    const { output, problems, exitCode } = await find({ ...wishes, json: true })
    expect([output, exitCode]).toEqual(['[]', 0])
    expect(problems).toContain('without --sounds 2')
  })
})

describe('find --taught', () => {
  test('takes a list: only words made of what stands in it', async () => {
    const taught = fileIn({ 'taught.txt': 'short-vowel\nsh\n' }, 'taught.txt')
    const { output } = await find({ taught, letters: 'sh', syllables: 1, count: 8 })
    const words = wordsIn(output)
    expect(words).toHaveLength(8)
    for (const word of words) expect(word).toMatch(/^(?:sh)?[bcdfghjklmnpqrstvwxyz]?[aeiou](?:[a-z]|sh)$/)
  })

  test('takes a class file', async () => {
    const taught = fileIn({ 'room-7.yaml': 'taught: [short-vowel, th]\n' }, 'room-7.yaml')
    expect(wordsIn((await find({ taught, sounds: 3, count: 3 })).output)).toEqual(['that', 'this', 'not'])
  })

  test.each([
    [
      'taught.txt',
      'sh\nvowel-teem\n',
      'taught.txt:2:1: error: "vowel-teem" is no pattern, no letters and no word',
    ],
    ['taught.txt', '\n', 'taught.txt: error: the list of what is taught is empty'],
    ['taught.txt', 'ea as in rock\n', 'taught.txt:1:1: error: "ea" spells no sound of its own in "rock"'],
    ['room-7.yaml', 'accent: r-less\n', 'room-7.yaml: error: the class file does not say what is taught'],
    [
      'room-7.yaml',
      'taught:\n  - zzq\n',
      'room-7.yaml:2:5: error: "zzq" is no pattern, no letters of one sound',
    ],
  ])('refuses a %s with %j, at its place, with what to do', async (name, text, message) => {
    const { output, problems, exitCode } = await find({ taught: fileIn({ [name]: text }, name) })
    expect([output, exitCode]).toEqual(['', 1])
    expect(problems.replaceAll(/^.*\//gm, '')).toContain(message)
    expect(problems).toMatch(/\n {2}[A-Z"].*\.$/)
  })

  test('says that a file is not there', async () => {
    const { problems, exitCode } = await find({ taught: 'nowhere.txt' })
    expect(exitCode).toBe(1)
    expect(problems).toContain('nowhere.txt')
  })
})

describe('find --for', () => {
  const plan = `words: [shrug, thread, bench, crunch]
marks: [{pattern: digraph-blend}]
print: [word-cards]
`

  test('proposes words that show what the plan marks, as hard as its own, which are left out', async () => {
    const { output } = await find({ for: fileIn({ 'week.yaml': plan }, 'week.yaml'), json: true, count: 50 })
    const found: {
      word: string
      soundCount: number
      syllables: string[]
      patterns: { pattern: string }[]
    }[] = JSON.parse(output)
    expect(found.length).toBeGreaterThan(5)
    for (const { word, soundCount, syllables, patterns } of found) {
      expect(['shrug', 'thread', 'bench', 'crunch']).not.toContain(word)
      expect(patterns.map(({ pattern }) => pattern)).toContain('digraph-blend')
      expect([4, 5]).toContain(soundCount)
      expect(syllables).toHaveLength(1)
    }
  })

  test('keeps to what the class file of the plan says is taught, and to this week’s marks', async () => {
    const files = {
      'week.yaml': `class file: room-7.yaml\n${plan}`,
      'room-7.yaml': 'taught: [short-vowel]\n',
    }
    const { output } = await find({ for: fileIn(files, 'week.yaml') })
    const words = wordsIn(output.split('\n\n')[0]!)
    expect(words).toContain('hunch')
    for (const word of words) expect(word).toMatch(/^[a-z]*[aeiou][a-z]*$/)
    expect(output).toContain('class file')
  })

  test('needs a plan that marks something, or something to look for', async () => {
    const unmarked = fileIn({ 'week.yaml': 'words: [reed]\nprint: [word-cards]\n' }, 'week.yaml')
    const refused = await find({ for: unmarked })
    expect(refused.exitCode).toBe(1)
    expect(refused.problems).toContain('the plan marks nothing to look for')
    expect((await find({ for: unmarked, pattern: ['vowel-team'] })).exitCode).toBe(0)
  })

  test('tells the problems of a plan that cannot be read', async () => {
    const { problems, exitCode } = await find({
      for: fileIn({ 'week.yaml': 'wrods: [reed]\n' }, 'week.yaml'),
    })
    expect(exitCode).toBe(1)
    expect(problems).toContain('unknown key "wrods"')
  })
})

describe('wrong usage of find', () => {
  test.each<[string, Partial<FindOptions>]>([
    ['needs a wish', {}],
    ['unknown pattern "digraf"', { pattern: ['digraf'] }],
    ['"_e" is not letters', { letters: '_e' }],
    ['"a_e_i" is not letters', { letters: 'a_e_i' }],
    ['--place needs a pattern or letters', { place: 'end', sounds: 3 }],
    ['--sounds takes a whole number', { sounds: 0 }],
    ['--count takes a whole number', { sounds: 3, count: 2.5 }],
    ['--taught names no file', { taught: ' ' }],
    ['--for names no file', { for: '' }],
  ])('%s', async (message, options) => {
    const { output, problems, exitCode } = await find(options)
    expect([output, exitCode]).toEqual(['', 2])
    expect(problems).toContain(message)
    expect(problems).toMatch(/\n {2}\S.*\.$/)
  })

  describe('for several groups', () => {
    test('prints a list for each, from short words to long, and the groups of a plan', async () => {
      const { output } = await find({ pattern: ['vowel-team'], letters: 'ai', groups: 3, count: 4 })
      expect(output).toMatch(/^Group 1: .* sounds, 1 syllable\n/)
      expect(output.match(/^Group \d/gm)).toHaveLength(3)
      expect(output.match(/^ {4}words: \[(?:\S+, ){3}\S+\]$/gm)).toHaveLength(3)
      expect(output.replace(/\n +/g, ' ')).toContain('a number tells children whose words are the harder')
    })

    test('gives them to a machine in order', async () => {
      const { output } = await find({ pattern: ['consonant-digraph'], groups: 3, count: 5, json: true })
      const lists: readonly {
        group: number
        words: readonly { soundCount: number; syllables: string[] }[]
      }[] = JSON.parse(output)
      expect(lists.map(({ group, words }) => [group, words.length])).toEqual([
        [1, 5],
        [2, 5],
        [3, 5],
      ])
      const most = (at: number) => Math.max(...lists[at]!.words.map(({ syllables }) => syllables.length))
      const least = (at: number) => Math.min(...lists[at]!.words.map(({ syllables }) => syllables.length))
      expect(least(1)).toBeGreaterThanOrEqual(most(0))
      expect(least(2)).toBeGreaterThanOrEqual(most(1))
    })

    test('says so where too few words fit', async () => {
      expect((await find({ letters: 'dge', level: 'easy', sounds: 2, groups: 3 })).output).toMatch(
        /No familiar word|too few for 3 lists/,
      )
    })

    test('refuses a number of groups that is none', async () => {
      expect((await find({ letters: 'sh', groups: 1 })).problems).toContain(
        '--groups takes a whole number from 2 to 6',
      )
    })
  })
})
