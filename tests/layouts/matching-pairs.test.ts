import { describe, expect, it } from 'vitest'
import {
  kindsOf,
  linesOn,
  marshWithClues,
  marshWords,
  piecesOf,
  printItem,
  problemsOf,
} from './print-item.js'

describe('matching pairs', () => {
  it('have each word twice where the teacher says nothing', async () => {
    const texts = piecesOf(await printItem('{layout: matching-pairs}')).flatMap(piece => piece.text)
    expect(texts.toSorted()).toEqual([...marshWords, ...marshWords].toSorted())
  })

  it('have each word and its clue', async () => {
    const texts = piecesOf(await printItem('{layout: matching-pairs, pair: clue}')).flatMap(
      piece => piece.text,
    )
    expect(texts).toContain('moth')
    expect(texts).toContain('it flies to the lamp at night')
    expect(texts).toHaveLength(24)
  })

  it('have a word and its plural in one size', async () => {
    const pieces = piecesOf(await printItem('{layout: matching-pairs, pair: plural}'))
    const sizeOf = (text: string) => pieces.find(piece => piece.text[0] === text)!.fontPt
    expect(sizeOf('leaves')).toBe(sizeOf('leaf'))
    expect(new Set(pieces.map(piece => piece.fontPt)).size).toBe(1)
  })

  it('have numbers of sounds that are read across a table', async () => {
    const plan = 'title: Along the marsh\nwords: [bee, reed, frog, spring]\nprint:\n'
    const pieces = piecesOf(await printItem('{layout: matching-pairs, pair: sounds}', plan))
    const runs = pieces.flatMap(({ art }) => art.flatMap(each => each.art.text))
    const numbers = runs.filter(({ text }) => /^\d sounds$/.test(text))
    expect(numbers).toHaveLength(4)
    // 24 pt
    for (const { sizeMm } of numbers) expect(sizeMm).toBeGreaterThan(8.4)
  })

  it('have two words that sound alike, and say which word has no partner', async () => {
    const harbour = 'title: Down at the harbour\nwords: [sea, sail, see, sale, gull]\nprint:\n'
    const item = '{layout: matching-pairs, pair: sound alike}'
    const printed = await printItem(item, harbour)
    expect(
      piecesOf(printed)
        .flatMap(piece => piece.text)
        .toSorted(),
    ).toEqual(['sail', 'sale', 'sea', 'see'])
    expect(linesOn(printed, 'answers').join('\n')).toContain('sea – see')
    expect(await problemsOf(item, harbour)).toContain('no other word of the list sounds like "gull"')
  })

  it('tell the pairs on a page of its own, by the numbers on the cards', async () => {
    const printed = await printItem('{layout: matching-pairs, pair: plural}')
    expect(kindsOf(printed)).toEqual(['pieces', 'rules', 'answers', 'cover'])
    const numberOf = (text: string) => piecesOf(printed).find(piece => piece.text[0] === text)!.number
    const numbers = [numberOf('leaf'), numberOf('leaves')].sort((a, b) => a - b)
    expect(linesOn(printed, 'answers')).toContain(`${numbers.join(' and ')} | leaf – leaves`)
  })

  it('are any two of what there is to show of a word', async () => {
    const printed = await printItem('{layout: matching-pairs, pair: clue and plural}')
    const answers = linesOn(printed, 'answers').join('\n')
    expect(answers).toContain('it flies to the lamp at night – moths')
    const sizeOf = (text: string) => piecesOf(printed).find(piece => piece.text[0] === text)!.fontPt
    expect(sizeOf('moths')).toBeDefined()
  })

  it('show the marks on one of two cards alone', async () => {
    const printed = await printItem('{layout: matching-pairs, pair: marked word, words: [marsh, moth, reed]}')
    const marked = piecesOf(printed).map(({ text, marks }) => [text[0], marks.length])
    expect(marked.toSorted()).toEqual([
      ['marsh', 0],
      ['marsh', 1],
      ['moth', 0],
      ['moth', 1],
    ])
    expect(
      await problemsOf('{layout: matching-pairs, pair: marked word, words: [marsh, moth, reed]}'),
    ).toContain('"reed" has no shown mark')
  })

  it('say to children what makes a pair', async () => {
    const rules = async (pair: string) =>
      linesOn(await printItem(`{layout: matching-pairs, pair: ${pair}}`), 'rules').join(' ')
    expect(await rules('plural')).toContain('A pair is a word and its word for more than one.')
    expect(await rules('same word')).toContain('The same card twice is a pair.')
  })

  it('say which clue has no room on its card', async () => {
    const plan = marshWithClues.replace('it grows on a twig', 'a long clue '.repeat(16).trim())
    const said = await problemsOf(
      '{layout: matching-pairs, pair: clue, size: large, orientation: portrait, across: 3, down: 5}',
      plan,
    )
    expect(said).toMatch(/"a long clue .*" on card \d+ needs more room than the/)
  })
})
