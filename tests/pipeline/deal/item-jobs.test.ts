import { describe, expect, it } from 'vitest'
import { chooseJobs, itemJobs } from '../../../src/pipeline/deal/item-jobs.js'
import { studyPlanFile } from '../../../src/pipeline.js'
import { folderWith } from '../plan-folder.js'

const plan = (items: string) => {
  const folder = folderWith({
    'week.yaml': `words: [reed, marsh, frog]
print:
${items}
groups:
  - name: Otters
    words: [reed, pond]
    size: large
  - name: Terns
`,
  })
  const read = studyPlanFile({ planFile: `${folder}/week.yaml` })
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.value.plan
}
const namesAndWords = (items: string) =>
  itemJobs(plan(items)).jobs.map(job => `${job.name}: ${job.words.map(word => word.text).join(' ')}`)

describe('items for the class and its groups', () => {
  it('are made for the class and every group, each with its own words', () => {
    expect(namesAndWords('  - layout: word-cards')).toEqual([
      'word-cards: reed marsh frog',
      'word-cards-otters: reed pond',
      'word-cards-terns: reed marsh frog',
    ])
  })

  it('are made for the groups named alone', () => {
    expect(namesAndWords('  - {layout: word-cards, groups: [Otters]}')).toEqual([
      'word-cards-otters: reed pond',
    ])
  })

  it('are made for the class alone where no group is named', () => {
    expect(namesAndWords('  - {layout: word-cards, groups: none}')).toEqual(['word-cards: reed marsh frog'])
  })

  it('keep to the words that the item names, and are left out with a warning where none is left', () => {
    const { jobs, problems } = itemJobs(plan('  - {layout: word-cards, words: [frog]}'))
    expect(jobs.map(job => job.name)).toEqual(['word-cards', 'word-cards-terns'])
    expect(problems).toMatchObject([{ severity: 'warning', place: { line: 3 } }])
  })
})

describe('--only', () => {
  const items = '  - layout: word-cards\n  - {layout: open-sort, name: find the rule}'

  it('takes an item for the class and all its groups', () => {
    const chosen = chooseJobs(plan(items), ['word cards'])
    expect(chosen.ok && chosen.value.wanted.map(job => job.name)).toEqual([
      'word-cards',
      'word-cards-otters',
      'word-cards-terns',
    ])
  })

  it('takes one group’s item by its own name', () => {
    const chosen = chooseJobs(plan(items), ['word-cards-otters'])
    expect(chosen.ok && chosen.value.wanted.map(job => job.name)).toEqual(['word-cards-otters'])
  })

  it('refuses a name that the plan does not print, and names the nearest', () => {
    const chosen = chooseJobs(plan(items), ['wordcard'])
    expect(chosen.ok).toBe(false)
    expect(chosen.problems[0]!.advice).toContain('Did you mean "word-cards"?')
  })
})
