import { describe, expect, it } from 'vitest'
import { kindsOf, linesOn, marshWords, piecesOf, printItem, problemsOf } from './print-item.js'

const item = '{layout: closed-sort, sort: how the plural is made}'

describe('a closed sort', () => {
  it('has headers that stand on one line each where they are nearly as large then', async () => {
    const plan = 'title: A\nwords: [reed, frog, moth, bee, duck, snow, goat, shed, wren, rain]\nprint:\n'
    const printed = await printItem('{layout: closed-sort, sort: short or long vowel}', plan)
    const headers = piecesOf(printed).filter(piece => piece.kind === 'header')
    expect(headers.map(({ text }) => text[0])).toEqual(['short vowel', 'long vowel'])
    for (const { art, text } of headers)
      expect(art.flatMap(each => each.art.text.map(run => run.text))).toContain(text[0])
  })

  it('has a header for each column and one for the words that stand in none', async () => {
    const headers = piecesOf(await printItem(item)).filter(piece => piece.kind === 'header')
    expect(headers.map(piece => piece.text)).toEqual([['add s'], ['add es'], ['?']])
    expect(headers.flatMap(piece => piece.marks)).toEqual([])
  })

  it('has every word on a card of its own', async () => {
    const cards = piecesOf(await printItem(item)).filter(piece => piece.kind === 'card')
    expect(cards.flatMap(piece => piece.text).toSorted()).toEqual(marshWords.toSorted())
  })

  it('leaves out the words that stand in no column where the teacher says so', async () => {
    const pieces = piecesOf(await printItem(item.replace('}', ', leftovers: leave out}')))
    expect(pieces.flatMap(piece => piece.text)).not.toContain('?')
    expect(pieces.flatMap(piece => piece.text)).not.toContain('leaf')
  })

  it('tells the columns on a page of its own, with the numbers on the cards', async () => {
    const printed = await printItem(item)
    expect(kindsOf(printed)).toEqual(['pieces', 'answers', 'cover'])
    const numberOf = (word: string) => piecesOf(printed).find(piece => piece.text[0] === word)!.number
    const cells = linesOn(printed, 'answers').flatMap(line => line.split(' | '))
    for (const word of marshWords) expect(cells).toContain(`${numberOf(word)} ${word}`)
    expect(cells).toContain('leaf is the only one of its kind: f to v.')
  })

  it('takes the best sort where the teacher names none', async () => {
    const printed = await printItem('{layout: closed-sort}')
    expect(piecesOf(printed).filter(piece => piece.kind === 'header').length).toBeGreaterThan(1)
    expect(printed.notes.join()).toMatch(/^.*The sort is "[a-z ]+"/)
  })

  it('finds a sort whatever its capitals and hyphens', async () => {
    const printed = await printItem('{layout: closed-sort, sort: How-the-plural is made}')
    expect(printed.notes.join()).toContain('The sort is "how the plural is made"')
  })

  it('names the nearest sort where there is none of that name, and then all', async () => {
    const said = await problemsOf('{layout: closed-sort, sort: how the plurl is made}')
    expect(said).toContain('no sort named "how the plurl is made"')
    expect(said).toContain('Did you mean "how the plural is made"?')
    expect(said).toContain('"how many sounds"')
  })

  it('says so where the words support no sort', async () => {
    expect(await problemsOf('{layout: closed-sort, words: [reed, moth]}')).toContain('support no sort')
  })

  it('says which header has no room', async () => {
    expect(
      await problemsOf(
        '{layout: closed-sort, sort: how the plural is made, orientation: portrait, across: 6, down: 12, size: 20 pt}',
      ),
    ).toContain('"add es" on header 2 needs more room')
  })
})
