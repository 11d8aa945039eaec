import { describe, expect, it } from 'vitest'
import type { Sheet } from '../../src/sheets/sheet.js'
import { printItem } from './print-item.js'

/** Silent letters, x and qu, an r with its vowel, a team for one sound, a word that nobody knows. */
const plan = `title: Along the marsh
words: [snake, knee, box, queen, fire, thumb, bridge, wrote, mosquito, little, blorpish, heron]
print:
`

/** Wherever a number of sounds stands beside pieces. */
const items = [
  '{layout: marked-list}',
  '{layout: marked-list, paper: index-4x6}',
  '{layout: word-cards, back: answer}',
  '{layout: word-cards, back: answer, size: large}',
  '{layout: sound-boxes}',
  '{layout: word-strips}',
]

/** Text in reading order, lines of one text joined: a count may be broken over lines at its commas or dots. */
function textOf({ pieces, furniture }: Sheet): string {
  const runs = [...pieces.flatMap(({ piece }) => piece.art), ...furniture].flatMap(({ art }) => art.text)
  return runs.map(run => run.text).join(' ')
}

/** As a reader counts: a piece outside brackets is one, x and qu two where that is said. */
function counted(pieces: string, said: string): number {
  const heard = pieces.split('·').filter(piece => !piece.startsWith('('))
  return heard.length + heard.filter(piece => new RegExp(`\\b${piece}\\b[^.]*counts? two`).test(said)).length
}

describe.each(items)('the sounds told by %s', item => {
  it('are as many as the pieces that are heard', async () => {
    const { sheets } = await printItem(item, plan)
    const text = sheets
      .map(textOf)
      .join(' ')
      .replaceAll(/· (?=[a-z(])/g, '·')
    const told = [
      ...text.matchAll(
        /(\d+)(?: sounds?)?: ((?:[a-z]+|\([a-z]+\))(?:·(?:[a-z]+|\([a-z]+\)))*)(,[^:]*?counts? two)?/g,
      ),
    ]
    expect(told.length).toBeGreaterThanOrEqual(12)
    const wrong = told.filter(([, number, pieces, said = '']) => counted(pieces!, said) !== Number(number))
    expect(wrong.map(([line]) => line)).toEqual([])
  })
})
