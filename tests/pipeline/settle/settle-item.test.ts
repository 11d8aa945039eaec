import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import type { PrintedItem } from '../../../src/files/printed-plan.js'
import { putPlanOnSheets } from '../../../src/pipeline.js'
import type { Problem } from '../../../src/problems.js'
import { folderWith } from '../plan-folder.js'
import { sharedWork } from '../shared-work.js'

const plan = `title: Along the marsh
words: [reed, marsh, shrub, thrush, stream, spring, gnat, wren, leaf, moth, frog, perch, snake, duck, bridge, finch, pond, mud, heron, otter, nest, egg, wing, fish, fern, toad, newt, ant, fly, marshmallow]
print:
`

interface Drawn {
  readonly items: readonly PrintedItem[]
  readonly problems: readonly Problem[]
}

async function draw(item: string, more = '', moreWords = ''): Promise<Drawn> {
  const written = plan.replace('words: [', `words: [${moreWords}`)
  const folder = folderWith({ 'marsh.yaml': `${written}  - ${item}\n${more}` })
  const drawn = await putPlanOnSheets({ planFile: join(folder, 'marsh.yaml'), kept: sharedWork })
  return { items: drawn.ok ? drawn.value.items.map(each => each.printed) : [], problems: drawn.problems }
}

const noteOf = ({ items: [item] }: Drawn) => item?.notes.find(note => note.startsWith('Laid out with'))
const boardOf = ({ items: [item] }: Drawn) => item!.sheets[0]!.pieces[0]!.piece.cells!
const placesOn = (item: PrintedItem) => item.sheets[0]!.pieces.length
const adviceOf = ({ problems }: Drawn) => problems.map(problem => problem.advice)

describe('words that do not fit', () => {
  it('get larger cards where the plan leaves their number open, with a note', async () => {
    const drawn = await draw('{layout: word-cards, size: x-height 11 mm}')
    expect(drawn.problems).toEqual([])
    expect(noteOf(drawn)).toBe('Laid out with 1 across and 6 down, so that words in large print have room.')
    expect(placesOn(drawn.items[0]!)).toBe(6)
    expect(drawn.items[0]!.sheets[0]!.pieces[0]!.piece.xHeightMm).toBeCloseTo(11, 2)
  })

  it('are an error where the teacher chose the number, which says what number would do', async () => {
    const held = 'layout: word-cards, orientation: portrait, cover: no'
    const drawn = await draw(`{${held}, across: 6, down: 8}`)
    expect(adviceOf(drawn)).toEqual([
      expect.stringMatching(/^The words would fit with \d across and \d+ down;/),
    ])
    const [, across, down] = /with (\d) across and (\d+) down/.exec(adviceOf(drawn)[0]!)!
    expect((await draw(`{${held}, across: ${across}, down: ${down}}`)).problems).toEqual([])
  })

  it('are an error on cards of the teacher’s own size, which says how many of what size would hold them', async () => {
    const [advice] = adviceOf(await draw('{layout: word-cards, card: 35 x 20 mm}'))
    expect(advice).toMatch(/\d across and \d+ down in place of "card"/)
  })

  it('get fewer cells on a board, or the paper turned, where the teacher chose neither', async () => {
    const drawn = await draw('{layout: bingo, boards: 2, size: 48 pt}')
    expect(drawn.problems).toEqual([])
    expect(boardOf(drawn).length).toBeLessThan(5)
    expect(noteOf(drawn)).toContain(`grid: ${boardOf(drawn).length}x${boardOf(drawn).length}`)
  })

  it('are an error on a grid of the teacher’s own, which says what grid would do', async () => {
    const drawn = await draw('{layout: bingo, boards: 2, grid: 5x5, size: 40 pt}')
    const [, grid, turned] = /with grid: (\dx\d)( and orientation: landscape)?;/.exec(adviceOf(drawn)[0]!)!
    const orientation = turned === undefined ? '' : ', orientation: landscape'
    const again = await draw(`{layout: bingo, boards: 2, grid: ${grid}, size: 40 pt${orientation}}`)
    expect(again.problems).toEqual([])
  })

  it('say plainly where nothing would do', async () => {
    const drawn = await draw('{layout: word-cards, paper: index 3x5, size: x-height 60 mm}')
    expect(adviceOf(drawn)).toEqual([expect.stringContaining('leave that word out')])
  })
})

