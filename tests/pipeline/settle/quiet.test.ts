import { describe, expect, it } from 'vitest'
import { contentRoom } from '../../../src/pieces/parts/card-frame.js'
import { typeScale } from '../../../src/pieces/text/type-scale.js'
import { leastEmMm } from '../../../src/pieces/text/type-size.js'
import { fitWords } from '../../../src/pieces/word/fit-words.js'
import { putPlanOnSheets } from '../../../src/pipeline.js'
import { formatProblem } from '../../../src/problems.js'
import { bundledTypeface } from '../../pieces/bundled-typefaces.js'
import { filesInMemory } from '../../plan/reading.js'
import { sharedWork } from '../shared-work.js'

const andika = bundledTypeface('andika')
const type = typeScale({ kind: 'large' }, andika)
const leastMm = leastEmMm(andika, { kind: 'large' })

async function cardsOf(word: string, options: string) {
  const text = `words: [${word}]\nprint:\n  - {layout: word-cards, size: large${options}}\n`
  const made = await putPlanOnSheets({
    planFile: 'week.yaml',
    files: filesInMemory({ 'week.yaml': text }),
    kept: sharedWork,
  })
  if (!made.ok) throw new Error(made.problems.map(formatProblem).join('\n'))
  const [item] = made.value.items
  return { piece: item!.printed.sheets[0]!.pieces[0]!.piece, notes: item!.printed.notes }
}

/** Whether the word could be this many times as large as it must be, on a card of this width. */
function couldBe(times: number, word: string, cardWidthMm: number): boolean {
  // Within its frame the card keeps a twenty-second of its width free on both sides of the word.
  const inside = contentRoom({ widthMm: cardWidthMm, heightMm: 1000 }, undefined, type)
  const room = { ...inside, widthMm: inside.widthMm - cardWidthMm / 11 }
  const sizeMm = leastMm * times
  const words = [{ word, spans: [], room }]
  return 'sizeMm' in fitWords({ typeface: andika, words, large: true, minimumMm: sizeMm, maximumMm: sizeMm })
}

describe('words in large print', () => {
  it('are given larger cards exactly where they could not be a third larger', async () => {
    const { piece } = await cardsOf('reed', ', across: 2, down: 3')
    const seen = new Set<boolean>()
    for (const length of [10, 12, 13, 14, 15, 16, 18]) {
      const word = 'n'.repeat(length)
      const { notes } = await cardsOf(word, '')
      const widened = notes.some(note => note.startsWith('Laid out with'))
      expect([word, widened]).toEqual([word, !couldBe(4 / 3, word, piece.widthMm)])
      seen.add(widened)
    }
    expect(seen.size).toBe(2)
  })
})
