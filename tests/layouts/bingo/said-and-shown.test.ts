import { describe, expect, it } from 'vitest'
import { linesOn, piecesOf, printItem, problemsOf } from '../print-item.js'

const bingo = (keys: string) => `{layout: bingo, boards: 2, grid: 3x3, ${keys}}`

describe('bingo by clue, plural or picture', () => {
  it('has the caller read out the clue, the words staying on the boards', async () => {
    const printed = await printItem(bingo('say: clue'))
    const sheet = linesOn(printed, 'caller').join('\n')
    expect(sheet).toContain(
      'Do not say the word: read out its clue, which stands behind it, from the top down',
    )
    expect(sheet).toContain('moth | it flies to the lamp at night')
    expect(linesOn(printed, 'rules').join(' ')).toContain('You hear a clue. Look for its word on your board.')
  })

  it('shows plurals, while its cells and calls go by the words', async () => {
    const printed = await printItem(bingo('show: plural'))
    const plurals: Readonly<Record<string, string>> = { leaf: 'leaves', thrush: 'thrushes' }
    for (const { text, cells } of piecesOf(printed)) {
      const words = cells!.flat().filter(word => word !== null)
      expect(text).toEqual(words.map(word => plurals[word] ?? expect.any(String)))
      for (const word of words) expect(printed.deal!.callOrder).toContain(word)
    }
  })

  it('sets clues in their cells, each in lines of its own', async () => {
    const [board] = piecesOf(await printItem(bingo('show: clue')))
    const said = board!.art.flatMap(({ art }) => art.text.map(run => run.text)).join(' ')
    for (const clue of board!.text) expect(said).toContain(clue.split(' ')[0]!)
    expect(board!.text.every(clue => clue.includes(' '))).toBe(true)
  })

  it('leaves words out that lack what is shown, and says so', async () => {
    expect(await problemsOf(bingo('show: picture'))).toContain('have no picture\nThey are not in the game.')
    const plan = `words: [reed, marsh, shell, log, goose, egg, gull, dog, frog, nest, mud]\nprint:\n`
    expect(await problemsOf(bingo('show: plural, free: yes, win: full board'), plan)).toContain(
      '"mud" has no plural\nIt is not in the game.',
    )
  })

  it('leaves a word out that another cannot be told from', async () => {
    const words = 'reed marsh shell log goose egg gull dog frog'
      .split(' ')
      .map((word, index) => `  - {word: ${word}, clue: clue ${index}}`)
    const plan = `words:\n${words.join('\n')}\n  - {word: nest, clue: clue 0}\nprint:\n`
    expect(await problemsOf(bingo('say: clue, free: yes, win: full board'), plan)).toContain(
      'the clue "clue 0" goes with "reed" and "nest"',
    )
  })
})
