import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import type { PrintedItem } from '../../src/files/printed-plan.js'
import { putPlanOnSheets } from '../../src/pipeline.js'
import { formatProblem } from '../../src/problems.js'
import { folderWith, marshPlan } from '../pipeline/plan-folder.js'
import { sharedWork } from '../pipeline/shared-work.js'

const words = [
  'reed',
  'marsh',
  'shrub',
  'thrush',
  'stream',
  'spring',
  'gnat',
  'wren',
  'leaf',
  'moth',
  'frog',
  'perch',
]

async function print(item: string, plan = marshPlan): Promise<PrintedItem> {
  const folder = folderWith({ 'marsh.yaml': `${plan}  - ${item}\n` })
  const drawn = await putPlanOnSheets({ planFile: join(folder, 'marsh.yaml'), kept: sharedWork })
  if (!drawn.ok) throw new Error(drawn.problems.map(formatProblem).join('\n'))
  return drawn.value.items[0]!.printed
}

const pieces = (item: PrintedItem) =>
  item.sheets.filter(sheet => sheet.side === 'front').flatMap(sheet => sheet.pieces.map(({ piece }) => piece))
const kinds = (item: PrintedItem) => [...new Set(item.sheets.map(sheet => sheet.kind))]
const textOn = (item: PrintedItem, kind: string) =>
  item.sheets
    .filter(sheet => sheet.kind === kind)
    .flatMap(sheet => sheet.furniture.flatMap(({ art }) => art.text.map(run => run.text)))

describe('word-cards', () => {
  it('print one card a word, its text the word alone', async () => {
    const item = await print('{layout: word-cards}')
    expect(pieces(item).map(piece => piece.text)).toEqual(words.map(word => [word]))
  })

  it('print as many copies as asked, numbered', async () => {
    const item = await print('{layout: word-cards, copies: 3}')
    expect(pieces(item)).toHaveLength(36)
    expect(
      pieces(item)
        .filter(piece => piece.number === 1)
        .map(piece => piece.copy),
    ).toEqual([1, 2, 3])
  })

  it('mark the letters that the plan asks for', async () => {
    const item = await print('{layout: word-cards}')
    const marksOn = (word: string) =>
      pieces(item)
        .find(piece => piece.text[0] === word)!
        .marks.map(mark => mark.letters)
    expect(marksOn('marsh')).toEqual(['sh'])
    expect(marksOn('gnat')).toEqual(['gn'])
    expect(marksOn('frog')).toEqual([])
  })

  it('mark nothing where the item says so', async () => {
    const item = await print('{layout: word-cards, marks: none}')
    expect(pieces(item).flatMap(piece => piece.marks)).toEqual([])
  })

  it('have one size of type over the set', async () => {
    const sizes = new Set(pieces(await print('{layout: word-cards}')).map(piece => piece.fontPt))
    expect(sizes.size).toBe(1)
  })

  it('are exactly as large as the teacher names', async () => {
    expect(pieces(await print('{layout: word-cards, size: 24 pt}'))[0]!.fontPt).toBeCloseTo(24, 1)
    expect(pieces(await print('{layout: word-cards, size: x-height 6 mm}'))[0]!.xHeightMm).toBeCloseTo(6, 2)
  })

  const setMarks = async (item: string) =>
    pieces(await print(item)).map(piece =>
      piece.art.flatMap(({ art }) => art.text).find(run => run.text.includes(' of 12')),
    )

  it('carry a small set mark', async () => {
    const marks = await setMarks('{layout: word-cards}')
    expect(marks.map(mark => mark?.text)).toEqual(
      words.map((_, index) => `Along the marsh · word cards · ${index + 1} of 12`),
    )
    expect(marks[0]!.sizeMm).toBeLessThan(3)
  })

  it('carry the same small mark in large print, since it is not for the child', async () => {
    const [normal, large] = [
      await setMarks('{layout: word-cards}'),
      await setMarks('{layout: word-cards, size: 24 pt}'),
    ]
    expect(large.map(mark => [mark?.text, mark?.sizeMm])).toEqual(
      normal.map(mark => [mark?.text, mark?.sizeMm]),
    )
  })

  it('have a corner to cut off in large print, the top right one, and none else', async () => {
    const slanting = async (item: string) => {
      const [sheet] = (await print(item)).sheets
      const [first] = sheet!.pieces
      const right = first!.xMm + first!.piece.widthMm
      return sheet!.cuts
        .filter(cut => cut.x1Mm !== cut.x2Mm && cut.y1Mm !== cut.y2Mm)
        .filter(cut => Math.abs(cut.x2Mm - right) < 1e-6)
        .map(cut => [cut.y1Mm - first!.yMm, cut.x1Mm < cut.x2Mm, cut.y1Mm < cut.y2Mm])[0]
    }
    expect(await slanting('{layout: word-cards, size: large}')).toEqual([0, true, true])
    expect(await slanting('{layout: word-cards}')).toBeUndefined()
  })

  it('come with a cover that has the key, the ruler and the cautions', async () => {
    const text = textOn(await print('{layout: word-cards}'), 'cover').join(' ')
    for (const part of [
      'consonant digraph',
      'latches the blade',
      '100',
      'Small pieces are not for children under three',
    ])
      expect(text).toContain(part)
  })

  it('have a back for every front, with the word’s answer, in its front’s place turned over', async () => {
    const item = await print('{layout: word-cards, back: answer}')
    const [front, back] = item.sheets
    expect([front!.side, back!.side]).toEqual(['front', 'back'])
    const at = (sheet: typeof front, id: string) => sheet!.pieces.find(({ piece }) => piece.id === id)!
    const id = front!.pieces[0]!.piece.id
    expect(at(back, id).xMm + at(back, id).piece.widthMm).toBeCloseTo(front!.widthMm - at(front, id).xMm, 6)
    const text = at(back, id).piece.art.flatMap(({ art }) => art.text.map(run => run.text))
    expect(text).toContain('3 sounds: r·ee·d')
  })
})

