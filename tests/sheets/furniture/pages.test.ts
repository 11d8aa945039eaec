import { describe, expect, it } from 'vitest'
import { BAG_LABEL, storageLabelSheets } from '../../../layouts/bag-labels/storage-labels.js'
import { calibrationSheets, scaleCentres } from '../../../layouts/calibration/calibration-sheets.js'
import { checklistsTogether } from '../../../layouts/checklist/checklist-slips.js'
import { type Box, boxContains, type Size } from '../../../src/geometry.js'
import type { PlacedArt } from '../../../src/pieces/piece.js'
import { imposeBacks } from '../../../src/sheets/backs.js'
import { planCuts } from '../../../src/sheets/cutting-plan.js'
import { behind, turnedSides } from '../../../src/sheets/flip.js'
import { coverColumn, coverSheets } from '../../../src/sheets/furniture/cover.js'
import { divideSheet, type Grid, printableBox } from '../../../src/sheets/grid.js'
import { imposeFronts } from '../../../src/sheets/impose.js'
import { defaultMargins } from '../../../src/sheets/margins.js'
import { papers } from '../../../src/sheets/papers.js'
import { pieceBox, type Sheet } from '../../../src/sheets/sheet.js'
import { paperNamed } from '../paper-named.js'
import { sampleLettering, samplePieces, somewhere } from '../sample-pieces.js'

const letter: Size = { widthMm: 215.9, heightMm: 279.4 }
const words = 'reed marsh heron pond frog mud thread spring nest wing bulrush pathway'.split(' ')
const lettering = sampleLettering

describe('the cover', () => {
  const grid = gridOf({ kind: 'count', across: 3, down: 4 })
  const cover = (sheetSize: Size) =>
    coverSheets({
      planTitle: 'Along the marsh',
      title: 'Word cards, Otters',
      subtitles: ['Along the marsh · Room 7, Heron Lane School'],
      entries: [
        { name: 'word cards', holds: '12 cards', sheetsOfCard: 1 },
        { name: 'bingo', holds: '24 boards', sheetsOfCard: 24 },
      ],
      cuttings: [{ name: 'word cards', grid, plan: planCuts({ grid, order: 'stack', cut: 'lines' }) }],
      words,
      lettering,
      sheetSize,
      room: roomOf(sheetSize),
    })

  it('names title, class, what is in it and how many sheets of card that takes', () => {
    const text = textOf(cover(letter))
    for (const part of [
      'Along the marsh',
      'Room 7, Heron Lane School',
      'Otters',
      'In all: 25 sheets of card',
    ])
      expect(text).toContain(part)
    for (const word of words) expect(text).toContain(word)
  })

  it('is set in two columns on paper that is wide, and then takes a single page', () => {
    const landscape = { widthMm: 297, heightMm: 210 }
    const pages = cover(landscape)
    expect(pages).toHaveLength(1)
    expectWithin(pages[0]!.furniture, roomOf(landscape), 1)
    const column = coverColumn(roomOf(landscape))
    const right = pages[0]!.furniture.filter(({ xMm }) => xMm > column.xMm + column.widthMm)
    expect(right.length).toBeGreaterThan(0)
    for (const { xMm, art } of pages[0]!.furniture.filter(placed => !right.includes(placed)))
      expect(xMm + art.widthMm).toBeLessThanOrEqual(column.xMm + column.widthMm + 1)
  })

  it('carries the usual cautions, local rules first', () => {
    const text = textOf(cover(letter))
    const places = ['own rules', 'latches the blade', 'works the laminator', 'sharp', 'under three'].map(
      part => text.indexOf(part),
    )
    expect(places.every(place => place >= 0)).toBe(true)
    expect(places).toEqual(places.toSorted((a, b) => a - b))
  })

  it('says no numbers of its scales and of its cutting diagram to whoever hears it', () => {
    const said = cover(letter).flatMap(({ furniture }) => furniture.flatMap(({ art }) => art.text))
    expect(said.map(run => run.text).filter(text => /^(\d+|mm|in)$/.test(text))).toEqual([])
    expect(said.some(run => run.text.startsWith('Measure this'))).toBe(true)
  })

  it('draws the little sheet in one, so that none of its rows has to be painted for what lies over it', () => {
    const shapes = cover(letter).flatMap(({ furniture }) => furniture.map(({ art }) => art.shapes))
    const little = shapes.filter(all => all.some(shape => shape.kind === 'path' && shape.fill === '#e4e4e4'))
    expect(little.map(all => all.length)).toEqual([3])
  })

  it('carries the cutting plan and its number of cuts', () => {
    const text = textOf(cover(letter))
    expect(text).toContain('word cards: 9 straight cuts a pile')
    expect(text).toContain('1. Trim the outside edges of the pile: 4 cuts.')
  })

  it.each(papers.map(paper => [paper.name, paper] as const))('stays within the margins on %s', (_, paper) => {
    for (const sheet of cover(paper)) expectWithin(sheet.furniture, roomOf(paper), 1)
  })
})

