import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { checkCommand } from '../../../src/commands/check.js'
import { makeCommand } from '../../../src/commands/make.js'
import { check } from '../../../src/door/make.js'
import { readPlan } from '../../../src/door/plans.js'
import { study } from '../../../src/door/words.js'
import { folderWith } from '../plan-folder.js'

const week = 'words: [reed, leaf]\nprint: [{layout: word-cards, cover: no}]\n'
const inFolder = (text: string, more: Readonly<Record<string, string>> = {}) =>
  join(folderWith({ 'week.yaml': text, ...more }), 'week.yaml')

async function proposed(text: string, more?: Readonly<Record<string, string>>) {
  const checked = await check({ plan: inFolder(text, more) })
  if (!checked.ok) throw new Error('no report')
  const { proposed: groups = [] } = checked.value
  return { groups, problems: checked.problems.map(({ message }) => message) }
}

describe('the lists that spread: proposes', () => {
  it('all show the pattern, and go from short words to long', async () => {
    const { groups } = await proposed(`${week}spread: {pattern: vowel-team, words: 6}\n`)
    expect(groups.map(({ words }) => words.length)).toEqual([6, 6, 6])
    const words = groups.flatMap(group => group.words.map(({ text }) => text))
    expect(new Set(words).size).toBe(18)
    const shows = study(words).map(({ patterns }) => patterns.some(({ pattern }) => pattern === 'vowel-team'))
    expect(shows).not.toContain(false)
    const [short, , long] = groups.map(group =>
      group.words.reduce((sum, { soundCount }) => sum + soundCount, 0),
    )
    expect(short).toBeLessThan(long!)
  })

  it('have the names of the groups where there are as many', async () => {
    const groups = 'groups: [{name: Otters}, {name: Terns}, {name: Herons}]\n'
    const names = (await proposed(`${week}${groups}spread: vowel-team\n`)).groups.map(({ name }) => name)
    expect(names).toEqual(['Otters', 'Terns', 'Herons'])
    expect((await proposed(`${week}spread: vowel-team\n`)).groups[0]?.name).toBe('group 1')
  })

  it('hold only what the class has been taught, where the class file says it', async () => {
    const text = `class file: room.yaml\n${week}spread: {pattern: vowel-team, lists: 2, words: 5}\n`
    const { groups } = await proposed(text, { 'room.yaml': 'taught: [short-vowel]\n' })
    const words = study(groups.flatMap(group => group.words.map(({ text }) => text)))
    expect(words.flatMap(({ patterns }) => patterns.map(({ pattern }) => pattern))).not.toContain(
      'beginning-blend',
    )
  })

  it('are short, or none, where too few words show it, and that is said', async () => {
    const taught = { 'room.yaml': 'taught: [m]\n' }
    const wish = (pattern: string) =>
      `class file: room.yaml\n${week}spread: {pattern: ${pattern}, lists: 6}\n`
    const short = await proposed(wish('trigraph'), taught)
    expect(short.groups).toHaveLength(6)
    expect(short.problems).toEqual([
      expect.stringMatching(/^too few familiar words show trigraph for 6 lists of 8: there are \d+$/),
    ])
    const none = await proposed(wish('consonant-le'), taught)
    expect([none.groups, none.problems.length]).toEqual([[], 1])
  })

  it('are printed as groups that a plan takes, and nothing is made of them', async () => {
    const plan = inFolder(`${week}spread: vowel-team\n`)
    const { output } = await checkCommand({ plan: [plan], json: false })
    const text = `words: [reed]\nprint: [key]\n${output.slice(output.indexOf('groups:\n'))}\n`
    const read = readPlan(text)
    expect(read.ok && read.value.groups.map(({ words }) => words.length)).toEqual([8, 8, 8])
    const told = output.slice(output.indexOf('Lists for groups'))
    expect(told.split('\n').filter(line => line.length > 80)).toEqual([])
    const made = await makeCommand({ plan: [plan], out: `${plan}-out`, dpi: 72, format: 'svg' })
    expect(made.output).toMatch(/ {2}word-cards {2}1 page, 2 pieces\n[\s\S]*nothing is made of them/)
  })
})
