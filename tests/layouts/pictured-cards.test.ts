/** Cards with the teacher's picture beside or above the word. */
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import type { PrintedItem } from '../../src/files/printed-plan.js'
import type { Box } from '../../src/geometry.js'
import type { Piece } from '../../src/pieces/piece.js'
import { putPlanOnSheets } from '../../src/pipeline.js'
import { folderWith } from '../pipeline/plan-folder.js'
import { sharedWork } from '../pipeline/shared-work.js'

const fish =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 90 90"><path d="M20 20L80 40L20 70Z"/></svg>'

async function printed(item: string) {
  const folder = folderWith({
    'week.yaml': `words:\n  - {word: perch, picture: fish.svg}\n  - marsh\nprint:\n  - ${item}\n`,
    'fish.svg': fish,
  })
  const drawn = await putPlanOnSheets({ planFile: join(folder, 'week.yaml'), kept: sharedWork })
  if (!drawn.ok) throw new Error(drawn.problems.map(({ message }) => message).join('\n'))
  return { item: drawn.value.items[0]!.printed, problems: drawn.problems.map(({ message }) => message) }
}

function pieceWith(item: PrintedItem, word: string): Piece {
  return item.sheets.flatMap(({ pieces }) => pieces).find(({ piece }) => piece.text[0] === word)!.piece
}

function pictureOn({ art }: Piece): Box | undefined {
  return art.flatMap(({ art: { shapes }, xMm, yMm }) =>
    shapes.flatMap(shape =>
      shape.kind === 'image' ? [{ ...shape.box, xMm: shape.box.xMm + xMm, yMm: shape.box.yMm + yMm }] : [],
    ),
  )[0]
}

function wordOn({ art, text }: Piece) {
  const placed = art.find(({ art: { text: runs } }) => runs[0]?.text === text[0])!
  const run = placed.art.text[0]!
  return { leftMm: placed.xMm + run.xMm, topMm: placed.yMm + run.baselineMm - run.sizeMm }
}

describe.each(['word-cards', 'open-sort'])('%s', layout => {
  it('has the picture above the word, in the middle of the card', async () => {
    const { item } = await printed(`{layout: ${layout}, picture: above}`)
    const card = pieceWith(item, 'perch')
    const { xMm, yMm, widthMm, heightMm } = pictureOn(card)!
    expect(xMm + widthMm / 2).toBeCloseTo(card.widthMm / 2, 0)
    expect(yMm).toBeGreaterThan(1)
    expect(yMm + heightMm).toBeLessThan(wordOn(card).topMm + 1)
  })

  it('has the picture beside the word, on its left', async () => {
    const { item } = await printed(`{layout: ${layout}, picture: beside}`)
    const card = pieceWith(item, 'perch')
    const { xMm, yMm, widthMm, heightMm } = pictureOn(card)!
    expect(xMm).toBeGreaterThan(1)
    expect(xMm + widthMm).toBeLessThan(wordOn(card).leftMm)
    expect(yMm).toBeGreaterThan(1)
    expect(yMm + heightMm).toBeLessThan(card.heightMm - 4)
  })

  it('says which words have none, and prints them', async () => {
    const { item, problems } = await printed(`{layout: ${layout}, picture: above}`)
    expect(problems).toEqual(['no picture for "marsh": its place stays empty'])
    expect(pictureOn(pieceWith(item, 'marsh'))).toBeUndefined()
  })

  it('has no picture where the item asks for none', async () => {
    const { item, problems } = await printed(`{layout: ${layout}}`)
    expect(problems).toEqual([])
    expect(pictureOn(pieceWith(item, 'perch'))).toBeUndefined()
  })
})
