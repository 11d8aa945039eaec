import { describe, expect, it } from 'vitest'
import { putPlanOnSheets } from '../../../src/pipeline.js'
import { filesInMemory } from '../../plan/reading.js'
import { sharedWork } from '../shared-work.js'

const messagesOf = async (text: string) => {
  const files = filesInMemory({ 'week.yaml': text })
  const made = await putPlanOnSheets({ planFile: 'week.yaml', files, kept: sharedWork })
  return made.problems.map(({ message, place }) => `${place.line ?? '-'}: ${message}`)
}

const week = `title: Along the marsh
class: Room 7
words:
  - {word: reed, clue: tall grass}
marks:
  - {letters: ee, label: long e, tag: e}
print:
  - {layout: word-cards}
groups:
  - {name: Otters}
`

describe('a character that the typeface lacks', () => {
  it.each([
    ['a clue', 'tall grass', '葦', 4],
    ['the title', 'Along the marsh', '沼', '-'],
    ['the class’s name', 'Room 7', '七組', '-'],
    ['a mark’s label', 'long e', 'エ', 6],
    ['a mark’s tag', 'tag: e', 'tag: エ', 6],
    ['a group’s name', 'Otters', '獺', 10],
  ])('is told in %s, where it stands', async (_, plain, strange, line) => {
    const text = strange.replace(/^tag: /, '')
    const [told] = await messagesOf(week.replace(plain, strange))
    expect(told).toMatch(new RegExp(`^${line}: the font Andika has no "`))
    expect(told).toMatch(new RegExp(`stands? in "${text}"`))
  })

  it('is not told where there is none', async () => {
    expect(await messagesOf(week)).toEqual([])
  })
})
