import { describe, expect, it } from 'vitest'
import { filesInMemory, planOf, problemsOf } from '../reading.js'

const room = filesInMemory({
  'room-7.yaml':
    'groups:\n  - {name: Otters, size: large, marks: [{letters: ee}]}\n  - {name: Sea Terns, font: lexend}\n',
})
const plan = (groups: string) =>
  `class file: room-7.yaml\nwords: [reed, marsh]\ngroups: ${groups}\nprint: [{layout: key, groups: [Otters]}]\n`
const groupsOf = (groups: string) => planOf(plan(groups), room).groups

describe('the groups of a class file', () => {
  it('are taken by name, with all that is said of them', () => {
    expect(groupsOf('[otters]')).toMatchObject([
      { name: 'Otters', words: [], size: { kind: 'large' }, marks: [{ target: { letters: 'ee' } }] },
    ])
  })

  it('are all taken with one word', () => {
    expect(groupsOf('all').map(({ name }) => name)).toEqual(['Otters', 'Sea Terns'])
  })

  it('are none of a plan that does not name them', () => {
    expect(planOf('class file: room-7.yaml\nwords: [reed]\nprint: [key]\n', room).groups).toEqual([])
  })

  it('take words in the plan, which has the last word on all else', () => {
    expect(groupsOf('[{name: Otters, words: [mud], size: normal}, sea terns]')).toMatchObject([
      { name: 'Otters', words: [{ text: 'mud' }], size: { kind: 'normal' }, marks: [{}] },
      { name: 'Sea Terns', font: 'lexend' },
    ])
  })

  it.each([
    ['[Otters, Oters]', 'week.yaml:3:18: error: the class file has no group "Oters"'],
    ['[Otters, otters]', 'week.yaml:3:18: error: the group "otters" stands twice, on line 3'],
    ['Otters', 'week.yaml:3:9: error: expected a list of groups, found "Otters"'],
  ])('%s is refused', (groups, problem) => {
    expect(problemsOf(plan(groups), room)).toContain(problem)
  })

  it.each([
    ['groups: [Otters]', '1:10: error: expected a group, found "Otters"'],
    [
      'groups: [{name: Otters, words: [mud]}]',
      '1:32: error: a group of a class file has no words of its own',
    ],
    ['groups: [{name: Otters}, {name: otters}]', '1:33: error: the group "otters" stands twice, on line 1'],
    ['groups: [{name: Otters, size: big}]', '1:31: error: "big" is no type size'],
  ])('%s is refused at its place', (text, problem) => {
    expect(problemsOf(plan('[Otters]'), filesInMemory({ 'room-7.yaml': text }))).toEqual([
      `room-7.yaml:${problem}`,
    ])
  })

  it('cannot be taken where there are none', () => {
    expect(problemsOf('words: [reed]\ngroups: all\nprint: [key]\n')).toEqual([
      'week.yaml:2:9: error: there are no groups of a class file to take',
    ])
  })
})
