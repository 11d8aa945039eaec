import fc from 'fast-check'
import { expect, it } from 'vitest'
import { lookAtPlan } from '../../../src/oaktag.js'
import { applyEdit } from '../../../src/plan/edit/apply-edit.js'
import { notesIn } from '../../../src/plan/edit/lines.js'
import { planData } from '../../../src/plan/edit/plan-data.js'
import type { PlanEdit } from '../../../src/plan/edit/plan-edit.js'
import { planFile, plans } from '../../soak/models/plan-texts.js'
import { filesInMemory } from '../reading.js'

const edits: readonly PlanEdit[] = [
  { kind: 'insert', path: ['words'], at: 1, values: ['pond'] },
  { kind: 'set', path: ['title'], value: 'Along: the #marsh' },
  { kind: 'set', path: ['words', 0, 'clue'], value: 'wet', textAs: 'word' },
  { kind: 'remove', path: ['print', 0] },
  { kind: 'remove', path: ['marks'] },
  { kind: 'move', path: ['print'], from: 1, to: 0 },
  { kind: 'set', path: ['print', 0, 'copies'], value: '2', textAs: 'layout' },
]

it.each(['valid', 'nearly', 'hostile'] as const)(
  'whatever the plan, a change is made with every note kept, or refused: %s',
  quality => {
    let made = 0
    const property = fc.property(plans(quality), folder => {
      const text = String(folder[planFile])
      const notes = notesOf(text)
      for (const edit of edits) {
        const outcome = applyEdit(text, edit)
        if (!outcome.ok) continue
        made += 1
        expect(planData(outcome.value)).toBeDefined()
        expect(notesOf(outcome.value)).toEqual(notes)
      }
      lookAtPlan({ plan: planFile, files: filesInMemory(folder) })
    })
    fc.assert(property, { numRuns: quality === 'hostile' ? 4 : 8, seed: 11 })
    expect(made).toBeGreaterThan(quality === 'hostile' ? 0 : 15)
  },
)

function notesOf(text: string): readonly string[] {
  return [...notesIn(text, 0, text.length)].sort()
}
