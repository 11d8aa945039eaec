import { describe, expect, it } from 'vitest'
import { printAll } from '../../layouts/print-item.js'

const plan = (marks: string, groups = '') => `title: Along the marsh
words: [reed, marsh, shrub, wren]
${marks}${groups}print:
`
const marks = 'marks:\n  - {pattern: silent-letters}\n  - {pattern: vowel-team}\n'
const otters = 'groups:\n  - {name: Otters, words: [pond, frog, mud, nest]}\n'

const isOfMarks = (note: string) => note.startsWith('No word of')

async function madeWith(items: readonly string[], text: string) {
  const printed = await printAll(items, text)
  return {
    names: printed.ok ? printed.value.map(({ name }) => name) : [],
    notes: printed.ok ? printed.value.map(({ name, notes }) => [name, notes.filter(isOfMarks)]) : [],
    told: printed.problems.map(({ message }) => message),
  }
}

describe('a mark that the words of some items do not show', () => {
  it('is no warning where a group has words of another level: it is told once, with the first of its items', async () => {
    const { told, notes } = await madeWith(
      ['{layout: word-cards}', '{layout: marked-list}'],
      plan(marks, otters),
    )
    expect(told).toEqual([])
    const note =
      'No word of Otters shows silent-letters or vowel-team: the key for Otters leaves out what it has no word for.'
    expect(notes).toEqual([
      ['word-cards', []],
      ['word-cards-otters', [note]],
      ['marked-list', []],
      ['marked-list-otters', []],
    ])
  })

  it('is told of words that an item names, and not where an item shows no marks', async () => {
    const items = ['{layout: word-cards}', '{layout: open-sort, marks: none, words: [reed, marsh]}']
    expect((await madeWith(items, plan(marks))).told).toEqual([])
    const some = ['{layout: word-cards}', '{layout: marked-list, words: [reed, marsh]}']
    expect((await madeWith(some, plan(marks))).told).toEqual([
      'some marks stand on no word of some sets: silent-letters (marked-list)',
    ])
  })

  it('that no item shows is told by itself alone', async () => {
    const { told } = await madeWith(
      ['{layout: word-cards}', '{layout: key}'],
      plan('marks:\n  - {pattern: vowel-team}\n  - {letters: zz}\n'),
    )
    expect(told).toEqual(['the mark on "zz" stands on no word'])
  })
})

describe('a key with nothing to show', () => {
  it('is not printed, which is told once', async () => {
    const items = ['{layout: key}', '{layout: key, name: desk, for: desk}', '{layout: marked-list}']
    const { names, told } = await madeWith(items, plan(marks, otters))
    expect(names).toEqual(['key', 'desk', 'marked-list', 'marked-list-otters'])
    expect(told[0]).toBe('no mark stands on their words, so no key is printed: key-otters and desk-otters')
    expect(told).toHaveLength(1)
  })

  it('is not printed for a plan without marks', async () => {
    const { names, told } = await madeWith(['{layout: key}', '{layout: word-cards}'], plan(''))
    expect(names).toEqual(['word-cards'])
    expect(told).toEqual(['the plan has no marks, so no key is printed: key'])
  })
})
