import { expect, it } from 'vitest'
import { prepareItem } from '../../../src/pipeline/deal/prepare-item.js'
import { roomierItems } from '../../../src/pipeline/settle/roomier-items.js'
import { fitPieces, mainWordsAtMost, tryWay } from '../../../src/pipeline/settle/try-ways.js'
import { planVocabulary } from '../../../src/pipeline/vocabulary.js'
import { settlePlanInHand } from '../../../src/pipeline.js'
import { loadPlan } from '../../../src/plan/load-plan.js'
import { formatProblem } from '../../../src/problems.js'
import { filesInMemory } from '../../plan/reading.js'
import { sharedWork } from '../shared-work.js'

const marks = `marks:
  - {pattern: consonant-digraph, outline: oval}
  - {pattern: vowel-team, line: double}
  - {part of speech: noun, tag: n}
`

/** The first item of a plan with its pieces as they are asked for. */
async function asked(keys: string) {
  const text = `words: [reed, marsh, thrush, stream, gnat, leaf, moth, frog, grasshopper]\n${marks}print:\n  - {${keys}}\n`
  const files = filesInMemory({ 'week.yaml': text })
  const plan = loadPlan('week.yaml', planVocabulary(), files)
  if (!plan.ok) throw new Error(plan.problems.map(formatProblem).join('\n'))
  const done = await settlePlanInHand(plan.value, { files, kept: sharedWork })
  if (!done.ok) throw new Error(done.problems.map(formatProblem).join('\n'))
  const { prepared, set } = done.value.items[0]!
  const pieces = await fitPieces(prepared, set, { ...sharedWork, untold: true })
  if (!pieces.ok) throw new Error('the words do not fit as they are asked for')
  return { prepared, set, pieces: pieces.value }
}

/** What is known before anything is laid out decides which divisions of the sheet are tried, so it must never be too little. */
it.each([
  ['word-cards', 'layout: word-cards'],
  ['marked cards in large print', 'layout: word-cards, size: large, marks: all, back: name'],
  ['cards with dots between syllables', 'layout: word-cards, syllables: breaks, marks: all'],
  ['call cards', 'layout: call-cards'],
  ['sort cards with a picture', 'layout: open-sort, picture: beside'],
  ['pairs', 'layout: matching-pairs, pair: same word, marks: all'],
  ['boards', 'layout: bingo, boards: 2, grid: 3x2, marks: all'],
  ['sound boxes', 'layout: sound-boxes, show: word'],
])('no division of the sheet gives larger words than the letters say: %s', async (_, keys) => {
  const { prepared, set, pieces } = await asked(keys)
  const atMost = mainWordsAtMost(prepared, pieces, sharedWork)
  const ways = roomierItems(prepared, set).openGrids()
  const shares: number[] = []
  for (const way of ways.filter((_, index) => index % Math.ceil(ways.length / 12) === 0)) {
    const other = prepareItem(prepared.studied, {
      ...prepared.job,
      item: { ...prepared.job.item, ...way.changes },
    })
    const tried = await tryWay(way, { prepared, set, fitting: sharedWork }, 'to see')
    const sizeMm = tried?.outcome.value.fronts.fits.get('main')?.sizeMm
    if (other.ok && sizeMm !== undefined) shares.push(sizeMm / atMost(other.value.grid.pieceSize))
  }
  expect(Math.max(...shares)).toBeLessThanOrEqual(1)
  // Of pieces that hold a word and little else it is a good part of that, of boards a third: there is something to be wrong.
  expect(Math.max(...shares)).toBeGreaterThan(0.25)
})
