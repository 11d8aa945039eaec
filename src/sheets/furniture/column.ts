/** Sets blocks of text and drawings one under another, over as many pages as they need. */
import type { Box } from '../../geometry.js'
import type { PlacedArt } from '../../pieces/piece.js'
import { fillEvenly } from '../../pieces/text/even-flow.js'
import type { Lettering, LineOfText } from './lettering.js'

/** Something that is not divided between pages; its origin is its own top left corner. */
export interface Block {
  readonly art: readonly PlacedArt[]
  readonly heightMm: number
  /** White space below, dropped at the foot of a page. */
  readonly spaceAfterMm: number
  /** Not to be parted from the block after it: a heading. */
  readonly keepsWithNext?: boolean
}

export interface TextBlockRequest extends LineOfText {
  readonly lettering: Lettering
  readonly widthMm: number
  /** From the left, for every line. */
  readonly indentMm?: number
  readonly spaceAfterMm?: number
  readonly keepsWithNext?: boolean
}

/** A paragraph, broken between words where it is wider than the room. */
export function textBlock(request: TextBlockRequest): Block {
  const { lettering, widthMm, indentMm = 0, spaceAfterMm = 0, keepsWithNext = false } = request
  const lines = breakLines(request, widthMm - indentMm)
  const arts = lines.map(text => lettering(lineOf(request, text)))
  const stepMm = Math.max(request.sizeMm * 1.35, ...arts.map(art => art.heightMm))
  return {
    art: arts.map((art, index) => ({ art, xMm: indentMm, yMm: index * stepMm })),
    heightMm: arts.length * stepMm,
    spaceAfterMm,
    keepsWithNext,
  }
}

/** For each page, the art placed on it; a block taller than the room stands alone on a page. */
export function flowBlocks(blocks: readonly Block[], room: Box): readonly (readonly PlacedArt[])[] {
  const pages: PlacedArt[][] = [[]]
  let usedMm = 0
  for (const [first, last] of unbreakableRuns(blocks)) {
    const run = blocks.slice(first, last + 1)
    const heightMm = run.reduce(
      (sum, block, index) => sum + block.heightMm + (index < run.length - 1 ? block.spaceAfterMm : 0),
      0,
    )
    if (usedMm > 0 && usedMm + heightMm > room.heightMm) {
      pages.push([])
      usedMm = 0
    }
    for (const block of run) {
      const yMm = room.yMm + usedMm
      pages.at(-1)!.push(
        ...block.art.map(placed => ({
          art: placed.art,
          xMm: placed.xMm + room.xMm,
          yMm: placed.yMm + yMm,
        })),
      )
      usedMm += block.heightMm + block.spaceAfterMm
    }
  }
  return pages
}

/** The same on as few pages, each filled no further than it must be for that: the last one is no remnant. */
export function flowEvenly(blocks: readonly Block[], room: Box): readonly (readonly PlacedArt[])[] {
  return fillEvenly(room.heightMm, heightMm => flowBlocks(blocks, { ...room, heightMm }))
}

/** First and last index of blocks that stay on one page. */
function unbreakableRuns(blocks: readonly Block[]): readonly (readonly [number, number])[] {
  const runs: (readonly [number, number])[] = []
  let first = 0
  for (const [index, block] of blocks.entries()) {
    if (block.keepsWithNext && index < blocks.length - 1) continue
    runs.push([first, index])
    first = index + 1
  }
  return runs
}

/** A line may end at a space, but not between a number and its unit, nor before the dot between the entries of a list. */
const BREAKS = / (?!·|(?:mm|cm|%|×)(?![a-z]))/

/** Words are measured one by one. */
function breakLines(request: TextBlockRequest, roomMm: number): readonly string[] {
  const width = (text: string) => request.lettering.widthMm(lineOf(request, text))
  if (width(request.text) <= roomMm) return [request.text]
  const spaceMm = width('n n') - width('nn')
  const lines: { text: string; widthMm: number }[] = []
  for (const word of request.text.split(BREAKS).filter(part => part !== '')) {
    const wordMm = width(word)
    const line = lines.at(-1)
    if (line !== undefined && line.widthMm + spaceMm + wordMm <= roomMm - KERNING_MM) {
      line.text += ` ${word}`
      line.widthMm += spaceMm + wordMm
    } else lines.push({ text: word, widthMm: wordMm })
  }
  return lines.map(line => line.text)
}

/** What kerning over spaces may add to a line of measured words. */
const KERNING_MM = 0.5

function lineOf({ sizeMm, color, weight }: LineOfText, text: string): LineOfText {
  return {
    text,
    sizeMm,
    ...(color === undefined ? {} : { color }),
    ...(weight === undefined ? {} : { weight }),
  }
}
