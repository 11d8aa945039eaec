import { describe, expect, it } from 'vitest'
import { drawnSheet } from '../../../src/files/printed-plan.js'
import { keepWork, workOfOneRun } from '../../../src/pipeline/kept-work.js'
import { putEachOnSheets } from '../../../src/pipeline.js'
import { filesInMemory } from '../../plan/reading.js'

const plan = `words: [reed, marsh, gnat, wren, leaf, moth]
print:
  - {layout: word-cards}
  - {layout: open-sort}
  - {layout: marked-list}
  - {layout: bag-labels}
`
const request = () => ({ planFile: 'week.yaml', files: filesInMemory({ 'week.yaml': plan }) })

describe('the items of a plan', () => {
  it('are drawn one by one, each when the one before was taken', async () => {
    const kept = workOfOneRun()
    const drawnByThen: (readonly [number, number])[] = []
    await putEachOnSheets({ ...request(), kept }, () => {
      drawnByThen.push([kept.done().faces, kept.done().printed])
    })
    expect(drawnByThen).toEqual([
      [1, 1],
      [2, 2],
      [3, 3],
      [4, 4],
    ])
  })

  it('are not drawn again in a run that is gone on with, and not held in one that is not', async () => {
    const drawnTwice = async (kept: ReturnType<typeof keepWork>) => {
      for (const _run of [1, 2]) await putEachOnSheets({ ...request(), kept }, item => item.printed.name)
      return kept.done().faces
    }
    expect([await drawnTwice(keepWork()), await drawnTwice(workOfOneRun())]).toEqual([4, 8])
  })

  it('have sheets that are drawn once where that goes on, for all who ask, and each time where it does not', async () => {
    /** For each item, whether its sheets are the same when they are drawn again at once and in the next run. */
    const heldBy = async (kept: ReturnType<typeof keepWork>) => {
      const sheets = async () => {
        const made = await putEachOnSheets({ ...request(), kept }, ({ printed }) => printed.sheets)
        return made.ok ? made.value.items.map(([sheet]) => sheet!) : []
      }
      const [before, after] = [await sheets(), await sheets()]
      return before.map((sheet, item) => {
        const drawn = drawnSheet(sheet)
        expect(drawnSheet(after[item]!)).toEqual(drawn)
        return [drawnSheet(sheet) === drawn, drawnSheet(after[item]!) === drawn]
      })
    }
    expect(await heldBy(keepWork())).toEqual(Array(4).fill([true, true]))
    // Labels are put together at once, and lie there drawn.
    expect((await heldBy(workOfOneRun())).slice(0, 3)).toEqual(Array(3).fill([false, false]))
  })
})