describe('large print', () => {
  it('of a group is laid out anew where the class’s own count is too close for it', async () => {
    const { items, problems } = await draw(
      '{layout: word-cards, across: 2, down: 6}',
      'groups: [{name: Otters, words: [marshmallow, mud], size: 60 pt}]\n',
    )
    expect(problems).toEqual([])
    expect(items[0]!.sheets[0]!.pieces).toHaveLength(12)
    const [piece] = items[1]!.sheets[0]!.pieces
    expect(piece!.piece.widthMm).toBeGreaterThan(150)
    expect(piece!.piece.fontPt).toBeCloseTo(60, 1)
  })

  it('always says that the specialist decides', async () => {
    for (const size of ['large', '24 pt', 'x-height 6 mm', '{for: {acuity: 20/200, distance: 40 cm}}']) {
      const [item] = (await draw(`{layout: word-cards, size: ${size}}`)).items
      const said = 'the child’s own vision specialist decides'
      expect(item!.notes.join(' ')).toContain(said)
      const cover = item!.sheets.find(sheet => sheet.kind === 'cover')!
      expect(cover.furniture.flatMap(({ art }) => art.text.map(run => run.text)).join(' ')).toContain(said)
    }
    expect((await draw('{layout: word-cards}')).items[0]!.notes.join(' ')).not.toContain('specialist')
  })
})

describe('words whose letters were spread for an outline', () => {
  it('are named, with how far and why', async () => {
    const marks = 'marks: [{pattern: consonant-digraph, inside blends: no, outline: box}]\n'
    const notes = (await draw('{layout: word-cards, words: [thrush, reed]}', marks)).items[0]!.notes
    expect(notes.join('\n')).toMatch(
      /"thrush" is opened by \d\.\d mm in all at the edges of outlines, so that these keep off the letters beside them\./,
    )
  })
})

describe('type and marks on colours', () => {
  const marks = 'marks: [{pattern: consonant-digraph, inside blends: no, color: "#00618a"}]\n'

  it('too faint for their ground are told once, where the colours stand', async () => {
    const { problems } = await draw(
      '{layout: word-cards, contrast: white on black}\n  - {layout: bingo, boards: 2, contrast: white on black}',
      marks,
    )
    expect(problems.map(problem => problem.message)).toEqual([
      'the colour #00618a of consonant-digraph has a contrast of 3.07 to 1 with #000000',
    ])
  })

  it('are told at the group that asks for them', async () => {
    const groups = 'groups:\n  - {name: Otters, words: [mud, pond], contrast: "#777777 on white"}\n'
    const { problems } = await draw('{layout: word-cards}', groups)
    expect(problems).toMatchObject([
      { place: { line: 6 }, message: 'type in #777777 on #ffffff has a contrast of 4.47 to 1' },
    ])
  })

  it('are weighed against the card’s own colour, which is not printed', async () => {
    const { items, problems } = await draw('{layout: word-cards, contrast: "black on #8a8a8a stock"}')
    expect(problems.map(problem => problem.message)).toEqual([
      'type in #000000 on #8a8a8a has a contrast of 6.08 to 1',
    ])
    const fills = items[0]!.sheets[0]!.pieces.flatMap(({ piece }) =>
      piece.art.flatMap(({ art }) => art.shapes.map(shape => (shape.kind === 'path' ? shape.fill : ''))),
    )
    expect(fills).not.toContain('#8a8a8a')
  })
})

describe('a character that the face lacks', () => {
  it('is an error that names the word and the character, never an empty box', async () => {
    const { items, problems } = await draw(
      '{layout: word-cards, font: opendyslexic, words: [ĝardeno, reed]}',
      '',
      'ĝardeno, ',
    )
    expect(items).toEqual([])
    expect(problems.map(problem => problem.message)).toEqual([
      'the font OpenDyslexic has no "ĝ", which stands in "ĝardeno"',
    ])
  })

  it('is told in the names of items too, all of one name together', async () => {
    const { problems } = await draw('{layout: word-cards, name: 沼の鳥}')
    expect(problems.map(problem => problem.message)).toEqual([
      'the font Andika has no "沼", "の", "鳥", which stand in "沼の鳥"',
    ])
  })
})
