import { describe, expect, it } from 'vitest'
import { filesInMemory, planOf, problemsOf, toldAtMark } from '../reading.js'

const plan = (week: string, print = '') => `words: [reed, marsh]\nweek: ${week}\n${print}`

describe('week:', () => {
  it('yes needs no print:', () => {
    expect(planOf(plan('yes')).week).toEqual({
      place: { file: 'week.yaml', line: 2, column: 7 },
      findsMarks: true,
    })
  })

  it('no is as if it were not there', () => {
    expect(planOf(plan('no', 'print: [key]\n')).week).toBeUndefined()
    expect(problemsOf(plan('no'))).toEqual(['week.yaml:1:1: error: the plan has no "print"'])
  })

  it('leaves the marks to the teacher where she names some, and where she names none on purpose', () => {
    expect(planOf(plan('yes', 'marks: [{pattern: vowel-team}]\n')).week?.findsMarks).toBe(false)
    expect(planOf(plan('yes', 'marks: []\n')).week?.findsMarks).toBe(false)
  })

  it.each([
    ['▸maybe', '"maybe" is neither yes nor no'],
    ['▸[bingo]', 'expected yes or no, found a list'],
    ['{without: ▸bongo}', 'unknown part of the week "bongo"'],
    ['{without: [bingo, ▸crossword]}', 'unknown part of the week "crossword"'],
    ['▸{without: [word-cards, bingo, key]}', 'the week goes without all of its parts'],
    ['{▸with: bingo}', 'unknown key "with" in a week'],
  ])('%s is refused', (week, message) => {
    expect(toldAtMark(plan(week))).toEqual([`▸ ${message}`])
  })
})

describe('children:', () => {
  it('stands in the plan and with its groups', () => {
    const groups = 'groups: [{name: Otters, words: [frog], children: 5}]\n'
    const read = planOf(plan('yes', `children: 22\n${groups}`))
    expect([read.children, read.groups[0]?.children]).toEqual([22, 5])
  })

  it('stands in the class file, where the plan wins', () => {
    const room = filesInMemory({ 'room.yaml': 'children: 22\ngroups: [{name: Otters, children: 5}]\n' })
    const more = 'class file: room.yaml\ngroups: [Otters]\n'
    const childrenOf = (text: string) => {
      const { children, groups } = planOf(text, room)
      return [children, groups[0]?.children]
    }
    expect(childrenOf(plan('yes', more))).toEqual([22, 5])
    expect(childrenOf(plan('yes', `children: 20\n${more}`))).toEqual([20, 5])
  })

  it.each(['▸0', '▸201', '▸many'])('%s is refused', count => {
    expect(toldAtMark(plan('yes', `children: ${count}\n`))).toHaveLength(1)
  })
})
