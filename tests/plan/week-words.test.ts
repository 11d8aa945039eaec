import { describe, expect, it } from 'vitest'
import { filesInMemory, planOf, problemsOf } from './reading.js'

const files = filesInMemory({
  'week-1.yaml': [
    'words: [marsh, heron, stream]',
    'print: [key]',
    'groups:',
    '  - {name: Otters, words: [mud, pond, fish]}',
    '  - {name: Terns, more words: [cliff]}',
  ].join('\n'),
  'otters.txt': 'frog\ncrab\n',
})

/** The words of the class and of its groups in a plan with these groups. */
const wordsWith = (...groups: string[]) => {
  const text = `words: [reed, leaf, seed]\nreview: week-1.yaml\nprint: [key]\ngroups:\n${groups.map(group => `  - ${group}\n`).join('')}`
  const plan = planOf(text, files)
  return [plan, ...plan.groups].map(({ words }) => words.map(word => word.text).join(' '))
}

describe('old words', () => {
  it('come to a group that shares the class’s words with these', () => {
    expect(wordsWith('name: Otters')).toEqual(['reed leaf seed marsh', ''])
    expect(wordsWith('{name: Otters, more words: [frog]}')[1]).toBe('reed leaf seed marsh frog')
  })

  it('of a group with words of its own are those that the group of its name had', () => {
    expect(wordsWith('{name: otters, words: [frog, crab, duck]}')[1]).toBe('frog crab duck mud')
    expect(
      wordsWith(
        '{name: Terns, words: [frog, crab, duck, gull, hawk, swan, crow, wren, dove, jay, owl, kite]}',
      )[1],
    ).toMatch(/kite marsh stream heron cliff$/)
  })

  it('are none for a group with words of its own that no earlier plan knows, and that is said', () => {
    const text =
      'words: [reed, leaf, seed]\nreview: week-1.yaml\nprint: [key]\ngroups: [{name: Rooks, words: [frog]}]\n'
    expect(problemsOf(text, files)).toEqual([
      'week.yaml:2:9: warning: no word of the group Rooks can come back this week, of the 1 that a share of 1/4 comes to',
    ])
    expect(wordsWith('{name: Rooks, words: [frog], review: no}')[1]).toBe('frog')
  })

  it('of a group that names weeks itself are of these, in place of the class’s', () => {
    expect(wordsWith('{name: Rooks, words: [duck], review: otters.txt}')[1]).toBe('duck frog')
    expect(wordsWith('{name: Rooks, review: otters.txt}')[1]).toBe('reed leaf seed frog')
    expect(wordsWith('{name: Rooks, review: no}')[1]).toBe('reed leaf seed')
    expect(wordsWith('{name: Otters, words: [duck, frog], review: {share: 1/2}}')[1]).toBe(
      'duck frog mud fish',
    )
  })

  it('that are on a group’s own list are its own', () => {
    const text =
      'words: [reed, leaf, seed]\nreview: week-1.yaml\nprint: [key]\ngroups: [{name: Rooks, words: [marsh], review: no}]\n'
    expect(planOf(text, files).groups[0]?.words[0]).not.toHaveProperty('cameBack')
  })
})
