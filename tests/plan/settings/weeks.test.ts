import { describe, expect, it } from 'vitest'
import { filesInMemory, planOf, problemsOf, read, toldBy } from '../reading.js'

const week = (words: string, more = '') => `class file: room-7.yaml\nwords: [${words}]\nprint: [key]\n${more}`
const room = (more: string) =>
  `weeks:\n  - week-1.yaml\n  - {plan: week-2.yaml, taught: vowel-team}\n  - {plan: week.yaml, taught: sh}\n  - {plan: week-4.yaml, taught: ch}\n${more}`
const folder = (text: string) =>
  filesInMemory({
    'room-7.yaml': text,
    'week-1.yaml': week('reed, marsh, wren'),
    'week-2.yaml': week('gnat, knot, leaf'),
    'week-4.yaml': week('moth, frog'),
  })
const own = week('stream, heron, duck')
const words = (text: string, classFile: string) =>
  planOf(text, folder(classFile)).words.map(({ text, cameBack }) =>
    cameBack === undefined ? text : `${text} ${cameBack.weeksAgo}`,
  )

describe('the weeks of a class file', () => {
  it('give their words back to later weeks, where it says so', () => {
    expect(words(own, room('review: yes'))).toEqual(['stream', 'heron', 'duck', 'gnat 1'])
    expect(words(own, room('review: {share: 2/5}'))).toEqual(['stream', 'heron', 'duck', 'gnat 1', 'leaf 1'])
    expect(words(own, room(''))).toEqual(['stream', 'heron', 'duck'])
    expect(words(own, room('review: no'))).toEqual(['stream', 'heron', 'duck'])
  })

  it('give way to the plan', () => {
    expect(words(`${own}review: no\n`, room('review: yes'))).toHaveLength(3)
    expect(words(`${own}review: yes\n`, room(''))).toEqual(['stream', 'heron', 'duck', 'gnat 1'])
    expect(words(`${own}review: [[pond]]\n`, room('review: yes'))).toEqual([
      'stream',
      'heron',
      'duck',
      'pond 1',
    ])
  })

  it('are before the first week none, and all before a plan that they do not name', () => {
    const first = 'weeks: [week.yaml, week-1.yaml]\nreview: yes\n'
    expect(words(own, first)).toEqual(['stream', 'heron', 'duck'])
    expect(problemsOf(own, folder(first))).toEqual([])
    expect(words(own, 'weeks: [week-1.yaml, week-2.yaml]\nreview: yes\n')).toEqual([
      'stream',
      'heron',
      'duck',
      'gnat 1',
    ])
  })

  it('say what is taught up to a plan and in it', () => {
    const taught = planOf(own, folder(room('taught: [ee]'))).taught
    expect(taught?.map(entry => (entry.kind === 'pattern' ? entry.pattern : entry.letters))).toEqual([
      'ee',
      'vowel-team',
      'sh',
    ])
    expect(planOf(own, folder('weeks: [week.yaml]')).taught).toBeUndefined()
  })

  it('may be word lists, for weeks without a plan', () => {
    const files = filesInMemory({
      'room-7.yaml': 'weeks: [old.txt, week.yaml]\nreview: yes\n',
      'old.txt': 'fern\n',
    })
    expect(planOf(own, files).words.at(-1)).toMatchObject({
      text: 'fern',
      cameBack: { from: 'old', weeksAgo: 1 },
    })
  })

  it.each([
    ['weeks: [week-1.yaml, ./week-1.yaml]', '1:22: error: the week "./week-1.yaml" stands twice, on line 1'],
    ['weeks: [room-7.yaml]', '1:9: error: "room-7.yaml" is the class file itself'],
    ['weeks: [reed]', '1:9: error: "reed" is no plan and no word list'],
    ['weeks: [{taught: sh}]', '1:9: error: a week has no "plan"'],
    ['weeks: [{plan: week-1.yaml, taugt: sh}]', '1:29: error: unknown key "taugt" in a week'],
    ['weeks: week-1.yaml', '1:8: error: expected a list of weeks, found "week-1.yaml"'],
    ['weeks: []\nreview: perhaps', '2:9: error: "perhaps" is neither yes nor no'],
    [
      'weeks: [week-9.yaml, week.yaml]\nreview: yes',
      '1:9: error: the earlier plan "week-9.yaml" is not there',
    ],
  ])('%s is refused', (text, problem) => {
    expect(problemsOf(own, folder(text))).toEqual([`room-7.yaml:${problem}`])
  })

  it('are no more than can be meant', () => {
    const many = Array.from({ length: 1000 }, (_, at) => `w${at}.yaml`).join(', ')
    expect(problemsOf(own, folder(`weeks: [${many}]`))).toEqual([
      'room-7.yaml:1:8: error: the list has 1,000 weeks',
    ])
  })

  it('are none of a plan given as a class file', () => {
    expect(toldBy(read(own, folder('words: [reed]\nprint: [key]\n')))).toEqual([
      'room-7.yaml: error: this is a plan, not a class file',
    ])
  })

  it('do not go in circles', () => {
    const files = filesInMemory({
      'room-7.yaml': 'weeks: [week-1.yaml, week.yaml]\nreview: yes\n',
      'week-1.yaml': week('reed', 'review: [week.yaml]\n'),
    })
    expect(problemsOf(own, files)).toEqual([
      'week-1.yaml: error: this plan takes up words of "week.yaml", which takes up words of it',
    ])
  })
})
