import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join, relative } from 'node:path'
import { describe, expect, it } from 'vitest'
import { keepWork } from '../../src/pipeline/kept-work.js'
import { makePlan } from '../../src/pipeline.js'
import { folderWith, marshPlan } from './plan-folder.js'
import { sharedWork } from './shared-work.js'

const make = (folder: string, more: Partial<Parameters<typeof makePlan>[0]> = {}) =>
  makePlan({
    planFile: join(folder, 'marsh.yaml'),
    outFolder: join(folder, 'out'),
    formats: ['svg', 'png'],
    dpi: 100,
    kept: sharedWork,
    ...more,
  })

/** Every file below the folder with its bytes. */
function contentsOf(folder: string): ReadonlyMap<string, string> {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter(entry => entry.isFile())
  return new Map(
    files
      .map(file => join(file.parentPath, file.name))
      .map(path => [relative(folder, path), readFileSync(path).toString('base64')]),
  )
}

const items = `  - {layout: word-cards, back: answer}
  - {layout: bingo, grid: 3x3, boards: 4}
  - layout: marked-list
`

describe('make', () => {
  it('writes every sheet, the manifest and the page, and nothing else; the same bytes again, whether with one job or two', async () => {
    const folder = folderWith({ 'marsh.yaml': `${marshPlan}${items}` })
    const runs = []
    for (const [index, jobs] of [1, 2].entries()) {
      const outFolder = join(folder, `out-${index}`)
      const made = await make(folder, {
        outFolder,
        jobs,
        formats: ['svg', 'png', 'pdf'],
        kept: keepWork(),
      })
      expect([made.ok, made.problems]).toEqual([true, []])
      expect(readdirSync(outFolder)).toEqual(['marsh'])
      runs.push(contentsOf(join(outFolder, 'marsh')))
    }
    const manifest = JSON.parse(readFileSync(join(folder, 'out-0/marsh/manifest.json'), 'utf8'))
    const named = manifest.items.flatMap((item: { pdf: string; pages: { svg: string; png: string }[] }) => [
      item.pdf,
      ...item.pages.flatMap(page => [page.svg, page.png]),
    ])
    const pdfs = [manifest.pdf, ...manifest.prints.map(({ pdf }: { pdf: string }) => pdf)]
    expect([...runs[0]!.keys()].sort()).toEqual([...named, ...pdfs, 'index.html', 'manifest.json'].sort())
    expect(runs[1]).toEqual(runs[0])
  })

  it('tells a problem of an item once, for however many groups it is printed', async () => {
    const plan = `${marshPlan}  - {layout: word-cards, margin: 2}\ngroups: [{name: Otters}, {name: Terns}]\n`
    const made = await make(folderWith({ 'marsh.yaml': plan }), { formats: ['svg'] })
    expect(made.problems.map(problem => problem.message)).toEqual([
      'a margin of 2 mm is narrower than most office printers can reach',
    ])
  })

  it('says on an item how its backs are printed', async () => {
    const plan = `${marshPlan}  - {layout: word-cards, back: pattern}\nprinter: {passes: two, pile: last sheet first}\n`
    const made = await make(folderWith({ 'marsh.yaml': plan }), { formats: ['svg'] })
    const [item] = made.ok ? made.value.manifest.items : []
    expect(item!.notes[0]).toBe(
      'Fed twice by hand: print page 1, turn it over on the long edge, put it back, then print page 2 on the backs. Try it with one sheet of plain paper first.',
    )
  })

  it('deals other boards for another seed', async () => {
    const folder = folderWith({ 'marsh.yaml': `${marshPlan}${items}` })
    const cells = async (seed: number) => {
      const made = await make(folder, { seed, formats: ['svg'], only: ['bingo'] })
      return (
        made.ok && made.value.manifest.items.find(item => item.name === 'bingo')!.pages[0]!.pieces[0]!.cells
      )
    }
    expect(await cells(1)).not.toEqual(await cells(2))
  })

  it('leaves the other items as they are with --only', async () => {
    const folder = folderWith({ 'marsh.yaml': `${marshPlan}${items}` })
    await make(folder, { formats: ['svg'] })
    const before = contentsOf(join(folder, 'out/marsh'))
    writeFileSync(
      join(folder, 'marsh.yaml'),
      `${marshPlan.replace('Along the marsh', 'By the marsh')}${items}`,
    )
    await make(folder, { formats: ['svg'], only: ['bingo'] })
    const after = contentsOf(join(folder, 'out/marsh'))
    expect(after.get('word-cards/word-cards-01.svg')).toBe(before.get('word-cards/word-cards-01.svg'))
    expect(after.get('bingo/bingo-01.svg')).not.toBe(before.get('bingo/bingo-01.svg'))
  })

  it('leaves the last good set as it was where a plan has a problem', async () => {
    const folder = folderWith({ 'marsh.yaml': `${marshPlan}${items}` })
    await make(folder, { formats: ['svg'] })
    const before = contentsOf(join(folder, 'out'))
    writeFileSync(join(folder, 'marsh.yaml'), `${marshPlan}  - {layout: bingo, grid: 5x5}\n`)
    const made = await make(folder, { formats: ['svg'] })
    expect(made.ok).toBe(false)
    expect(contentsOf(join(folder, 'out'))).toEqual(before)
  })

  it('writes nothing where a first plan has a problem', async () => {
    const folder = folderWith({ 'marsh.yaml': `${marshPlan}  - {layout: bingo, grid: 5x5}\n` })
    expect((await make(folder)).ok).toBe(false)
    expect(existsSync(join(folder, 'out'))).toBe(false)
  })

  it('tells of a card too small for its longest word, with the item’s line and what would fit', async () => {
    const folder = folderWith({
      'marsh.yaml': `${marshPlan.replace('perch]', 'dragonflies]')}  - {layout: word-cards, across: 8, down: 10}\n`,
    })
    const made = await make(folder)
    expect(made.ok).toBe(false)
    expect(made.problems[0]).toMatchObject({ severity: 'error', place: { line: 12 } })
    expect(made.problems[0]!.message).toContain('"dragonflies"')
  })

  it('tells of too few words for the grid asked, with what would do', async () => {
    const folder = folderWith({ 'marsh.yaml': `${marshPlan}  - {layout: bingo, grid: 5x5}\n` })
    const { problems } = await make(folder)
    expect(problems[0]).toMatchObject({ severity: 'error', place: { line: 12 } })
    expect(problems[0]!.message).toMatch(/24 words.*12/)
  })

  it('tells of the problems of every item in one go', async () => {
    const folder = folderWith({
      'marsh.yaml': `${marshPlan}  - {layout: bingo, grid: 5x5}\n  - {layout: word-cards, size: 200 pt}\n`,
    })
    const { problems } = await make(folder)
    expect(problems.map(problem => problem.place.line)).toEqual([12, 13])
  })

  it('tells what a grid lacks in one go with what is wrong in the text, and counts a misspelt word as one', async () => {
    const folder = folderWith({
      'marsh.yaml': `words: [reed, "two words", marsh, fr0g, pond, mud, wren, moth]
marks: [{pattern: digraff}]
print:
  - {layout: bingo, grid: 3x3}
  - {layout: bingo, grid: 5x5, name: large}
`,
    })
    const { problems } = await make(folder)
    expect(problems.map(problem => problem.place.line)).toEqual([1, 1, 2, 5])
    expect(problems.at(-1)!.message).toContain('there are 8')
  })

  it('gives a group of few words smaller boards, and none at all to three words, with a warning', async () => {
    const groups = (words: string) => `groups:\n  - {name: Otters, words: [${words}]}\n`
    const plan = `${marshPlan.replace('perch]', 'perch, duck]')}  - {layout: bingo, grid: 3x4, boards: 2}\n`
    const folder = folderWith({ 'marsh.yaml': `${plan}${groups('mud, pond, frog, duck, nest')}` })
    const five = await make(folder, { formats: ['svg'] })
    expect(five.problems).toMatchObject([{ severity: 'warning', message: expect.stringContaining('2x2') }])
    writeFileSync(join(folder, 'marsh.yaml'), `${plan}${groups('mud, pond, frog')}`)
    const three = await make(folder, { formats: ['svg'] })
    expect(three.problems).toMatchObject([
      { severity: 'warning', message: expect.stringContaining('nothing is made for Otters') },
    ])
    expect(three.ok && three.value.manifest.items.map(item => item.name)).toEqual(['bingo'])
  })

  it('tells of a folder that cannot be made', async () => {
    const folder = folderWith({ 'marsh.yaml': `${marshPlan}${items}`, out: 'mine' })
    const made = await make(folder, { outFolder: join(folder, 'out/below') })
    expect(made.problems[0]).toMatchObject({ severity: 'error' })
  })

  it('tells of an output folder that is a file', async () => {
    const folder = folderWith({ 'marsh.yaml': `${marshPlan}${items}`, out: 'mine' })
    const made = await make(folder)
    expect(made.ok).toBe(false)
    expect(readFileSync(join(folder, 'out'), 'utf8')).toBe('mine')
  })

  it('refuses a font that lacks a character, naming word and character', async () => {
    const folder = folderWith({
      'marsh.yaml': `${marshPlan.replace('title: Along', 'title: ∰ Along')}${items}`,
    })
    const { problems } = await make(folder)
    expect(problems[0]!.message).toContain('"∰"')
  })
})
