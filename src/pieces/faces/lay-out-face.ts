import type { SatoriOptions } from 'satori'
import type { Box } from '../../geometry.js'
import type { Art } from '../piece.js'
import type { LinesOfText } from '../text/lines.js'
import { drawTextBlock, layTextBlock } from '../text/text-block.js'
import type { Typeface } from '../typeface/typeface.js'
import { type Face, type LaidOutFace, mm, UNITS_PER_MM } from './face.js'
import { linesInBox, type TextInBox, withWidthsOfLines } from './lines-in-tree.js'
import { plainTree } from './plain-tree.js'
import { shapesOfSatoriSvg } from './satori-shapes.js'

type SatoriNode = Parameters<NonNullable<SatoriOptions['onNodeDetected']>>[0]

/** Gives the face's layout in this typeface. */
export type FaceLayOut = (face: Face, typeface: Typeface) => Promise<LaidOutFace>

export interface FaceLayouter {
  readonly layOut: FaceLayOut
  /** How often satori has laid something out. */
  readonly laidOut: () => number
  /** Where many are kept, lets go of those that nobody has asked for since it last did. */
  readonly letGo: () => void
}

/** A week's plan has some thirty shapes of faces and pages; that of a page of lists takes up to eighty kilobytes. */
const MANY = 100

/**
 * Lays out faces with satori and keeps each layout: faces that differ only in what fills their slots (thirty
 * bingo boards) are laid out once.
 */
export function faceLayouter(): FaceLayouter {
  let kept = new Map<string, Promise<LaidOutFace>>()
  let asked = new Map<string, Promise<LaidOutFace>>()
  let count = 0
  const numbers = new Map<Typeface, number>()
  return {
    layOut: (face, typeface) => {
      const tree = plainTree(face.tree)
      const number = numbers.get(typeface) ?? numbers.size
      numbers.set(typeface, number)
      const key = `${number} ${face.widthMm}x${face.heightMm} ${JSON.stringify(tree)}`
      const known = asked.get(key) ?? kept.get(key)
      if (known === undefined) count += 1
      const layout = known ?? layOutFace({ ...face, tree }, typeface)
      asked.set(key, layout)
      return layout
    },
    laidOut: () => count,
    letGo: () => {
      if (asked.size < MANY) return
      kept = asked
      asked = new Map()
    },
  }
}

async function layOutFace(face: Face, typeface: Typeface): Promise<LaidOutFace> {
  // Loaded with the first face: layouts are named, and plans read, without it.
  const { default: satori } = await import('satori')
  const slots = new Map<string, Box>()
  const blocks: TextInBox[] = []
  const tree = withWidthsOfLines(face.tree, typeface)
  const svg = await satori(tree as Parameters<typeof satori>[0], {
    width: mm(face.widthMm),
    height: mm(face.heightMm),
    // Whatever is read stands in boxes that are filled here: satori opens no typeface, and shapes and draws no letter.
    fonts: [],
    onNodeDetected: node => {
      const { 'data-slot': slot, 'data-lines': lines }: BoxToFill = node.props
      if (slot !== undefined) slots.set(slot, boxOf(node))
      if (lines !== undefined) blocks.push(linesInBox(lines, boxOf(node), typeface))
    },
  })
  const { widthMm, heightMm } = face
  const text = blocks.flatMap(({ block, at }) => layTextBlock(block, at))
  let art: Art | undefined
  return {
    text,
    slots,
    drawArt: () => {
      art ??= {
        widthMm,
        heightMm,
        shapes: [
          ...shapesOfSatoriSvg(svg, UNITS_PER_MM),
          ...blocks.flatMap(({ block, at }) => drawTextBlock(block, at).shapes),
        ],
        text,
      }
      return art
    },
  }
}

interface BoxToFill {
  readonly 'data-slot'?: string
  readonly 'data-lines'?: LinesOfText
}

function boxOf(node: SatoriNode): Box {
  return {
    xMm: node.left / UNITS_PER_MM,
    yMm: node.top / UNITS_PER_MM,
    widthMm: node.width / UNITS_PER_MM,
    heightMm: node.height / UNITS_PER_MM,
  }
}
