import { describe, expect, it } from 'vitest'
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
})