describe('open-sort', () => {
  it('prints every word unmarked, in an order of its own', async () => {
    const item = await print('{layout: open-sort}')
    const printed = pieces(item).map(piece => piece.text[0])
    expect([...printed].sort()).toEqual([...words].sort())
    expect(printed).not.toEqual(words)
    expect(pieces(item).flatMap(piece => piece.marks)).toEqual([])
  })

  it('keeps the sorts that hold on a page of its own', async () => {
    const item = await print('{layout: open-sort}')
    expect(kinds(item)).toEqual(['pieces', 'answers', 'cover'])
    expect(textOn(item, 'answers').some(line => line.includes('marsh'))).toBe(true)
  })
})

describe('bingo', () => {
  it('prints one board a piece with its cells, free in the middle', async () => {
    const item = await print('{layout: bingo, boards: 5, grid: 3x3, free: yes}')
    expect(pieces(item)).toHaveLength(5)
    for (const { cells, text, kind } of pieces(item)) {
      expect(kind).toBe('board')
      expect(cells!.flat().filter(cell => cell === null)).toHaveLength(1)
      expect(cells![1]![1]).toBeNull()
      expect(text).toEqual(cells!.flat().filter(cell => cell !== null))
    }
  })

  it('has no free space where the teacher wants none', async () => {
    const item = await print('{layout: bingo, boards: 2, grid: 3x3, free: no}')
    expect(pieces(item)[0]!.cells!.flat()).not.toContain(null)
  })

  it('chooses a grid that the words fill', async () => {
    expect(pieces(await print('{layout: bingo, boards: 2}'))[0]!.cells).toHaveLength(3)
  })

  it('tells the caller the order and which board wins when', async () => {
    const item = await print('{layout: bingo, boards: 5, grid: 3x3, free: yes}')
    const { callOrder, wins } = item.deal!
    expect([...callOrder].sort()).toEqual([...words].sort())
    expect(wins.map(win => win.board)).toEqual(pieces(item).map(piece => piece.id))
    const first = wins.reduce((a, b) => (b.call < a.call ? b : a))
    expect(textOn(item, 'caller')).toContain(`board ${Number(first.board.replace('board-', ''))}`)
  })
})

describe('call-cards', () => {
  it('print the word and its clue', async () => {
    const plan = marshPlan.replace('[reed,', '[{word: reed, clue: a tall grass},')
    const reed = pieces(await print('{layout: call-cards}', plan))[0]!
    expect(reed.text).toEqual(['reed'])
    expect(reed.art.flatMap(({ art }) => art.text.map(run => run.text))).toContain('a tall grass')
  })
})

