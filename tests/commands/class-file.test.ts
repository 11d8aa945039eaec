import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { checkCommand } from '../../src/commands/check.js'
import { makeCommand } from '../../src/commands/make.js'
import { folderWith } from '../pipeline/plan-folder.js'

const week = (words: string) =>
  `class file: room-7.yaml\nwords: [${words}]\nprint: [{layout: word-cards, cover: no}]\n`
const room = {
  'room-7.yaml': 'review: yes\nweeks: [week-1.yaml, week-2.yaml, week-3.yaml]\n',
  'week-1.yaml': week('reed, marsh, wren'),
  'week-2.yaml': week('gnat, kn0t, leaf'),
  'week-3.yaml': 'words: [moth]\nreview: no\nprint: [{layout: word-cards, cover: no}]\n',
}
const make = (plan: string, out: string) =>
  makeCommand({ plan: [plan], out, dpi: 72, format: 'svg', quiet: true })

/** Every file under a folder, by its path there. */
function filesIn(folder: string): ReadonlyMap<string, string> {
  const paths = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  const files = paths.filter(path => /\.\w+$/.test(path)).toSorted()
  return new Map(files.map(path => [path, readFileSync(join(folder, path), 'utf8')]))
}

describe('a class file on the command line', () => {
  it('makes the plan of each week in a folder of its own, the same as the plan alone', async () => {
    const folder = folderWith({ ...room, 'week-2.yaml': week('gnat, knot, leaf') })
    const [both, alone] = [join(folder, 'both'), join(folder, 'alone')]
    const made = await make(join(folder, 'room-7.yaml'), both)
    expect(made.exitCode).toBe(0)
    expect(readdirSync(both).toSorted()).toEqual(['week-1', 'week-2', 'week-3'])
    await make(join(folder, 'week-2.yaml'), alone)
    const files = filesIn(join(both, 'week-2'))
    expect(files).toEqual(filesIn(join(alone, 'week-2')))
    expect(files.get('manifest.json')).toContain('"reed"')
  })

  it('tells the problems of a plan, and makes the others', async () => {
    const folder = folderWith(room)
    const out = join(folder, 'out')
    const made = await make(join(folder, 'room-7.yaml'), out)
    expect(made.exitCode).toBe(1)
    expect(readdirSync(out).toSorted()).toEqual(['week-1', 'week-3'])
    expect(made.problems).toMatch(/week-2\.yaml:2:15: error: "kn0t" has a digit in it/)
    expect(made.problems).toMatch(/room-7\.yaml:2:35: warning: the plan "week-3\.yaml" does not name this/)
  })

  it('is checked week by week', async () => {
    const checked = await checkCommand({ plan: [join(folderWith(room), 'room-7.yaml')], json: true })
    const reports: readonly { readonly plan: string; readonly problems: readonly unknown[] }[] = JSON.parse(
      checked.output,
    )
    expect(checked.exitCode).toBe(1)
    expect(reports.map(({ plan, problems }) => [plan.slice(-11), problems.length])).toEqual([
      ['week-1.yaml', 0],
      ['week-2.yaml', 1],
      ['week-3.yaml', 0],
    ])
  })

  it('with a problem of its own makes nothing', async () => {
    const folder = folderWith({ ...room, 'room-7.yaml': 'weeks: [week-1.yaml, week-1.yaml]\n' })
    const made = await make(join(folder, 'room-7.yaml'), join(folder, 'out'))
    expect(made.exitCode).toBe(1)
    expect(readdirSync(folder)).not.toContain('out')
  })
})
