import { describe, expect, it } from 'vitest'
import { filesInMemory, planOf, problemsOf, toldAtMark } from '../reading.js'

const withGroups = (...groups: string[]) =>
  `words: [reed, {word: marsh, clue: wet}]\nprint: [key]\ngroups:\n${groups.map(group => `  - ${group}\n`).join('')}`

describe('a group', () => {
  it('has words, a size, a font and a contrast of its own', () => {
    const group =
      '{name: Otters, words: [mud, pond], size: large, font: lexend, contrast: "black on #fff6d5"}'
    expect(planOf(withGroups(group)).groups).toMatchObject([
      {
        name: 'Otters',
        words: [{ text: 'mud' }, { text: 'pond' }],
        size: { kind: 'large' },
        font: 'lexend',
        contrast: { ink: '#000000', ground: '#fff6d5' },
      },
    ])
  })

  it('has the class’s words where it names none', () => {
    expect(planOf(withGroups('name: Terns')).groups[0]?.words).toEqual([])
  })

  it('shares what the plan says of a word', () => {
    const [plain, own] = planOf(
      withGroups('{name: Otters, words: [Marsh]}', '{name: Terns, words: [{word: marsh, clue: bog}]}'),
    ).groups
    expect(plain?.words).toMatchObject([{ text: 'Marsh', clue: 'wet', place: { line: 4 } }])
    expect(own?.words).toMatchObject([{ clue: 'bog' }])
  })

  it('may have its words in a file', () => {
    const files = filesInMemory({ 'otters.txt': 'mud\npond\n' })
    expect(planOf(withGroups('{name: Otters, words: otters.txt}'), files).groups[0]?.words).toHaveLength(2)
  })

  it.each([
    ['▸{words: [mud]}', 'a group has no "name"'],
    ['▸Otters', 'expected a group, found "Otters"'],
    ['{name: ▸a/b}', '"a/b" cannot be a file\'s name'],
    ['{name: Otters, words: [▸m2]}', '"m2" has a digit in it'],
    ['{name: Otters, size: ▸big}', '"big" is no type size'],
    ['{name: Otters, font: ▸arial}', 'unknown font "arial"'],
  ])('%s is refused', (group, message) => {
    expect(toldAtMark(withGroups(group))).toEqual([`▸ ${message}`])
  })

  it('has a name of its own', () => {
    expect(problemsOf(withGroups('name: Sea Otters', 'name: sea-otters'))).toEqual([
      'week.yaml:5:11: error: the group "sea-otters" stands twice, on line 4 and on line 5',
    ])
  })
})