describe('running text', () => {
  it('draws letters that stand in a face’s second file, each in its own shape', async () => {
    const clueShapes = async (clue: string) => {
      const plan = marshPlan.replace('[reed,', `[{word: reed, clue: ${clue}},`)
      const [first] = pieces(await print('{layout: call-cards, cover: no}', plan))
      return first!.art.flatMap(({ art }) => art.shapes.map(shape => (shape.kind === 'path' ? shape.d : '')))
    }
    // A face that lacks them would draw the same empty box for both.
    expect(await clueShapes('ŋ')).not.toEqual(await clueShapes('ő'))
  })
})

describe('key', () => {
  it('shows only the marks that the words use, in the teacher’s words', async () => {
    const plan = marshPlan.replace(
      '  - pattern: vowel-team',
      '  - {letters: zz, label: never}\n  - label: two vowels\n    pattern: vowel-team',
    )
    const text = textOn(await print('{layout: key}', plan), 'key')
    expect(text).toContain('two vowels')
    expect(text).not.toContain('never')
  })
})

describe('marked-list and blank-list', () => {
  const wordPlaces = (item: PrintedItem) =>
    item.sheets.flatMap((sheet, page) =>
      sheet.furniture.flatMap(({ art, xMm, yMm }) =>
        art.text
          .filter(run => words.includes(run.text))
          .map(run => ({
            page,
            word: run.text,
            x: (xMm + run.xMm).toFixed(1),
            y: (yMm + run.baselineMm).toFixed(2),
            size: run.sizeMm,
          })),
      ),
    )

  it('show every word in the same place and size', async () => {
    const [marked, blank] = [await print('{layout: marked-list}'), await print('{layout: blank-list}')]
    const withoutX = (item: PrintedItem) => wordPlaces(item).map(({ x: _x, ...place }) => place)
    expect(wordPlaces(blank).map(place => place.word)).toEqual(words)
    expect(withoutX(marked)).toEqual(withoutX(blank))
  })

  it('tell sounds, part of speech and plural on the teacher’s copy', async () => {
    const text = textOn(await print('{layout: marked-list}'), 'list')
    for (const fact of ['3: m·ar·sh', 'marshes (add es', 'leaves (f to v'])
      expect(text.some(run => run.startsWith(fact))).toBe(true)
  })

  it('say on the teacher’s copy that a guess is one', async () => {
    const text = textOn(await print('{layout: marked-list}', marshPlan.replace('reed', 'zorpish')), 'list')
    expect(text.join(' ')).toContain('(a guess)')
  })
})

describe('the key of a set', () => {
  const footOf = (item: PrintedItem) =>
    item.sheets[0]!.furniture.filter(({ yMm }) => {
      const lowest = Math.max(...item.sheets[0]!.pieces.map(piece => piece.yMm + piece.piece.heightMm))
      return yMm > lowest
    })

  it('stands on a strip under the pieces of every sheet where the teacher wants it there', async () => {
    const item = await print('{layout: word-cards, key: strip, across: 2, down: 2}')
    const text = footOf(item).flatMap(({ art }) => art.text.map(run => run.text))
    expect(text).toEqual(expect.arrayContaining(['consonant digraph', 'silent letters', 'vowel team']))
    expect(textOn(item, 'cover')).not.toContain('consonant digraph')
  })

  it('takes room at the foot alone, and backs lie behind their fronts all the same', async () => {
    for (const flip of ['long edge', 'short edge']) {
      const { sheets } = await print(
        `{layout: word-cards, key: strip, across: 2, down: 2, back: name, flip: ${flip}}`,
      )
      const [front, back] = sheets
      const top = Math.min(...front!.pieces.map(piece => piece.yMm))
      const bottom = Math.max(...front!.pieces.map(piece => piece.yMm + piece.piece.heightMm))
      expect(top).toBeCloseTo(10, 1)
      expect(front!.heightMm - bottom).toBeGreaterThan(top + 5)
      for (const { piece, xMm, yMm } of front!.pieces) {
        const behind = back!.pieces.find(other => other.piece.id === piece.id)!
        const turned = flip === 'short edge'
        expect(behind.yMm).toBeCloseTo(turned ? front!.heightMm - yMm - piece.heightMm : yMm, 6)
        expect(behind.xMm).toBeCloseTo(turned ? xMm : front!.widthMm - xMm - piece.widthMm, 6)
      }
    }
  })

  it('and the cover are left out where the teacher says so', async () => {
    expect(kinds(await print('{layout: word-cards, cover: no}'))).toEqual(['pieces'])
    expect(textOn(await print('{layout: word-cards, key: none}'), 'cover')).not.toContain('consonant digraph')
  })
})
