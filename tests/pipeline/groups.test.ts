import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { putPlanOnSheets } from '../../src/pipeline.js'
import { formatProblem } from '../../src/problems.js'
import { folderWith } from './plan-folder.js'
import { sharedWork } from './shared-work.js'

async function made(plan: string) {
  const folder = folderWith({ 'week.yaml': plan })
  return putPlanOnSheets({ planFile: join(folder, 'week.yaml'), kept: sharedWork })
}

async function printed(plan: string) {
  const outcome = await made(plan)
  if (!outcome.ok) throw new Error(outcome.problems.map(formatProblem).join('\n'))
  return outcome.value.items.map(({ printed: item }) => ({
    name: item.name,
    words: item.sheets.flatMap(sheet =>
      sheet.side === 'front' && sheet.kind === 'pieces' ? sheet.pieces.map(({ piece }) => piece.text[0]) : [],
    ),
    marked: item.sheets.flatMap(sheet =>
      sheet.pieces.flatMap(({ piece }) => piece.marks.map(mark => mark.letters)),
    ),
    problems: outcome.problems.map(({ message }) => message),
  }))
}

async function problemsIn(plan: string): Promise<string> {
  const { problems } = await made(plan)
  return problems.map(({ message, advice }) => `${message}\n${advice}`).join('\n')
}

describe('a plan for groups alone', () => {
  const alone = `title: Along the marsh
groups:
  - {name: Otters, words: [mud, frog]}
  - {name: Herons, words: [thrush, stream, frog]}
print:
  - {layout: word-cards, cover: no}
`

  it('needs no words of its own, and prints for no class', async () => {
    expect((await printed(alone)).map(({ name, words }) => [name, words])).toEqual([
      ['word-cards-otters', ['mud', 'frog']],
      ['word-cards-herons', ['thrush', 'stream', 'frog']],
    ])
  })

  it('has labels and lists of its sets like any other', async () => {
    const items = await printed(`${alone}  - {layout: checklist}\n  - {layout: bag-labels}\n`)
    expect(items.map(({ name }) => name)).toEqual([
      'word-cards-otters',
      'word-cards-herons',
      'checklist',
      'bag-labels',
    ])
  })

  it('is refused where a group has no words either', async () => {
    const without = alone.replace('Herons, words: [thrush, stream, frog]', 'Herons')
    expect(await problemsIn(without)).toMatch(/the plan has no "words"\n.*or give every group its words/)
    expect(await problemsIn(alone.replace('[mud, frog]', '[]'))).toContain('the plan has no "words"')
  })

  it('says so where an item is for the class alone, which has none', async () => {
    const said = await problemsIn(alone.replace('cover: no', 'groups: none'))
    expect(said).toContain('"word-cards" has no words left for the class, so nothing is printed for it')
  })
})

describe('groups of a class', () => {
  const plan = `title: Along the marsh
words: [thrush, stream, reed]
marks:
  - pattern: vowel-team
groups:
  - {name: Otters, more words: [mud, reed, shed]}
  - {name: Wrens, words: [chick, shell], marks: [{letters: ch}, {letters: sh}]}
  - {name: Large print, size: large}
print:
  - {layout: word-cards, cover: no, order: rows}
`

  it('may have words beside those of the plan, each once', async () => {
    const otters = (await printed(plan)).find(({ name }) => name === 'word-cards-otters')!
    expect(otters.words).toEqual(['thrush', 'stream', 'reed', 'mud', 'shed'])
  })

  it('may have marks in place of those of the plan', async () => {
    const items = await printed(plan)
    const marksOf = (name: string) => items.find(item => item.name === name)!.marked
    expect(marksOf('word-cards-wrens')).toEqual(['ch', 'sh'])
    expect(marksOf('word-cards')).toEqual(['ea', 'ee'])
    expect(marksOf('word-cards-large-print')).toEqual(['ea', 'ee'])
    expect(items[0]!.problems).toEqual([])
  })

  it('are told of a mark of their own that stands on none of their words', async () => {
    expect(await problemsIn(plan.replace('{letters: sh}', '{letters: th}'))).toContain('th')
  })

  it('are refused with words in place of the plan’s and beside them', async () => {
    expect(await problemsIn(plan.replace('more words: [mud', 'words: [hen], more words: [mud'))).toContain(
      'a group has "words" and "more words"',
    )
  })

  it('may be left out of an item, or have it alone', async () => {
    const forClass = await printed(plan.replace('cover: no', 'cover: no, groups: none'))
    expect(forClass.map(({ name }) => name)).toEqual(['word-cards'])
    const forWrens = await printed(plan.replace('cover: no', 'cover: no, groups: Wrens'))
    expect(forWrens.map(({ name }) => name)).toEqual(['word-cards-wrens'])
  })
})
