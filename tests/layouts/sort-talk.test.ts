import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { putPlanOnSheets } from '../../src/pipeline.js'
import { rankSorts } from '../../src/sets/sorts/rank-sorts.js'
import { folderWith } from '../pipeline/plan-folder.js'
import { wordsOfAWeek } from '../sets/sorts/words-of-a-week.js'
import { linesOn, printItem } from './print-item.js'

const week = 'rain, sail, trail, hay, clay, spray, lake, gate, wave, said'
const plan = `title: Marsh week\nwords: [${week}]\nprint:\n`
const linesOf = async (item: string) => linesOn(await printItem(item, plan), 'answers').join('\n')

describe('the page of an open sort', () => {
  it('tells every sort that holds, each with its talk', async () => {
    const told = await linesOf('{layout: open-sort}')
    const names = rankSorts(wordsOfAWeek(week)).map(({ name }, index) => `${index + 1}. ${name}`)
    expect(names.length).toBeGreaterThan(4)
    for (const name of names) expect(told.toLowerCase()).toContain(name.toLowerCase())
    expect(told.match(/To talk over:/g)).toHaveLength(names.length)
  })
})

describe.each(['closed-sort', 'blind-sort'])('the page of a %s', layout => {
  it('asks for the rule and tells it', async () => {
    const told = await linesOf(`{layout: ${layout}}`)
    expect(told).toContain('Where in the word does each stand?')
    expect(told.replaceAll('\n', ' ')).toContain(
      'a_e: round a consonant; ai: inside the word; ay: at the end',
    )
  })

  it('asks where other words would go', async () => {
    expect(await linesOf(`{layout: ${layout}}`)).toMatch(/Where would \w+, \w+ and \w+ go\?/)
  })
})

describe('words to lay, too', () => {
  it('are such as the class can read, where its class file says what is taught', async () => {
    const folder = folderWith({
      'plan.yaml': `${plan.replace('words:', 'class file: class.yaml\nwords:')}  - {layout: open-sort}\n`,
      'class.yaml': 'taught: [ai, a_e]\n',
    })
    const drawn = await putPlanOnSheets({ planFile: join(folder, 'plan.yaml') })
    const told = drawn.ok ? linesOn(drawn.value.items[0]!.printed, 'answers').join(' ') : ''
    const [asked = ''] = told.match(/Where would \w+ and \w+ go\?/) ?? []
    expect(asked).toMatch(/ai/)
    expect(asked).not.toMatch(/ay/)
  })
})
