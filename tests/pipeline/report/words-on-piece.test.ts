import { expect, it } from 'vitest'
import { wordsOnPieces } from '../../../src/pipeline/report/words-on-piece.js'
import { planVocabulary } from '../../../src/pipeline/vocabulary.js'
import { settlePlanInHand } from '../../../src/pipeline.js'
import { loadPlan } from '../../../src/plan/load-plan.js'
import { formatProblem } from '../../../src/problems.js'
import { filesInMemory } from '../../plan/reading.js'
import { sharedWork } from '../shared-work.js'

const words = 'reed, marsh, thrush, stream, gnat, leaf, moth, frog, grasshopper'

async function settled(keys: string) {
  const text = `words: [${words}]\nmarks: [{pattern: vowel-team, outline: oval}]\nprint:\n  - {${keys}}\n`
  const files = filesInMemory({ 'week.yaml': text })
  const plan = loadPlan('week.yaml', planVocabulary(), files)
  if (!plan.ok) throw new Error(plan.problems.map(formatProblem).join('\n'))
  const done = await settlePlanInHand(plan.value, { files, kept: sharedWork })
  if (!done.ok) throw new Error(done.problems.map(formatProblem).join('\n'))
  return done.value.items[0]!
}

it.each(['layout: word-cards', 'layout: bingo, boards: 2, grid: 3x2', 'layout: call-cards, size: large'])(
  'words on pieces of many sizes come out as on each alone: %s',
  async keys => {
    const item = await settled(keys)
    const sizes = [30, 45, 65, 90, 150].flatMap(widthMm =>
      [20, 35, 60, 110].map(heightMm => ({ widthMm, heightMm })),
    )
    const together = await wordsOnPieces(item, sizes, sharedWork)
    for (const size of sizes) {
      const alone = await wordsOnPieces(item, [size], sharedWork)
      expect([size, together(size)]).toEqual([size, alone(size)])
    }
    const room = sizes.filter(size => together(size) !== null)
    expect(room.length).toBeGreaterThan(0)
    expect(room.length).toBeLessThan(sizes.length)
  },
)
