import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { sortsOfList, sortsOfPlan } from '../../src/door/sorts.js'

const folder = mkdtempSync(join(tmpdir(), 'oaktag-sorts-'))
afterAll(() => rmSync(folder, { recursive: true }))

function written(name: string, text: string): string {
  writeFileSync(join(folder, name), text)
  return join(folder, name)
}

async function sortsIn(words: string) {
  const sorts = await sortsOfList(written('words.txt', words.replaceAll(', ', '\n')))
  if (!sorts.ok) throw new Error('no sorts')
  return sorts.value
}

describe('the sorts of a list', () => {
  it('advise on a lop-sided one, with words as hard as its own', async () => {
    const [first] = await sortsIn('crab, cup, cave, corn, cloud, camp, city, cell')
    expect(first!.name).toBe('hard and soft c')
    const [{ column, words }] = first!.advice!.add as [{ column: string; words: readonly string[] }]
    expect(column).toBe('soft c')
    expect(words.length).toBeGreaterThanOrEqual(2)
    expect(words.length).toBeLessThanOrEqual(3)
    const again = await sortsIn(`crab, cup, cave, corn, cloud, camp, city, cell, ${words.join(', ')}`)
    expect(again[0]!.score).toBeGreaterThan(first!.score)
    expect(again[0]!.columns[1]!.words).toEqual(expect.arrayContaining([...words]))
  })

  it('name the word that spoils one', async () => {
    const [first] = await sortsIn('crab, cup, cave, city, cell, ice, pond')
    expect(first!.advice!.says).toBe('Take pond out: it has no c that is hard or soft.')
  })

  it('are none, and a warning tells which words would make one, where nothing divides the words', async () => {
    const path = written('words.txt', 'rain\nsail\ntrail\nhay')
    const sorts = await sortsOfList(path)
    expect(sorts.ok && sorts.value).toEqual([])
    expect(sorts.problems).toMatchObject([
      { place: { file: path }, severity: 'warning', message: 'these words support no sort yet' },
    ])
    const [, first, second] = sorts.problems[0]!.advice.match(/Add (\w+) and (\w+) to ay/)!
    const [made] = await sortsIn(`rain, sail, trail, hay, ${first}, ${second}`)
    expect(made!.name).toBe('spellings of /EY/ as in day')
  })

  it('are those of capital and small letters alike', async () => {
    const [first] = await sortsIn('Queen, Street, sheep, Beach, team, East')
    expect(first!.columns.map(({ title }) => title)).toEqual(['ea', 'ee'])
  })
})

describe('the sorts of a plan', () => {
  const words =
    'words: [chin, fish, chip, dish, rich, wish, shin, inch, pond, nest, lamp, sand]\nprint: [word-cards]\n'
  const sortsWith = async (marks: string) => {
    const sorts = await sortsOfPlan(written('plan.yaml', `${marks}${words}`))
    if (!sorts.ok) throw new Error('no sorts')
    return sorts.value
  }

  it('are raised where they are about what it marks', async () => {
    const name = 'which consonant digraph'
    const scoreWith = async (marks: string) =>
      (await sortsWith(marks)).find(sort => sort.name === name)!.score
    expect(await scoreWith('marks: [{pattern: consonant-digraph}]\n')).toBeGreaterThan(await scoreWith(''))
  })

  it('rank parts of speech among the others where it marks them', async () => {
    const mixed = 'words: [river, candle, mouse, bring, decide, shiver]\nprint: [word-cards]\n'
    const sorts = await sortsOfPlan(written('parts.yaml', `marks: [{part of speech: noun}]\n${mixed}`))
    if (!sorts.ok) throw new Error('no sorts')
    const part = sorts.value.find(({ name }) => name === 'part of speech')
    expect(part!.score).toBeGreaterThan(0.4)
    expect(part!.standing).toContain('raised because the plan marks it')
  })

  it('are none where it cannot be read, and the problem is told', async () => {
    const sorts = await sortsOfPlan(join(folder, 'none.yaml'))
    expect(sorts.ok).toBe(false)
    expect(sorts.problems).toHaveLength(1)
  })
})
