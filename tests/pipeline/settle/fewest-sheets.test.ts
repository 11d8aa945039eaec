import { describe, expect, it } from 'vitest'
import type { PrintedItem } from '../../../src/files/printed-plan.js'
import { keepWork } from '../../../src/pipeline/kept-work.js'
import { putPlanOnSheets } from '../../../src/pipeline.js'
import { formatProblem } from '../../../src/problems.js'
import { filesInMemory } from '../../plan/reading.js'

const words = 'reed marsh thrush stream gnat wren leaf moth frog perch snake duck'
const kept = keepWork()

/** Undefined where the item cannot be made as it is written. */
async function made(
  keys: string,
): Promise<{ readonly item: PrintedItem; readonly advice: string } | undefined> {
  const text = `words: [${words.replaceAll(' ', ', ')}]\nprint:\n  - {cover: no, ${keys}}\n`
  const plan = await putPlanOnSheets({
    planFile: 'week.yaml',
    files: filesInMemory({ 'week.yaml': text }),
    kept,
  })
  if (!plan.ok) return undefined
  const { printed } = plan.value.items[0]!
  return { item: printed, advice: plan.problems.map(formatProblem).join('\n') }
}

const sheetsOf = (item: PrintedItem) =>
  item.sheets.filter(({ kind, side }) => kind === 'pieces' && side === 'front').length
const placesOn = (item: PrintedItem) => Math.max(...item.sheets.map(({ pieces }) => pieces.length))

/** Every division of the sheet on which all pieces of the item would take fewer sheets. */
function closer(sheets: number, pieces: number, held: RegExpExecArray | null): readonly string[] {
  const upTo = (most: number) => Array.from({ length: most }, (_, index) => index + 1)
  const across = held ? [Number(held[1])] : upTo(5)
  return ['portrait', 'landscape'].flatMap(orientation =>
    across.flatMap(columns =>
      upTo(9)
        .filter(rows => Math.ceil(pieces / (columns * rows)) < sheets)
        .map(rows => `orientation: ${orientation}, across: ${columns}, down: ${rows}`),
    ),
  )
}

describe('a size that the teacher names in large print', () => {
  it.each(['layout: word-cards, size: x-height 12 mm', 'layout: open-sort, size: 72 pt'])(
    'stands on the fewest sheets that hold it, however the paper is divided and turned: %s',
    async keys => {
      const chosen = (await made(keys))!.item
      const sheets = sheetsOf(chosen)
      const pieces = chosen.sheets.flatMap(sheet => (sheet.side === 'front' ? sheet.pieces : []))
      const held = /across: (\d)/.exec(keys)
      const without = keys.replace(/, across: \d/, '')
      let tried = 0
      for (const division of closer(sheets, pieces.length, held)) {
        const other = await made(`${without}, ${division}`)
        tried += 1
        expect([division, other && sheetsOf(other.item)]).toEqual([division, undefined])
      }
      expect(tried).toBeGreaterThan(0)
    },
    60_000,
  )

  it('leaves what the plan says of the paper as it is', async () => {
    const { item } = (await made('layout: word-cards, size: 36 pt, orientation: portrait'))!
    expect(item.paper.heightMm).toBeGreaterThan(item.paper.widthMm)
    expect(placesOn((await made('layout: word-cards, size: 36 pt, across: 2, down: 3'))!.item)).toBe(6)
  })
})