describe('the calibration sheet', () => {
  it.each(['long edge', 'short edge'] as const)(
    'has its scales behind its crosses for a flip about the %s',
    flip => {
      for (const paper of papers) {
        for (const size of [paper, { widthMm: paper.heightMm, heightMm: paper.widthMm }]) {
          const crosses = scaleCentres(size)
          const turned = crosses.map(point =>
            behind({ ...point, widthMm: 0, heightMm: 0 }, size, turnedSides(flip, size)),
          )
          for (const point of turned) {
            const meets = crosses.some(
              other => Math.hypot(other.xMm - point.xMm, other.yMm - point.yMm) < 1e-9,
            )
            expect(meets).toBe(true)
          }
        }
      }
    },
  )

  it('has its scale numbered 0 to 6 mm both ways from the middle', () => {
    const [, back] = calibrationSheets({ lettering, sheetSize: letter, room: roomOf(letter) })
    const centre = scaleCentres(letter)[0]!
    const numbers = back.furniture.filter(placed => /^\d$/.test(placed.art.text[0]?.text ?? ''))
    const alongFoot = numbers.filter(placed => near(placed.yMm, centre.yMm + 6.5))
    for (const placed of alongFoot) {
      const fromMiddle = placed.xMm + placed.art.widthMm / 2 - centre.xMm
      expect(Math.abs(fromMiddle)).toBeCloseTo(Number(placed.art.text[0]!.text), 9)
    }
    expect(alongFoot).toHaveLength(7)
  })

  it('read as it says, brings the backs of that printer behind their fronts', () => {
    // A printer that puts everything on the back 1.2 mm too far left and 0.8 mm too high.
    const miss = { xMm: -1.2, yMm: -0.8 }
    const [front] = scaleCentres(letter)
    const hole = behind({ ...front!, widthMm: 0, heightMm: 0 }, letter, 'left and right')
    const middleOfScale = { xMm: front!.xMm + miss.xMm, yMm: front!.yMm + miss.yMm }
    const shift = { rightMm: hole.xMm - middleOfScale.xMm, downMm: hole.yMm - middleOfScale.yMm }
    expect(shift.rightMm).toBeCloseTo(1.2, 9)
    expect(shift.downMm).toBeCloseTo(0.8, 9)

    const grid = gridOf({ kind: 'count', across: 3, down: 4 })
    const pieces = samplePieces(12, 1, grid.pieceSize)
    const fronts = imposeFronts({ pieces, grid, order: 'rows', cut: 'lines', title: 'x' })
    const [back] = imposeBacks({ fronts, backOf: piece => piece, flip: 'long edge', shift, title: 'x' })
    for (const placed of back!.pieces) {
      const onPaper = { xMm: placed.xMm + miss.xMm, yMm: placed.yMm + miss.yMm }
      const itsFront = fronts[0]!.pieces.find(({ piece }) => piece.id === placed.piece.id)!
      const wanted = behind(pieceBox(itsFront), letter, 'left and right')
      expect(onPaper.xMm).toBeCloseTo(wanted.xMm, 6)
      expect(onPaper.yMm).toBeCloseTo(wanted.yMm, 6)
    }
  })

  it('is one front and one back, without pieces', () => {
    const sheets = calibrationSheets({ lettering, sheetSize: letter, room: roomOf(letter) })
    expect(sheets.map(sheet => [sheet.number, sheet.side, sheet.kind, sheet.pieces.length])).toEqual([
      [1, 'front', 'calibration', 0],
      [2, 'back', 'calibration', 0],
    ])
  })
})

