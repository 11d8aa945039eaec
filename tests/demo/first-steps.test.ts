import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { commandNames } from '../../src/commands/first-help.js'
import { installationFolder } from '../../src/installation.js'
import { planKeys, planNames, readPlan } from '../../src/oaktag.js'

const page = readFileSync(join(installationFolder, '.docs/first-steps.md'), 'utf8')
const code = [...page.matchAll(/`([^`\n]+)`/g)].map(([, text = '']) => text)

describe('the first steps', () => {
  it('name commands that there are', () => {
    const called = [...page.matchAll(/oaktag (?:-- )?([a-z]+) /g)].map(([, name = '']) => name)
    const commands = [...page.matchAll(/`oaktag ([a-z]+)/g), ...page.matchAll(/^ +oaktag ([a-z]+)/gm)]
    expect(called.length).toBeGreaterThan(4)
    expect(commands.map(([, name = '']) => name).filter(name => !commandNames.includes(name))).toEqual([])
  })

  it('name keys and layouts that there are', () => {
    const keys = new Set(planKeys().map(({ name }) => name))
    const named = code.flatMap(text => /^(?:- )?([a-z][a-z ]*):(?: |$)/.exec(text)?.[1] ?? [])
    expect(named.length).toBeGreaterThan(8)
    expect(named.filter(name => !keys.has(name))).toEqual([])
    expect(planNames().layouts.map(({ name }) => name)).toEqual(
      expect.arrayContaining(['calibration', 'bag-labels']),
    )
  })

  it('give lines of a plan that are read', () => {
    const items = ['flip: short edge', 'across: 2'].map(line => `  - layout: word-cards\n    ${line}\n`)
    const words = ['sounds: m ar sh', 'not: digraph-blend'].map(line => `    ${line}\n`).join('')
    const settings = ['paper: a4', 'printer: {back shift: "1.2 mm right, 0.8 mm down"}'].join('\n')
    for (const line of [
      'flip: short edge',
      'across: 2',
      'sounds: m ar sh',
      'not: digraph-blend',
      'paper: a4',
    ])
      expect(code).toContain(line)
    const plan = readPlan(
      `${settings}\nwords:\n  - word: marsh\n${words}print:\n  - layout: calibration\n${items.join('')}`,
    )
    expect(plan.problems).toEqual([])
  })

  it('are what the README leads to', () => {
    expect(readFileSync(join(installationFolder, 'README.md'), 'utf8')).toContain('(.docs/first-steps.md)')
  })
})
