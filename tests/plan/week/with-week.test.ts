import { describe, expect, it } from 'vitest'
import { planOf } from '../reading.js'

// The tests' own vocabulary has four of the week's layouts: key, word-cards, bingo, and open-sort, which the week has not.
const printOf = (more: string) => planOf(`words: [reed, marsh]\n${more}`).print
const namesOf = (more: string) => printOf(more).map(({ name }) => name)

describe('the items of a week', () => {
  it('are its parts, in the order of its days', () => {
    expect(namesOf('week: yes\n')).toEqual(['key', 'word-cards', 'bingo'])
  })

  it.each([
    ['{without: bingo}', ['key', 'word-cards']],
    ['{without: [Word Cards, bingo]}', ['key']],
  ])('%s', (week, names) => {
    expect(namesOf(`week: ${week}\n`)).toEqual(names)
  })

  it('are without the key where nothing is marked', () => {
    expect(namesOf('marks: []\nweek: yes\n')).toEqual(['word-cards', 'bingo'])
  })

  it('stand beside what print: names', () => {
    expect(namesOf('week: yes\nprint: [open-sort]\n')).toEqual(['key', 'word-cards', 'bingo', 'open-sort'])
  })

  it('are replaced by what print: names of their kind, however often', () => {
    const print = '[{layout: bingo, boards: 4}, {layout: bingo, name: short game, boards: 8}]'
    const bingos = printOf(`week: yes\nprint: ${print}\n`).filter(({ layout }) => layout === 'bingo')
    expect(bingos.map(({ options, ofWeek }) => [options.boards, ofWeek])).toEqual([
      [4, undefined],
      [8, undefined],
    ])
  })

  it('come back under print: where they are left out', () => {
    expect(namesOf('week: {without: bingo}\nprint: [{layout: bingo, name: Friday}]\n')).toEqual([
      'key',
      'word-cards',
      'Friday',
    ])
  })

  it('take no name that the teacher has given to something else', () => {
    expect(namesOf('week: yes\nprint: [{layout: open-sort, name: bingo}]\n')).toContain('bingo-2')
    const groups = 'groups: [{name: Otters, words: [frog]}]\n'
    expect(namesOf(`week: yes\nprint: [{layout: open-sort, name: key Otters}]\n${groups}`)).toContain('key-2')
  })
})
