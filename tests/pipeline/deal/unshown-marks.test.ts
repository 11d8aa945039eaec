import { describe, expect, it } from 'vitest'
import { printAll } from '../../layouts/print-item.js'

const plan = (marks: string, groups = '') => `title: Along the marsh
words: [reed, marsh, shrub, wren]
${marks}${groups}print:
`
const marks = 'marks:\n  - {pattern: silent-letters}\n  - {pattern: vowel-team}\n'
const otters = 'groups:\n  - {name: Otters, words: [pond, frog, mud, nest]}\n'

async function madeWith(items: readonly string[], text: string) {
  const printed = await printAll(items, text)
  return {
    names: printed.ok ? printed.value.map(({ name }) => name) : [],
    told: printed.problems.map(({ message }) => message),
  }
}

describe('a mark that the words of some items do not show', () => {
  it('is told once for all marks and items', async () => {
    const { told } = await madeWith(['{layout: word-cards}', '{layout: marked-list}'], plan(marks, otters))
    expect(told).toEqual([
      'some marks stand on no word of some sets: silent-letters (Otters), vowel-team (Otters)',
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
    expect(told).toHaveLength(2)
  })

  it('is not printed for a plan without marks', async () => {
    const { names, told } = await madeWith(['{layout: key}', '{layout: word-cards}'], plan(''))
    expect(names).toEqual(['word-cards'])
    expect(told).toEqual(['the plan has no marks, so no key is printed: key'])
  })
})
