import { describe, expect, it } from 'vitest'
import { kindsOf, linesOn, marshWords, piecesOf, printItem, problemsOf } from '../print-item.js'

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

  it('says then which words would make one', async () => {
    const plan = 'title: A\nwords: [night, light, bright]\nprint:\n'
    expect(await problemsOf('{layout: closed-sort}', plan)).toMatch(
      /spellings of \/AY\/ as in pie\. All stand under igh; add \w+, \w+ and \w+, which stand under i_e\./,
    )
  })

  it('says which header has no room', async () => {
    expect(
      await problemsOf(
        '{layout: closed-sort, sort: how the plural is made, orientation: portrait, across: 6, down: 12, size: 20 pt}',
      ),
    ).toContain('"add es" on header 2 needs more room')
  })
})

describe('a closed sort of pairs', () => {
  const plan = 'title: A\nwords: [kite, lamp, boat, fox, dish, bench]\nprint:\n'
  const pairs = '{layout: closed-sort, sort: how the plural is made, pairs: yes}'

  it('has a card for each word and one for its partner, unmarked', async () => {
    const cards = piecesOf(await printItem(pairs, plan)).filter(piece => piece.kind === 'card')
    expect(cards.flatMap(piece => piece.text).toSorted()).toEqual(
      'bench benches boat boats dish dishes fox foxes kite kites lamp lamps'.split(' '),
    )
  })

  it('tells the pairs with both numbers', async () => {
    const printed = await printItem(pairs, plan)
    const numberOf = (word: string) => piecesOf(printed).find(piece => piece.text[0] === word)!.number
    const cells = linesOn(printed, 'answers').flatMap(line => line.split(' | '))
    expect(cells).toContain(`${numberOf('fox')} fox, ${numberOf('foxes')} foxes`)
    expect(cells).toContain('A word and its partner lie side by side.')
  })

  it('is refused for another sort, with the sorts of these words that have pairs', async () => {
    const said = await problemsOf('{layout: closed-sort, sort: short or long vowel, pairs: yes}', plan)
    expect(said).toContain('a sort named "short or long vowel" has no pairs')
    expect(said).toContain('Write sort: how the plural is made; or leave pairs out.')
  })

  it('is refused where no sort of the words has pairs, with what would have them', async () => {
    const said = await problemsOf(
      '{layout: closed-sort, pairs: yes}',
      'title: A\nwords: [and, the, with, they, those, that]\nprint:\n',
    )
    expect(said).toMatch(/has no pairs|support no sort/)
  })
})
