import { describe, expect, it } from 'vitest'
import {
  kindsOf,
  linesOn,
  marshWithClues,
  marshWords,
  piecesOf,
  printItem,
  problemsOf,
} from '../print-item.js'

const plural = 'sort: how the plural is made'

/** Tops of the level lines to write on, in mm of the piece, each once. */
function writingLines(piece: ReturnType<typeof piecesOf>[number]): readonly number[] {
  const tops = piece.art.flatMap(({ art, yMm }) =>
    art.shapes.flatMap(shape => {
      if (shape.kind !== 'path' || shape.fill !== '#737373') return []
      return [
        yMm +
          Math.min(
            ...shape.d
              .match(/-?\d+(?:\.\d+)?/g)!
              .map(Number)
              .filter((_, index) => index % 2 === 1),
          ),
      ]
    }),
  )
  return [...new Set(tops.map(top => Number(top.toFixed(1))))].toSorted((a, b) => a - b)
}

describe.each(['sort-mat', 'blind-sort', 'sort-record'])('%s', layout => {
  it('has the headings of the sort, a question mark for the words that fit none', async () => {
    const [sheet] = piecesOf(await printItem(`{layout: ${layout}, ${plural}}`))
    expect(sheet!.kind).toBe('board')
    expect(sheet!.text).toEqual(['add s', 'add es', '?'])
  })

  it('has key words in their place, marked where the teacher wants that', async () => {
    const [sheet] = piecesOf(await printItem(`{layout: ${layout}, ${plural}, headers: key word, marks: all}`))
    expect(sheet!.text).toEqual(['gnat', 'moth', '?'].map(() => expect.any(String)))
    expect(marshWords).toContain(sheet!.text[0])
    expect(sheet!.text.at(-1)).toBe('?')
    expect(sheet!.fontPt).toBeGreaterThan(14)
  })

  it('is the same sheet in every copy', async () => {
    const sheets = piecesOf(await printItem(`{layout: ${layout}, ${plural}, copies: 3}`))
    expect(sheets).toHaveLength(3)
    expect(new Set(sheets.map(({ art }) => JSON.stringify(art.slice(0, 2)))).size).toBe(1)
  })

  it('leaves no trace of the words to be sorted', async () => {
    const [sheet] = piecesOf(await printItem(`{layout: ${layout}, ${plural}}`))
    const said = sheet!.art.flatMap(({ art }) => art.text.map(run => run.text)).join(' ')
    // The set mark names the plan, Along the marsh.
    const others = marshWords.filter(word => word !== 'marsh')
    for (const word of others) expect(said.split(' ')).not.toContain(word)
  })

  it('says so where the words support no sort', async () => {
    expect(await problemsOf(`{layout: ${layout}, words: [reed, moth]}`)).toContain('support no sort')
  })
})

describe('headings that have no room in large print', () => {
  const large = '{layout: sort-record, sort: how the word begins, size: large'

  it('are key words where the plan leaves that open, which is said', async () => {
    const printed = await printItem(`${large}}`)
    expect(piecesOf(printed)[0]!.text).not.toContain('three-letter blend')
    expect(printed.notes.join(' ')).toContain('Laid out with headers: key word')
  })

  it('are an error with what would do where the plan names titles', async () => {
    expect(await problemsOf(`${large}, headers: title}`)).toContain(
      'The words would fit with headers: key word',
    )
  })
})

describe('a sort mat', () => {
  it('has nothing below its headings, and tells how wide a card may be', async () => {
    const printed = await printItem(`{layout: sort-mat, ${plural}}`)
    expect(writingLines(piecesOf(printed)[0]!)).toEqual([])
    const widest = Number(/Cards up to (\d+) mm wide/.exec(printed.notes.join(' '))![1])
    expect(widest).toBeLessThan(piecesOf(printed)[0]!.widthMm / 3)
    expect(widest).toBeGreaterThan(40)
  })
})

describe('a blind sort', () => {
  it('has a line more than its longest column has words, far enough apart to write on', async () => {
    const [sheet] = piecesOf(await printItem(`{layout: blind-sort, ${plural}}`))
    const tops = writingLines(sheet!)
    // Eight words take s; the first line is for the name.
    expect(tops).toHaveLength(1 + 8 + 1)
    for (const [index, top] of tops.slice(2).entries())
      expect(top - tops[index + 1]!).toBeGreaterThanOrEqual(9)
  })

  it('goes with the words to read aloud, their clues, and where each belongs', async () => {
    const printed = await printItem(`{layout: blind-sort, ${plural}}`)
    expect(kindsOf(printed)).toEqual(['pieces', 'answers', 'cover'])
    const lines = linesOn(printed, 'answers')
    expect(lines.some(line => / \| wren \| a tiny bird with a loud song \| add s$/.test(line))).toBe(true)
    const answers = printed.answerData as readonly { prompt: string; answer: string }[]
    expect(answers.map(({ prompt }) => prompt).toSorted()).toEqual(marshWords.toSorted())
    expect(answers.find(({ prompt }) => prompt === 'leaf')!.answer).toBe('?')
    expect(answers.find(({ prompt }) => prompt === 'perch')!.answer).toContain('add es')
  })

  it('does not read the key words, which the children see', async () => {
    const printed = await printItem(`{layout: blind-sort, ${plural}, headers: key word}`)
    const shown = piecesOf(printed)[0]!.text.filter(text => text !== '?')
    const read = (printed.answerData as readonly { prompt: string }[]).map(({ prompt }) => prompt)
    expect(shown).toHaveLength(2)
    for (const word of shown) expect(read).not.toContain(word)
    expect(linesOn(printed, 'answers').join(' ')).toContain(`“${shown[0]}” for add s`)
  })

  it('reads in an order that gives no column away', async () => {
    const printed = await printItem(`{layout: blind-sort, ${plural}}`)
    const columns = (printed.answerData as readonly { answer: string }[]).map(({ answer }) => answer)
    expect(columns).not.toEqual(columns.toSorted())
  })

  it('says so where its lines would be too close to write on', async () => {
    const many = Array.from(
      { length: 60 },
      (_, at) => `${'bcdfghjklm'[at % 10]}${'ao'[Math.floor(at / 10) % 2]}${'bdgnpt'[Math.floor(at / 10)]}`,
    )
    const plan = marshWithClues.replace(
      /words:\n[\s\S]*marks:/,
      `words: [${[...new Set(many)].join(', ')}]\nmarks:`,
    )
    expect(await problemsOf('{layout: blind-sort}', plan)).toMatch(
      /lines of a column would be [\d.]+ mm apart/,
    )
  })
})

describe('a sort record', () => {
  it('has lines for the words, and asks what they share', async () => {
    const [sheet] = piecesOf(await printItem(`{layout: sort-record, ${plural}}`))
    expect(writingLines(sheet!)).toHaveLength(8 + 1 + 2)
    const said = sheet!.art.flatMap(({ art }) => art.text.map(run => run.text)).join(' ')
    expect(said).toContain('What do the words in each column share?')
  })
})
