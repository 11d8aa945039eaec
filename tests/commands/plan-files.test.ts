import { describe, expect, it } from 'vitest'
import { checkCommand } from '../../src/commands/check.js'
import { inColour } from '../../src/commands/in-colour.js'
import { planFiles } from '../../src/commands/plan-files.js'
import { sortsCommand } from '../../src/commands/sorts.js'
import { STANDARD_INPUT } from '../../src/commands/standard-input.js'
import { studyCommand } from '../../src/commands/study.js'
import { folderWith } from '../pipeline/plan-folder.js'

const week = 'words: [reed, marsh, wren, knot]\nprint: [word-cards]\n'
const weeks = () =>
  folderWith({ 'week-1.yaml': week, 'week-2.yaml': `${week}sead: 3\n`, 'odd [1].yaml': week })
const input = (text: string) => ({ text: async () => text })
const named = (path: string) => path.replaceAll('\\', '/').split('/').at(-1)

describe('plans on the command line', () => {
  it('are found by a pattern that the shell left as it is, in the order of their names', async () => {
    const { paths, problems } = await planFiles([`${weeks()}/week-*.yaml`])
    expect([paths.map(named), problems]).toEqual([['week-1.yaml', 'week-2.yaml'], []])
  })

  it('are read once, however often they are named', async () => {
    const folder = weeks()
    const { paths } = await planFiles(['week-1.yaml', 'week-*.yaml'].map(name => `${folder}/${name}`))
    expect(paths.map(named).toSorted()).toEqual(['week-1.yaml', 'week-2.yaml'])
  })

  it('may be called like a pattern', async () => {
    expect((await planFiles([`${weeks()}/odd [1].yaml`])).paths.map(named)).toEqual(['odd [1].yaml'])
  })

  it('are a problem where a pattern finds none', async () => {
    const { paths, problems } = await planFiles([`${weeks()}/month-*.yaml`])
    expect([paths, problems.map(({ message }) => message)]).toEqual([
      [],
      ['no file is named like this pattern'],
    ])
  })
})

describe('a plan on standard input', () => {
  it('is checked, its problems told at their place', async () => {
    const good = await checkCommand({ plan: [STANDARD_INPUT], json: true }, input(week))
    expect(JSON.parse(good.output)).toMatchObject([{ plan: 'standard input', problems: [] }])
    const bad = await checkCommand({ plan: [STANDARD_INPUT], json: false }, input(`${week}sead: 3\n`))
    expect(bad.problems).toContain('standard input:3:1: error: unknown key "sead" in a plan')
  })

  it('is studied and sorted', async () => {
    const options = { word: [STANDARD_INPUT], why: false, json: true }
    const studied: readonly { word: string }[] = JSON.parse((await studyCommand(options, input(week))).output)
    expect(studied.map(({ word }) => word)).toEqual(['reed', 'marsh', 'wren', 'knot'])
    expect((await sortsCommand({ plan: STANDARD_INPUT, json: true }, input(week))).exitCode).toBe(0)
  })
})

describe('check of several plans', () => {
  const plans = () => [`${weeks()}/week-*.yaml`]

  it('gives a JSON value a plan, its problems in it', async () => {
    const { output, exitCode } = await checkCommand({ plan: plans(), json: true })
    const [first, second] = JSON.parse(output)
    expect(exitCode).toBe(1)
    expect([first.problems, first.pages > 0]).toEqual([[], true])
    expect(second.problems).toMatchObject([{ severity: 'error', line: 3, column: 1 }])
    expect(second.items).toBeUndefined()
  })

  it('prints problems alone where it is to be quiet', async () => {
    const { output, problems } = await checkCommand({ plan: plans(), json: false, quiet: true })
    expect([output, problems.split('\n').length]).toEqual(['', 2])
  })
})

describe('colour', () => {
  const problem = 'week.yaml:3:1: error: unknown key "sead" in a plan\n  Did you mean "seed"?'
  const terminal = { isTTY: true }

  it('stands out on a terminal', () => {
    expect(inColour(problem, terminal, {})).toContain('\u001B[')
  })

  it.each([
    ['no terminal', {}, {}],
    ['NO_COLOR', terminal, { NO_COLOR: '1' }],
    ['a terminal without colours', terminal, { TERM: 'dumb' }],
  ])('is left out with %s', (_what, stream, env) => {
    expect(inColour(problem, stream, env)).toBe(problem)
  })
})
