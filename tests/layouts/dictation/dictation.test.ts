import { describe, expect, it } from 'vitest'
import { kindsOf, linesOn, piecesOf, printItem, problemsOf } from '../print-item.js'

const plan = `title: Along the marsh
class: Room 7, Heron Lane School
words:
  - {word: snail, sentence: A snail sat on a leaf., clue: it carries its house}
  - {word: crane, sentence: "The crane, asleep, stands on one leg beside the pond all night."}
  - lake
marks:
  - {pattern: silent-e, label: quiet e}
  - pattern: vowel-team
  - pattern: beginning-blend
  - {part of speech: noun}
print:
`
const item = '{layout: dictation, copies: 2}'

/** Tops of the lines to write on, in mm of the piece, from the top down. */
function writingLines(piece: ReturnType<typeof piecesOf>[number]): readonly number[] {
  const tops = piece.art.flatMap(({ art, yMm }) =>
    art.shapes.flatMap(shape =>
      shape.kind === 'path' && shape.fill === '#737373'
        ? [
            yMm +
              Math.min(
                ...shape.d
                  .match(/-?\d+(?:\.\d+)?/g)!
                  .map(Number)
                  .filter((_, at) => at % 2 === 1),
              ),
          ]
        : [],
    ),
  )
  return tops.toSorted((a, b) => a - b)
}

describe('dictation sheets', () => {
  const printedFor = async (keys: string, more = '') => {
    const printed = await printItem(`{layout: dictation${keys}}`, `${more}${plan}`)
    return piecesOf(printed).map(({ id }) => id)
  }

  it('are one for each child of the class, two on a sheet', async () => {
    const printed = await printItem('{layout: dictation}', `children: 5\n${plan}`)
    expect(piecesOf(printed)).toHaveLength(5)
    expect(printed.sheets.filter(({ kind }) => kind === 'pieces')).toHaveLength(3)
  })

  it('fill a sheet where the plan does not say how many children there are', async () => {
    expect(await printedFor('')).toEqual(['board-01', 'board-02'])
    expect(await printedFor(', size: large')).toEqual(['board-01'])
  })

  it('are as many as the item says, or as many copies', async () => {
    expect(await printedFor(', children: 3', 'children: 5\n')).toHaveLength(3)
    expect(await printedFor(', copies: 4', 'children: 5\n')).toEqual([
      'board-01',
      'board-01-copy-2',
      'board-01-copy-3',
      'board-01-copy-4',
    ])
    expect(await printedFor(', children: 3, copies: 2')).toHaveLength(6)
  })
})

describe('a dictation of many words', () => {
  const words = [...'bdfghlmnprst'].flatMap(first => [...'aeiou'].map(vowel => `${first}${vowel}t`))
  const long = plan.replace(/words:\n[\s\S]*?marks:/, `words: [${words.join(', ')}]\nmarks:`)
  const partsFor = async (keys: string, of = long) => {
    const printed = await printItem(`{layout: dictation, children: 1${keys}}`, of)
    return piecesOf(printed)
  }

  it('is written in as many parts as its lines need, numbered through', async () => {
    const parts = await partsFor('')
    expect(parts.map(({ id }) => id)).toEqual(['board-01-part-1', 'board-01-part-2', 'board-01-part-3'])
    expect(parts.flatMap(({ text }) => text).filter(text => text !== 'Name')).toEqual(
      words.map((_, index) => String(index + 1)),
    )
    for (const part of parts) {
      const tops = writingLines(part)
      for (const [index, top] of tops.slice(1).entries()) expect(top - tops[index]!).toBeGreaterThanOrEqual(9)
    }
  })

  it('has its answers through all parts', async () => {
    const printed = await printItem('{layout: dictation}', long)
    expect(linesOn(printed, 'caller')).toContain('60 | tut')
  })

  it('is in as many parts as the item says', async () => {
    expect(await partsFor(', parts: 2', plan)).toHaveLength(2)
  })

  it('has lines in large print that are long enough for its words, however few sheets are wished for', async () => {
    const printed = await printItem('{layout: dictation, size: 28 pt}', `children: 6\n${plan}`)
    const [first] = piecesOf(printed)
    expect(first!.widthMm).toBeGreaterThan(60)
  })
})

