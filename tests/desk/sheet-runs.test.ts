import { expect, it } from 'vitest'
import type { DeskItem, SeenSheet } from '../../src/desk/messages.js'
import { type FolderFiles, folderFiles } from '../../src/desk/server/folder-files.js'
import { type RunState, type SheetRuns, sheetRuns } from '../../src/desk/server/sheet-runs.js'
import { keepWork } from '../../src/oaktag.js'
import { deskFolder } from './desk-folder.js'

it('begins a run after what was told in the same turn has gone out', async () => {
  const text = 'words: [reed]\nprint: [word-cards]\n'
  const { plan } = deskFolder(text)
  const files = folderFiles(plan, () => text)
  const order: string[] = []
  const read: FolderFiles = {
    ...files,
    read: (path, limitBytes) => {
      order.push('run')
      return files.read(path, limitBytes)
    },
  }
  await new Promise<void>(told => {
    const runs = sheetRuns({ path: plan, files: read, kept: keepWork(), told })
    // As a page is told of the plan, and then its sheets are begun.
    setImmediate(() => order.push('told'))
    runs.begin()
  })
  expect(order.slice(0, 2)).toEqual(['told', 'run'])
})

const planOf = (word: string, bingo = '') =>
  `words: [marsh, ${word}]\nprint: [word-cards, marked-list, blank-list${bingo}]\n`

/** Runs whose plan is another whenever the test says so, and all that they told. */
function runsOf(first: string, seen: readonly SeenSheet[]) {
  let text = first
  const { plan } = deskFolder(text)
  const states: RunState[] = []
  const waiting: (() => void)[] = []
  const runs: SheetRuns = sheetRuns({
    path: plan,
    files: folderFiles(plan, () => text),
    kept: keepWork(),
    seen: () => seen,
    told: () => {
      states.push(runs.state())
      for (const wake of waiting.splice(0)) wake()
    },
  })
  const change = (after: string): void => {
    text = after
    runs.begin()
  }
  const until = async (isThere: (state: RunState) => boolean): Promise<RunState> => {
    while (!isThere(runs.state())) await new Promise<void>(wake => waiting.push(wake))
    return runs.state()
  }
  const atRest = (after: string): Promise<RunState> => {
    change(after)
    return until(({ busy }) => !busy)
  }
  const svgs = (items: readonly DeskItem[]) =>
    items.flatMap(({ sheets }) => sheets.map(({ address }) => runs.svg(address.replace(/\D/g, '')) ?? ''))
  return { states, change, until, atRest, svgs }
}

const isThere = ({ toCome }: DeskItem) => toCome !== true

it('tells the sheets that are looked at while the others are still to come', async () => {
  const { states, atRest, svgs } = runsOf(planOf('reed'), [{ item: 'blank-list', sheet: 0 }])
  const before = await atRest(planOf('reed'))
  states.length = 0
  await atRest(planOf('heron'))
  const [soon, whole] = states
  expect(states).toHaveLength(2)
  expect([soon!.busy, soon!.items.filter(isThere).map(({ name }) => name)]).toEqual([true, ['blank-list']])
  expect(svgs(soon!.items.filter(isThere)).join()).toContain('heron')
  expect(soon!.items[0]!.sheets).toEqual(before.items[0]!.sheets)
  expect([whole!.busy, whole!.items.every(isThere)]).toEqual([false, true])
})

it('gives up what a later change has overtaken, and ends with the sheets of the last plan, byte for byte', async () => {
  const { states, atRest, change, until, svgs } = runsOf(planOf('reed'), [
    { item: 'marked-list', sheet: 0 },
    { item: 'word-cards', sheet: 0 },
  ])
  await atRest(planOf('reed'))
  change(planOf('heron'))
  await until(({ items }) => items.some(isThere))
  states.length = 0
  const last = await atRest(planOf('wren'))
  const told = states.map(({ items }) => svgs(items.filter(isThere)).join())
  expect(told.length).toBeGreaterThan(1)
  expect(told.filter(text => text.includes('heron'))).toEqual([])
  const fresh = runsOf(planOf('wren'), [])
  expect(svgs(last.items)).toEqual(fresh.svgs((await fresh.atRest(planOf('wren'))).items))
})

it('keeps to the sheets from before where the plan has an error, all of them', async () => {
  const { states, atRest } = runsOf(planOf('reed'), [{ item: 'marked-list', sheet: 0 }])
  const before = await atRest(planOf('reed'))
  states.length = 0
  await atRest(planOf('heron', ', {layout: bingo, grid: 5x5}'))
  expect(states).toMatchObject([{ busy: false, older: true, items: before.items }])
})
