import { describe, expect, it } from 'vitest'
import { type Box, moveBox } from '../../src/geometry.js'
import type { Piece } from '../../src/pieces/piece.js'
import { piecesOf, printItem } from './print-item.js'

const words = ['boat', 'marshes', 'lighthouse', 'crate', 'anchor', 'swim', 'oyster', 'storm', 'gull']
const plan = `title: Down at the harbour
words: [${words.join(', ')}]
marks:
  - {pattern: vowel-team, line: dashed}
  - {part of speech: noun}
  - {syllables: 2, color: "#00618a"}
  - {part of speech: verb, line: thick, tag: v}
print:
`

/** Where the words of the list stand on a piece, letters and the marks on them. */
const wordsOn = ({ art }: Piece): readonly Box[] =>
  art
    .filter(({ art: { text } }) => text.some(run => words.includes(run.text)))
    .map(({ art: { widthMm, heightMm }, xMm, yMm }) => ({ xMm, yMm, widthMm, heightMm }))

const meet = (a: Box, b: Box): boolean =>
  a.xMm < b.xMm + b.widthMm &&
  b.xMm < a.xMm + a.widthMm &&
  a.yMm < b.yMm + b.heightMm &&
  b.yMm < a.yMm + a.heightMm

const layouts = [
  'word-cards',
  'open-sort',
  'closed-sort',
  'bingo, boards: 2, grid: 3x3',
  'path-board',
  'word-strips',
]

describe.each(layouts)('a mark on whole words, on pieces of {layout: %s}', layout => {
  it.each(['normal', 'large'])('is a tag inside the piece, clear of every word: size %s', async size => {
    const pieces = piecesOf(await printItem(`{layout: ${layout}, marks: all, size: ${size}}`, plan))
    const tagged = pieces.flatMap(piece =>
      piece.marks.flatMap(mark =>
        mark.tag !== undefined && mark.line === undefined ? [{ piece, mark }] : [],
      ),
    )
    expect(tagged.length).toBeGreaterThan(2)
    for (const { piece, mark } of tagged) {
      expect([mark.start, mark.end, mark.letters]).toEqual([0, mark.word.length, mark.word])
      expect(mark.xMm).toBeGreaterThan(0)
      expect(mark.yMm).toBeGreaterThan(0)
      expect(mark.xMm + mark.widthMm).toBeLessThan(piece.widthMm)
      const apart = moveBox(
        { ...mark, widthMm: mark.widthMm + 0.6, heightMm: mark.heightMm + 0.6 },
        -0.3,
        -0.3,
      )
      expect(wordsOn(piece).filter(box => meet(box, apart))).toEqual([])
    }
  })
})

describe('a mark on whole words with a line', () => {
  it('hangs below the marks on its letters, as long as the word', async () => {
    const text = plan.replace('part of speech: verb', 'part of speech: noun').replace(/.*noun}\n/, '')
    const pieces = piecesOf(await printItem('{layout: word-cards}', text))
    const boat = pieces.find(piece => piece.text[0] === 'boat')!
    const [team, noun] = ['dashed', 'thick'].map(line => boat.marks.find(mark => mark.line === line)!)
    expect([noun!.start, noun!.end]).toEqual([0, 4])
    expect(noun!.yMm).toBeGreaterThan(team!.yMm + team!.heightMm + 1)
    expect(noun!.widthMm).toBeGreaterThan(1.8 * team!.widthMm)
  })
})
