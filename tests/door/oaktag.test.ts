import { spawnSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import * as door from 'oaktag'
import { describe, expect, it } from 'vitest'
import { installationFolder } from '../../src/installation.js'
import { answered } from '../commands/run-oaktag.js'
import { folderWith } from '../pipeline/plan-folder.js'
import { filesInMemory } from '../plan/reading.js'
import { openSheetsPage } from './page-of-sheets.js'

const week = `title: Along the marsh
words: [reed, marsh, gnat, wren, leaf, moth, frog, perch, otter]
marks:
  - {pattern: consonant-digraph, line: wavy}
print:
  - {layout: word-cards, across: 3, down: 3}
  - {layout: marked-list}
`

const printedOf = async (text: string) => {
  const plan = door.readPlan(text)
  if (!plan.ok) throw new Error(plan.problems.map(door.formatProblem).join('\n'))
  const settled = await door.settle(plan.value)
  if (!settled.ok) throw new Error(settled.problems.map(door.formatProblem).join('\n'))
  const printed = await door.draw(settled.value)
  if (!printed.ok) throw new Error(printed.problems.map(door.formatProblem).join('\n'))
  return printed.value
}

describe('the library', () => {
  it('studies words as the command does', async () => {
    const words = ['thread', 'marsh', 'blorf']
    const run = await answered(['study', ...words, '--json'], folderWith({}))
    expect(JSON.parse(JSON.stringify(door.study(words)))).toEqual(JSON.parse(run.out))
  })

  it('says what is no word', () => {
    expect(() => door.study(['reed', 'r2d2'])).toThrow(/r2d2/)
  })

  it('reads a plan from its text, with its problems as values', () => {
    const plan = door.readPlan(week.replace('wavy', 'wiggly'), { file: 'mine.yaml' })
    expect(plan.ok).toBe(false)
    expect(plan.problems.map(problem => problem.place)).toEqual([{ file: 'mine.yaml', line: 4, column: 40 }])
  })

  it('reads what a plan names through what it is given', () => {
    const text = week.replace(/words: .*/, 'words: list.txt')
    const plan = door.readPlan(text, { files: filesInMemory({ 'list.txt': 'heron\nnewt\n' }) })
    expect(plan.ok && plan.value.words.map(word => word.text)).toEqual(['heron', 'newt'])
  })

  it('gives sheets as plain data, and each as SVG, PNG and PDF', async () => {
    const { items } = await printedOf(week)
    const [cards] = items
    const sheet = cards!.sheets[0]!
    expect(JSON.parse(JSON.stringify(sheet))).toEqual(sheet)
    expect(door.toSvg(sheet)).toMatch(/^<svg[\s\S]*width="215.9mm"/)
    const png = await door.toPng(sheet, { dpi: 72 })
    expect(new TextDecoder('latin1').decode(png.subarray(1, 4))).toBe('PNG')
    const pdf = await door.toPdf(cards!.sheets, { title: 'Cards' })
    expect(new TextDecoder('latin1').decode(pdf.subarray(0, 5))).toBe('%PDF-')
  })

  it('makes the same files as the command, and draws the same sheets step by step', async () => {
    const folder = folderWith({ 'week.yaml': week })
    const made = await door.make({
      plan: join(folder, 'week.yaml'),
      out: join(folder, 'a'),
      formats: ['svg'],
    })
    const run = await answered(['make', 'week.yaml', '--out', 'b', '--format', 'svg', '--quiet'], folder)
    expect([made.ok, run.code]).toEqual([true, 0])
    const file = (out: string) => readFileSync(join(folder, out, 'week/word-cards/word-cards-01.svg'), 'utf8')
    expect(file('b')).toBe(file('a'))
    const { items } = await printedOf(week)
    expect(door.toSvg(items[0]!.sheets[0]!)).toBe(file('a'))
  })

  it('tells what a plan would take', async () => {
    const folder = folderWith({ 'week.yaml': week })
    const checked = await door.check({ plan: join(folder, 'week.yaml') })
    expect(checked.ok && [checked.value.sheetsOfCard, checked.value.pieces]).toEqual([1, 9])
  })

  it('remembers nothing between two calls that share no kept work', async () => {
    const [first, second] = [await printedOf(week), await printedOf(week)]
    expect(second.items[0]!.sheets[0]).not.toBe(first.items[0]!.sheets[0])
    expect(second).toEqual(first)
  })
})

describe('a page written with the library by a stranger', () => {
  it('shows the sheets of the text it is given, and keeps its work from text to text', async () => {
    const page = openSheetsPage(filesInMemory({}))
    const first = await page.show(week)
    expect(first.match(/<svg/g)!.length).toBeGreaterThan(2)
    expect(page.dealt()).toBe(1)
    const recoloured = await page.show(week.replace('line: wavy', 'line: wavy, color: "#00618a"'))
    expect(recoloured).toContain('#00618a')
    expect(page.dealt()).toBe(1)
  })

  it('shows what is wrong, with the line', async () => {
    const page = openSheetsPage(filesInMemory({}))
    expect(await page.show(week.replace('gnat', 'gn4t'))).toContain('week.yaml:2:')
  })
})

describe('the package', () => {
  it('is imported by its name, types and all', () => {
    const { exports } = JSON.parse(readFileSync(join(installationFolder, 'package.json'), 'utf8'))
    expect(readFileSync(join(installationFolder, exports['.'].types), 'utf8')).toContain('./door/make.js')
    const script = "import { study } from 'oaktag'; console.log(study(['reed'])[0].word)"
    const run = spawnSync(process.execPath, ['--input-type=module', '-e', script], {
      cwd: installationFolder,
      encoding: 'utf8',
    })
    expect(run.stdout).toBe('reed\n')
  })
})