describe('the checklist', () => {
  const request = (count: number, copies: number) => ({
    title: 'word cards, Otters',
    subtitles: ['Along the marsh'],
    entries: Array.from({ length: count }, (_, i) => `${i + 1} ${words[i % words.length]}`),
    copies,
    lettering,
    sheetSize: letter,
    room: roomOf(letter),
  })
  const checklist = (count: number, copies: number) => checklistsTogether([request(count, copies)])

  it('lays long lists beside long ones where that saves a page', () => {
    const mixed = [60, 2, 2, 60, 60, 2, 2, 60, 60, 2].map(count => request(count, 1))
    const sorted = [60, 60, 60, 60, 60, 2, 2, 2, 2, 2].map(count => request(count, 1))
    expect(checklistsTogether(mixed)).toHaveLength(checklistsTogether(sorted).length)
    const lines = checklistsTogether(mixed).flatMap(linesOf)
    expect(lines.filter(line => line === '60 pathway')).toHaveLength(5)
  })

  it.each([
    [12, 1],
    [24, 7],
    [300, 2],
  ])('lists each of %d pieces once in each of %d sets', (count, copies) => {
    const lines = checklist(count, copies).flatMap(linesOf)
    for (let number = 1; number <= count; number++) {
      const entry = `${number} ${words[(number - 1) % words.length]}`
      expect(lines.filter(line => line === entry)).toHaveLength(copies)
    }
  })

  it('puts its slips in the middle of the sheet, all of one height', () => {
    for (const { cuts } of checklist(24, 3)) {
      const upright = cuts.filter(cut => cut.x1Mm === cut.x2Mm).map(cut => cut.x1Mm)
      expect(Math.min(...upright) + Math.max(...upright)).toBeCloseTo(letter.widthMm)
      const level = [...new Set(cuts.filter(cut => cut.y1Mm === cut.y2Mm).map(cut => cut.y1Mm))].toSorted(
        (a, b) => a - b,
      )
      expect(level[0]! + level.at(-1)!).toBeCloseTo(letter.heightMm)
      const heights = level.slice(1).map((y, index) => y - level[index]!)
      expect(Math.max(...heights)).toBeCloseTo(Math.min(...heights))
    }
  })

  it('stays within the margins', () => {
    for (const sheet of [...checklist(24, 7), ...checklist(300, 2)])
      expectWithin(sheet.furniture, roomOf(letter), 0)
  })
})

describe('storage labels', () => {
  const grid = gridOf({ kind: 'card', size: BAG_LABEL })
  const sheets = (lines: readonly string[], count: number) =>
    storageLabelSheets({
      title: 'Along the marsh',
      labels: Array.from({ length: count }, () => ({
        what: 'Word cards',
        forWhom: 'Otters',
        from: 'Along the marsh',
        lines,
      })),
      grid,
      lettering,
    })

  it('fill a sheet before they begin the next', () => {
    const perSheet = grid.columns * grid.rows
    expect(sheets(['Otters'], perSheet + 1)).toHaveLength(2)
  })

  it('keep their text inside the label, however long it is', () => {
    const [sheet] = sheets(['Otters', words.join(' '), words.join(' '), words.join(' ')], 1)
    const label = { xMm: grid.originXMm, yMm: grid.originYMm, ...BAG_LABEL }
    expectWithin(sheet!.furniture, label, 0)
    expect(textOf([sheet!])).toContain('Word cards')
  })

  it('shout what is in the bag, then say for whom, then from which plan', () => {
    const [sheet] = sheets(words, 1)
    const sizes = ['Word cards', 'Otters', 'Along the marsh', words[0]!].map(
      text => sheet!.furniture.flatMap(({ art }) => art.text).find(run => run.text === text)!.sizeMm,
    )
    expect(sizes).toEqual(sizes.toSorted((a, b) => b - a))
    expect(new Set(sizes).size).toBe(4)
  })
})

function roomOf(size: Size): Box {
  return printableBox(size, defaultMargins(size, 'card'))
}

function gridOf(division: Parameters<typeof divideSheet>[0]['division']): Grid {
  const outcome = divideSheet({
    paper: paperNamed('letter')!,
    gapMm: 0,
    division,
    preferred: { columns: 3, rows: 4 },
    place: somewhere,
  })
  if (!outcome.ok) throw new Error('the grid does not fit')
  return outcome.value
}

function linesOf(sheet: Sheet): readonly string[] {
  return sheet.furniture.flatMap(({ art }) => art.text.map(run => run.text))
}

function textOf(sheets: readonly Sheet[]): string {
  return sheets.flatMap(linesOf).join(' ')
}

function expectWithin(furniture: readonly PlacedArt[], room: Box, slackMm: number): void {
  const outer = {
    xMm: room.xMm - slackMm,
    yMm: room.yMm - slackMm,
    widthMm: room.widthMm + 2 * slackMm,
    heightMm: room.heightMm + 2 * slackMm,
  }
  for (const { art, xMm, yMm } of furniture) {
    const box = { xMm, yMm, widthMm: art.widthMm, heightMm: art.heightMm }
    expect(boxContains(outer, box), `${art.text[0]?.text ?? 'a drawing'} at ${xMm}, ${yMm}`).toBe(true)
  }
}

function near(a: number, b: number): boolean {
  return Math.abs(a - b) < 1e-6
}
