import { describe, expect, it } from 'vitest'
import { kindsOf, linesOn, marshWords, piecesOf, printItem, problemsOf } from '../print-item.js'

describe('a path board', () => {
  it('has as many spaces as asked, its cells row by row in the order walked', async () => {
    const [board] = piecesOf(await printItem('{layout: path-board, spaces: 20}'))
    expect(board!.kind).toBe('board')
    expect(board!.text).toHaveLength(20)
    expect(board!.cells!.length).toBeGreaterThan(1)
    expect(board!.cells!.flat()).toEqual(board!.text)
  })

  it('uses every word as often as any other, give or take one', async () => {
    const [board] = piecesOf(await printItem('{layout: path-board, spaces: 30}'))
    const counts = marshWords.map(word => board!.text.filter(text => text === word).length)
    expect(Math.max(...counts) - Math.min(...counts)).toBeLessThanOrEqual(1)
  })

  it('turns at the end of each row: a row’s last word stands over the next row’s first', async () => {
    const printed = await printItem('{layout: path-board, spaces: 22}')
    const [board] = piecesOf(printed)
    const middles = board!.art
      .filter(({ art }) => art.text.length === 1 && marshWords.includes(art.text[0]!.text))
      .map(({ art, xMm, yMm }) => ({ text: art.text[0]!.text, x: xMm + art.widthMm / 2, y: yMm }))
    const rowLengths = board!.cells!.map(row => row.length)
    const lastOfFirstRow = middles[rowLengths[0]! - 1]!
    const firstOfSecondRow = middles[rowLengths[0]!]!
    expect(Math.abs(firstOfSecondRow.x - lastOfFirstRow.x)).toBeLessThan(3)
    expect(firstOfSecondRow.y).toBeGreaterThan(lastOfFirstRow.y)
    const secondOfSecondRow = middles[rowLengths[0]! + 1]!
    expect(secondOfSecondRow.x).toBeLessThan(firstOfSecondRow.x)
  })

  it('says in plain words where it starts and finishes', async () => {
    const [board] = piecesOf(await printItem('{layout: path-board}'))
    const said = board!.art.flatMap(({ art }) => art.text.map(run => run.text))
    expect(said).toContain('start')
    expect(said).toContain('finish')
  })

  it('makes boards that differ, and copies that do not', async () => {
    const boards = piecesOf(await printItem('{layout: path-board, boards: 2, copies: 2}'))
    expect(boards.map(board => board.id)).toEqual([
      'board-01',
      'board-02',
      'board-01-copy-2',
      'board-02-copy-2',
    ])
    expect(boards[0]!.text).not.toEqual(boards[1]!.text)
    expect(boards[2]!.text).toEqual(boards[0]!.text)
  })

  it('tells how it is played, and what serves instead of a die', async () => {
    const printed = await printItem('{layout: path-board, faces: 4}')
    expect(kindsOf(printed)).toEqual(['pieces', 'rules', 'cover'])
    const rules = linesOn(printed, 'rules').join(' ')
    expect(rules).toContain('the way the arrows point')
    expect(rules).toContain('First at the finish wins. You need not throw the exact number.')
    const numbers = printed.sheets
      .flatMap(sheet => sheet.furniture)
      .flatMap(({ art }) => art.text.map(run => run.text))
      .filter(text => /^\d$/.test(text))
    for (const number of ['1', '2', '3', '4'])
      expect(numbers.filter(text => text === number).length).toBeGreaterThanOrEqual(1 + 4)
    expect(numbers).not.toContain('5')
  })

  it('writes on its spaces where they send a counter, each space with its number', async () => {
    const printed = await printItem('{layout: path-board, jumps: 4}')
    const [board] = piecesOf(printed)
    const { jumps } = printed.answerData as unknown as { jumps: { from: number; to: number }[] }
    const said = board!.art.flatMap(({ art }) => art.text.map(run => run.text))
    expect(jumps).toHaveLength(4)
    for (const { from, to } of jumps) expect(said).toContain(`go ${to > from ? 'on' : 'back'} to ${to}`)
    for (let space = 1; space <= 26; space++) expect(said).toContain(String(space))
    expect(linesOn(printed, 'rules').join(' ')).toContain('Does it send you on or back?')
  })

  it('says how long a game lasts, and where the time asked for cannot be had', async () => {
    const rules = async (item: string) => linesOn(await printItem(item), 'rules').join(' ')
    expect(await rules('{layout: path-board, minutes: 14}')).toMatch(/a game lasts about 14 minutes/)
    expect(await problemsOf('{layout: path-board, minutes: 90}')).toMatch(
      /a game lasts about \d+ minutes, not 90\n.*a track with spaces: 80/,
    )
    expect(await problemsOf('{layout: path-board, spaces: 8, jumps: 6}')).toContain(
      'A track of 8 spaces has room for 2; give it more spaces.',
    )
  })

  it('leaves out what sends a counter before it is too small for the child', async () => {
    const item = await printItem('{layout: path-board, minutes: 6, size: x-height 12 mm}')
    expect(item.notes.join(' ')).toMatch(/Laid out with spaces: \d+, jumps: 0/)
  })

  it('is joined from two sheets, each with a part of the track and a mark of its own', async () => {
    const printed = await printItem('{layout: path-board, sheets: 2, jumps: 4}')
    const parts = piecesOf(printed)
    expect(parts.map(({ id }) => id)).toEqual(['board-01-part-1', 'board-01-part-2'])
    expect(parts.map(({ setMark }) => setMark!.replace(/^.* · 1 of/, '1 of'))).toEqual([
      '1 of 1 · sheet 1 of 2',
      '1 of 1 · sheet 2 of 2',
    ])
    const { track } = printed.answerData as unknown as { track: string[] }
    expect(parts.flatMap(({ text }) => text).toSorted()).toEqual(track.toSorted())
    const numbers = parts
      .flatMap(({ art }) => art.flatMap(each => each.art.text.map(run => run.text)))
      .filter(text => /^\d+$/.test(text))
    for (let space = 1; space <= track.length; space++) expect(numbers).toContain(String(space))
    expect(linesOn(printed, 'rules').join(' ')).toContain('cut the second sheet along the line at its left')
  })

  it('is joined from four sheets, with the order in which they lie', async () => {
    const printed = await printItem('{layout: path-board, sheets: 4}')
    expect(piecesOf(printed)).toHaveLength(4)
    const strips = piecesOf(printed).map(({ art }) =>
      art.flatMap(each => each.art.text.map(run => run.text)).find(text => text.startsWith('glue')),
    )
    expect(strips).toEqual(['glue sheet 3 on this strip', 'glue sheet 4 on this strip', undefined, undefined])
    expect(linesOn(printed, 'rules').join(' ')).toContain('lay the sheets out as 1 2 above 3 4')
    expect(await problemsOf('{layout: path-board, sheets: 3}')).toContain('Write 1, 2 or 4.')
  })

  it('says how many words a short track leaves out', async () => {
    const { notes } = await printItem('{layout: path-board, spaces: 8}')
    expect(notes.join(' ')).toContain('each board leaves out 4 of the 12 words')
  })

  it('has fewer and larger spaces in large print', async () => {
    const [normal] = piecesOf(await printItem('{layout: path-board}'))
    const [large] = piecesOf(await printItem('{layout: path-board, size: large}'))
    expect(large!.text.length).toBeLessThan(normal!.text.length)
    expect(large!.fontPt).toBeGreaterThan(normal!.fontPt!)
  })

  it('says so where the spaces are too small', async () => {
    expect(await problemsOf('{layout: path-board, size: large, spaces: 80}')).toContain('needs more room')
  })

  it('in large print has as many spaces as have room', async () => {
    const item = await printItem('{layout: path-board, size: x-height 12 mm}')
    expect(piecesOf(item)[0]!.xHeightMm).toBeGreaterThanOrEqual(11.9)
    expect(item.notes.join(' ')).toMatch(/Laid out with spaces: \d+/)
  })

  it('has no words in start and finish where these would be too small for the child', async () => {
    const plan = 'words: [up, in, at, on, go]\nprint:\n'
    const written = async (size: string) => {
      const [board] = piecesOf(await printItem(`{layout: path-board, size: ${size}}`, plan))
      return board!.art.flatMap(({ art }) => art.text.map(run => run.text))
    }
    expect(await written('large')).toContain('finish')
    expect(await written('x-height 22 mm')).not.toContain('finish')
  })

  it('that is too small for a group’s large print is left out for that group, with a warning', async () => {
    const plan = `words: [reed, marsh, hippopotamus, thrush]\ngroups: [{name: Otters, size: x-height 25 mm}]\nprint:\n`
    expect(await problemsOf('{layout: path-board}', plan)).toContain('nothing is made for Otters')
    const board = await printItem('{layout: path-board}', plan)
    expect(piecesOf(board)).toHaveLength(1)
  })
})
