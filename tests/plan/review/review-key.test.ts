import { describe, expect, it } from 'vitest'
import { adviceFor, filesInMemory, planOf, problemsOf, toldAtMark } from '../reading.js'

const plan = (review: string) => `words: [reed, leaf, seed]\nreview: ${review}\nprint: [key]\n`
const week1 = 'words: [{word: marsh, clue: wet land, sounds: m ar sh}]\nprint: [key]\n'
const files = filesInMemory({
  'week-1.yaml': week1,
  'old/week-2.yaml': 'words: words.txt\nprint: [key]\n',
  'old/words.txt': 'wren\n',
  'old.csv': 'word,clue\ngnat,a small fly\n',
})
const backIn = (review: string) =>
  planOf(plan(review), files)
    .words.slice(3)
    .map(({ text, cameBack }) => `${text} from ${cameBack?.from} after ${cameBack?.weeksAgo}`)

describe('review:', () => {
  it.each([
    ['week-1.yaml', ['marsh from week-1 after 1']],
    ['[week-1.yaml, old/week-2.yaml]', ['wren from week-2 after 1']],
    ['[old.csv]', ['gnat from old after 1']],
    ['[[gnat, knot]]', ['gnat from  after 1']],
    [
      '{from: [week-1.yaml, old/week-2.yaml, old.csv], share: 1/2}',
      ['gnat from old after 1', 'marsh from week-1 after 3'],
    ],
    ['no', []],
  ])('%s', (review, back) => {
    expect(backIn(review)).toEqual(back)
  })

  it('brings the clue and the division of the earlier plan along', () => {
    expect(planOf(plan('week-1.yaml'), files).words[3]).toMatchObject({
      text: 'marsh',
      clue: 'wet land',
      overrides: { sounds: ['m', 'ar', 'sh'] },
      place: { file: 'week-1.yaml' },
    })
  })

  it('gives way to what the class file says of a word only where the word says nothing', () => {
    const room = filesInMemory({
      'week-1.yaml': week1,
      'room.yaml': 'words: [{word: marsh, clue: bog, plural: none}]',
    })
    const word = planOf(`${plan('week-1.yaml')}class file: room.yaml\n`, room).words[3]
    expect(word).toMatchObject({ clue: 'wet land', overrides: { noPlural: true } })
  })

  it('lets an item name a word that came back', () => {
    const text = 'words: [reed]\nreview: week-1.yaml\nprint: [{layout: key, words: [marsh]}]\n'
    expect(planOf(text, files).print[0]?.words).toEqual(['marsh'])
  })

  it.each([
    ['▸week-9.yaml', 'the earlier plan "week-9.yaml" is not there'],
    ['[▸week-9.txt]', 'the word list "week-9.txt" is not there'],
    ['▸folder.yaml', '"folder.yaml" is a folder, not a file'],
    ['[▸reed]', '"reed" is no plan and no word list'],
    ['[▸[]]', 'an earlier list has no words'],
    ['▸[]', 'expected earlier weeks, found a list'],
    ['[▸week.yaml]', '"week.yaml" is this plan itself'],
    ['[week-1.yaml, ▸./week-1.yaml]', 'the week "./week-1.yaml" stands twice, on line 2'],
    ['{from: week-1.yaml, share: ▸9/10}', 'a share of 9/10 is not taken'],
    ['{▸form: week-1.yaml}', 'unknown key "form" in a review'],
    ['▸yes', 'it does not say from which weeks words come back'],
  ])('%s is refused', (review, message) => {
    const folder = filesInMemory({ 'week-1.yaml': week1, 'folder.yaml': null })
    expect(toldAtMark(plan(review), folder)).toEqual([`▸ ${message}`])
  })

  it.each([
    [
      'a plan that takes words from this one',
      'words: [wren]\nreview: [week.yaml]\n',
      'week-1.yaml: error: this plan takes up words of "week.yaml", which takes up words of it',
    ],
    ['a plan without words', 'title: none\n', 'week-1.yaml: error: the earlier plan has no words'],
    ['an empty plan', '', 'week-1.yaml: error: the earlier plan has no words'],
    ['a class file', 'weeks: [week.yaml]\n', 'week-1.yaml: error: this is a class file, not a plan'],
    [
      'a plan that is broken',
      'words: [wren\n',
      'week-1.yaml:1:8: error: a bracket opened here is never closed',
    ],
    [
      'a plan with a word that is none',
      'words: [wr3n]\n',
      'week-1.yaml:1:9: error: "wr3n" has a digit in it',
    ],
  ])('says of %s where it is wrong', (_, text, problem) => {
    expect(problemsOf(plan('week-1.yaml'), filesInMemory({ 'week-1.yaml': text }))).toEqual([problem])
  })

  it('says so where fewer words are due than the share comes to', () => {
    const review = plan('{from: week-1.yaml, share: 1/2}')
    expect(problemsOf(review, files)).toEqual([
      'week.yaml:2:9: warning: 1 word can come back this week, of the 3 that a share of 1/2 comes to',
    ])
    expect(adviceFor(review, files)[0]).toContain('after 1, 3 and 7 weeks')
  })

  it('reads no more weeks and no more bytes than can be meant', () => {
    const many = `[${Array.from({ length: 1000 }, (_, index) => `w${index}.yaml`).join(', ')}]`
    expect(problemsOf(plan(many))).toEqual(['week.yaml:2:10: error: the list has 1,000 earlier weeks'])
    const large = `words: [wren]\n${'# '.padEnd(900_000, 'x')}\n`
    const names = ['a', 'b', 'c', 'd', 'e', 'f'].map(name => `${name}.yaml`)
    const folder = filesInMemory(Object.fromEntries(names.map(name => [name, large])))
    expect(problemsOf(plan(`[${names.join(', ')}]`), folder)).toHaveLength(2)
  })
})