describe('a dictation sheet', () => {
  it('has a line for the name, one for each word, and as many for a sentence as a child’s hand needs', async () => {
    const [sheet, other] = piecesOf(await printItem(item, plan))
    const tops = writingLines(sheet!)
    // 23 letters of 5 mm take two lines of a half sheet, 64 letters four.
    expect(tops).toHaveLength(1 + 3 + 2 + 4)
    for (const [index, top] of tops.slice(1).entries()) expect(top - tops[index]!).toBeGreaterThanOrEqual(9)
    expect(other!.copy).toBe(2)
  })

  it('shows numbers and never a word', async () => {
    const [sheet] = piecesOf(await printItem(item, plan))
    expect(sheet!.text).toEqual(['Name', '1', '2', '3'])
  })

  it('leaves the sentences out where the teacher says so', async () => {
    const printed = await printItem('{layout: dictation, sentences: no}', plan)
    expect(writingLines(piecesOf(printed)[0]!)).toHaveLength(4)
    expect(linesOn(printed, 'caller').join(' ')).not.toContain('A snail sat')
  })

  it('goes with the list to read aloud: number, word, clue and sentence', async () => {
    const printed = await printItem(item, plan)
    expect(kindsOf(printed)).toEqual(['pieces', 'caller', 'answers', 'list', 'cover'])
    const read = linesOn(printed, 'caller')
    expect(read).toContain('1 | snail | it carries its house | A snail sat on a leaf.')
    expect(read).toContain('3 | lake')
  })

  it('counts a point for each marked place of a word and one for the whole', async () => {
    const lines = linesOn(await printItem(item, plan), 'answers')
    expect(lines).toContain('1 | snail | ai (vowel team), sn (beginning blend), the word | 3')
    expect(lines).toContain('2 | crane | a_e (quiet e), cr (beginning blend), the word | 3')
    expect(lines).toContain('3 | lake | a_e (quiet e), the word | 2')
    expect(lines.join(' ')).toContain('8 points in all')
  })

  it('counts words alone where the plan marks nothing, and says why', async () => {
    const plain = plan.replace(/marks:[\s\S]*print:/, 'print:')
    const printed = await printItem(item, plain)
    expect(linesOn(printed, 'answers').join(' ')).toContain('The plan marks no pattern')
    expect(linesOn(printed, 'answers')).toContain('3 | lake | the word | 1')
  })

  it('has a record with a column for each pattern and rows for a class, all empty', async () => {
    const lines = linesOn(await printItem(item, plan), 'list')
    expect(lines.join(' ').replaceAll(' | ', ' ')).toContain('quiet e, of 2')
    expect(lines.join(' ')).toContain('the tool keeps nothing of it')
  })

  it('gives its answers to a machine', async () => {
    expect((await printItem(item, plan)).answerData).toEqual([
      { prompt: '1', answer: 'snail', sentence: 'A snail sat on a leaf.' },
      {
        prompt: '2',
        answer: 'crane',
        sentence: 'The crane, asleep, stands on one leg beside the pond all night.',
      },
      { prompt: '3', answer: 'lake' },
    ])
  })

  it('warns of a sentence without its word', async () => {
    const without = plan.replace('A snail sat on a leaf.', 'Snails sat on a leaf.')
    expect(await problemsOf(item, without)).toContain('the sentence of "snail" does not hold the word itself')
    expect(await problemsOf(item, plan)).toBe('')
  })

  it('takes fewer sheets side by side where the lines need the length', async () => {
    const long = plan.replace(
      '  - lake\n',
      Array.from(
        { length: 7 },
        (_, at) =>
          `  - {word: ${'bcdfghjklmn'[at]}ake, sentence: "We saw ${'bcdfghjklmn'[at]}ake there at noon."}\n`,
      ).join(''),
    )
    const [sheet] = piecesOf(await printItem(item, long))
    const tops = writingLines(sheet!)
    for (const [index, top] of tops.slice(1).entries())
      expect(top - tops[index]!).toBeGreaterThanOrEqual(8.99)
    expect(sheet!.widthMm).toBeGreaterThan(150)
  })

  it('says so where the parts that the item says have no room for its lines', async () => {
    const many = plan.replace(
      '  - lake\n',
      Array.from(
        { length: 60 },
        (_, at) =>
          `  - ${'bcdfghjklm'[at % 10]}${'aeiou'[at % 5]}${'bdgnpt'[Math.floor(at / 10)]}${'sz'[at % 2]}\n`,
      ).join(''),
    )
    expect(await problemsOf('{layout: dictation, parts: 1}', many)).toMatch(
      /the \d+ lines of the sheet would be [\d.]+ mm apart/,
    )
  })
})
