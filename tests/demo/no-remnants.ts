import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { drawnSheet, type PrintedSheet } from '../../src/files/printed-plan.js'
import { putEachOnSheets } from '../../src/pipeline.js'
import { starterPlan } from '../../src/plan/starter-plan.js'
import type { Sheet } from '../../src/sheets/sheet.js'
import { sharedWork } from '../pipeline/shared-work.js'
import { filesInMemory } from '../plan/reading.js'
import { demoWeeks, drawDemoWeek } from './demo-sheets.js'

/** How much of the page's height its lines of text span, 0 to 1. */
function spanned({ furniture, heightMm }: Sheet): number {
  const levels = furniture.flatMap(({ art, yMm }) => art.text.map(run => yMm + run.baselineMm))
  return (Math.max(...levels) - Math.min(...levels)) / heightMm
}

/** Pages that go on from the page before; on a screen each is a step of its own. */
function further<S extends PrintedSheet>(sheets: readonly S[]): readonly S[] {
  return sheets.filter(
    ({ kind }, index) => kind !== 'pieces' && kind !== 'screen' && sheets[index - 1]?.kind === kind,
  )
}

/** Those of them that fill less than a third of their height. */
function remnants(sheets: readonly PrintedSheet[]): readonly string[] {
  return further(sheets)
    .filter(sheet => spanned(drawnSheet(sheet)) < 1 / 3)
    .map(({ title }) => title)
}

export function leaveNoRemnants(): void {
  describe('pages of the demo that go on from another', () => {
    it.each(demoWeeks)('are well filled in %s', async week => {
      for (const { printed } of await drawDemoWeek(week)) expect(remnants(printed.sheets)).toEqual([])
    })

    it('are well filled in the starter plan', async () => {
      const file = join('plans', 'starter.yaml')
      const starter = { planFile: file, files: filesInMemory({ [file]: starterPlan }), kept: sharedWork }
      const made = await putEachOnSheets(starter, ({ printed: { sheets } }) => ({
        further: further(sheets).length,
        remnants: remnants(sheets),
      }))
      if (!made.ok) throw new Error('the starter plan cannot be made')
      const { items } = made.value
      expect(items.some(item => item.further > 0)).toBe(true)
      expect(items.flatMap(item => item.remnants)).toEqual([])
    })
  })
}
