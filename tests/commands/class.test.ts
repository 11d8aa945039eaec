import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { classCommand } from '../../src/commands/class.js'
import { folderWith } from '../pipeline/plan-folder.js'

const week = (words: string, more = '') =>
  `class file: room-7.yaml\nwords: [${words}]\nprint: [word-cards]\n${more}`
const files = {
  'room-7.yaml':
    'taught: [short-vowel]\nreview: yes\nweeks:\n  - {plan: week-1.yaml, taught: sh}\n  - week-2.yaml\n  - {plan: week-3.yaml, taught: ee}\n',
  'week-1.yaml': week('ship, shop, fish'),
  'week-2.yaml': week('cat, hen, pig', 'groups: [{name: Otters, words: [sun, map]}]\n'),
  'week-3.yaml': week('reed, frog, rain', 'groups: [{name: Otters, words: [seed]}]\n'),
}

/** What the command prints of a file in a folder with these files, without the folder. */
async function told(
  file: string,
  { more = {}, ...options }: { more?: Readonly<Record<string, string>>; week?: number; json?: boolean } = {},
) {
  const folder = folderWith({ ...files, ...more })
  const { output, problems, exitCode } = await classCommand({
    file: join(folder, file),
    json: false,
    ...options,
  })
  const plain = (text: string) => text.replaceAll(`${folder}/`, '').replaceAll(folder, '')
  return { output: plain(output), problems: plain(problems), exitCode }
}

describe('oaktag class', () => {
  it('tells the weeks in short and the last in full', async () => {
    expect((await told('room-7.yaml')).output.split('\n')).toEqual([
      'room-7.yaml: 3 weeks',
      'Taught before week 1: short-vowel',
      '',
      'week  plan         words  newly taught',
      '   1  week-1.yaml      3  sh',
      '   2  week-2.yaml      3',
      '   3  week-3.yaml      3  ee',
      '',
      'Week 3, week-3.yaml',
      '  Back for review:',
      '    week-2, last week: cat',
      '    week-2, last week, for Otters: sun',
      '  Why now: a list comes back after 1, 3 and 7 weeks, then every 4 weeks.',
      '  Not met so far, and shown by its own words:',
      '    beginning-blend: frog (fr)',
      '    vowel-team: rain (ai)',
    ])
  })

  it('tells another week where one is asked for, or the week of a plan', async () => {
    const second = await told('room-7.yaml', { week: 2 })
    expect(second.output).toMatch(/Week 2, week-2\.yaml\n {2}Back for review:\n {4}week-1, last week: ship/)
    expect((await told('week-2.yaml')).output).toBe(second.output)
    expect((await told('room-7.yaml', { week: 1 })).output).toContain(
      'No words can come back in the first week.',
    )
  })

  it('tells what is due where the plans do not ask for it', async () => {
    const more = { 'room-7.yaml': 'weeks: [week-1.yaml, week-2.yaml]\n' }
    const { output } = await told('room-7.yaml', { more })
    expect(output).toMatch(/Due, but not in the plan .*\n {4}week-1, last week: ship/)
    expect(output).toContain('What the class has met is not known')
  })

  it('as JSON tells every week in full', async () => {
    const { weeks } = JSON.parse((await told('room-7.yaml', { json: true })).output)
    expect(weeks.map((each: { due: readonly unknown[] }) => each.due.length)).toEqual([0, 1, 2])
    expect(weeks[2]).toMatchObject({
      week: 3,
      plan: 'week-3.yaml',
      words: ['reed', 'frog', 'rain'],
      taught: ['ee'],
      inPlan: true,
      due: [
        { word: 'cat', from: 'week-2', weeksAgo: 1, group: null },
        { word: 'sun', group: 'Otters' },
      ],
      notMet: [{ pattern: 'beginning-blend', words: [{ word: 'frog', letters: 'fr' }] }, {}],
    })
  })

  it('fits a terminal of 80 columns', async () => {
    const taught = 'short-vowel, consonant-digraph, vowel-team, beginning-blend, ending-blend, silent-letters'
    const more = { 'room-7.yaml': `weeks:\n  - {plan: week-1.yaml, taught: [${taught}]}\n  - week-3.yaml\n` }
    const { output } = await told('room-7.yaml', { more })
    expect(output.split('\n').filter(line => line.length > 80)).toEqual([])
    expect(output).toContain(taught.slice(-14))
  })

  it.each([
    ['nothing.yaml', {}, 'nothing.yaml: error: the class file "nothing.yaml" is not there'],
    ['alone.yaml', {}, 'alone.yaml: error: this is a plan, not a class file'],
    ['room-7.yaml', { week: 9 }, 'room-7.yaml: error: the class file has no week 9'],
  ])('%s %j is refused', async (file, options, problem) => {
    const more = { 'alone.yaml': 'words: [reed]\nprint: [key]\n' }
    const { exitCode, problems } = await told(file, { more, ...options })
    expect([exitCode, problems.split('\n')[0]]).toEqual([1, problem])
  })

  it('says what is wrong in a week, and tells the rest', async () => {
    const more = { 'week-3.yaml': week('reed', 'prnt: []\n') }
    const { exitCode, output, problems } = await told('room-7.yaml', { more })
    expect([exitCode, problems.split('\n')[0]]).toEqual([
      1,
      'week-3.yaml:4:1: error: unknown key "prnt" in a plan',
    ])
    expect(output).toContain('   3  week-3.yaml      1  ee')
  })

  it('has nothing to tell of a class file without weeks but what is taught', async () => {
    const more = { 'room-7.yaml': 'taught: [sh]\n' }
    expect((await told('room-7.yaml', { more })).output).toBe(
      'room-7.yaml has no weeks yet: write weeks: and under it the plans of its weeks.\nTaught before week 1: sh',
    )
  })

  it.each([{}, { file: 'room-7.yaml', week: 0 }, { file: 'room-7.yaml', week: 1.5 }])(
    '%j is wrong usage',
    async options => {
      expect((await classCommand({ json: false, ...options })).exitCode).toBe(2)
    },
  )
})
