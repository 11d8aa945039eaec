import { describe, expect, it } from 'vitest'
import { filesInMemory, problemsOf, read } from './reading.js'

const many = (count: number, entry: (index: number) => string) =>
  Array.from({ length: count }, (_, index) => entry(index)).join('\n')
const week = 'words: [reed]\nprint: [key]\n'

describe('a list longer than can be meant', () => {
  it('of 300,001 words is told, not read to the end of the machine', { timeout: 30_000 }, () => {
    const files = filesInMemory({ 'list.txt': many(300_001, () => 'a') })
    expect(problemsOf('words: list.txt\nprint: [key]\n', files)).toEqual([
      'list.txt:1:1: error: the list has 300,001 words',
    ])
  })

  // More than a call takes as arguments, which is where lists come to grief.
  it('of 150,001 words in the plan itself is told too', { timeout: 30_000 }, () => {
    expect(problemsOf(`words: [${'a,'.repeat(150_001)}]\nprint: [key]\n`)).toEqual([
      'week.yaml:1:9: error: the list has 150,001 words',
    ])
  })

  it.each([
    ['things to print', `words: [reed]\nprint:\n${many(501, () => '- key')}`, 3],
    ['groups', `${week}groups:\n${many(101, index => `- {name: g${index}}`)}`, 4],
    ['marks', `${week}marks:\n${many(201, index => `- {letters: ${'e'.repeat(index % 20)}}`)}`, 4],
  ])('of %s is told once', (what, text, line) => {
    expect(problemsOf(text)).toEqual([
      expect.stringMatching(`^week.yaml:${line}:1: error: the list has .* ${what}$`),
    ])
  })

  it('of many files is not read to its end', () => {
    const files = filesInMemory({ 'list.txt': many(9_000, () => 'reed') })
    let opened = 0
    const read: typeof files.read = (path, most) => {
      opened += 1
      return files.read(path, most)
    }
    const counting = { ...files, read }
    expect(problemsOf(`words: [${'list.txt,'.repeat(500)}]\nprint: [key]\n`, counting)).toEqual([
      'list.txt:1:1: error: the list has 18,000 words',
    ])
    expect(opened).toBeLessThan(10)
  })

  it('of ten thousand words is read', { timeout: 30_000 }, () => {
    const letters = (index: number) => [...String(index)].map(digit => 'abcdefghij'[Number(digit)]).join('')
    const files = filesInMemory({ 'list.txt': many(10_000, index => `w${letters(index)}`) })
    const outcome = read('words: list.txt\nprint: [key]\n', files)
    expect(outcome.ok && outcome.value.words.length).toBe(10_000)
  })
})

describe('a text that turns the direction of writing', () => {
  it.each(['title: "a\u202eb"', 'class: "\u2066a"', 'title: a\u200f'])('is told: %s', text => {
    expect(problemsOf(`${text}\n${week}`)).toEqual([
      expect.stringMatching(/^week.yaml:1:8: error: .* holds a sign that turns the direction of writing$/),
    ])
  })
})
