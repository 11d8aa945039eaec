import satori, { type SatoriOptions } from 'satori'
import type { Box } from '../../geometry.js'
import type { TextRun } from '../piece.js'
import { type Face, type LaidOutFace, mm, UNITS_PER_MM } from './face.js'
import { plainTree } from './plain-tree.js'
import { shapesOfSatoriSvg } from './satori-shapes.js'

export interface FaceFont {
  readonly name: string
  readonly bytes: Uint8Array
  readonly weight: 400 | 700
}

type SatoriNode = Parameters<NonNullable<SatoriOptions['onNodeDetected']>>[0]

/**
 * Lays out faces with satori and keeps each layout: faces that differ only in what fills their slots (thirty
 * bingo boards) are laid out once.
 */
export function faceLayouter(fonts: readonly FaceFont[]): (face: Face) => Promise<LaidOutFace> {
  const known = new Map<string, Promise<LaidOutFace>>()
  // One array for all faces: satori reads the fonts anew for each array that it has not seen.
  const satoriFonts = fonts.map(({ name, bytes, weight }) => ({
    name,
    data: Buffer.from(bytes),
    weight,
    style: 'normal' as const,
  }))
  return face => {
    const tree = plainTree(face.tree)
    const key = `${face.widthMm}x${face.heightMm} ${JSON.stringify(tree)}`
    const layout = known.get(key) ?? layOut({ ...face, tree }, satoriFonts)
    known.set(key, layout)
    return layout
  }
}

async function layOut(face: Face, fonts: SatoriOptions['fonts']): Promise<LaidOutFace> {
  const slots = new Map<string, Box>()
  const text: TextRun[] = []
  const svg = await satori(face.tree as Parameters<typeof satori>[0], {
    width: mm(face.widthMm),
    height: mm(face.heightMm),
    fonts,
    onNodeDetected: node => {
      const slot: unknown = node.props['data-slot']
      if (typeof slot === 'string') slots.set(slot, boxOf(node))
      else if (node.textContent) text.push(textRunOf(node))
    },
  })
  return {
    art: {
      widthMm: face.widthMm,
      heightMm: face.heightMm,
      shapes: shapesOfSatoriSvg(svg, UNITS_PER_MM),
      text,
    },
    slots,
  }
}

function boxOf(node: SatoriNode): Box {
  return {
    xMm: node.left / UNITS_PER_MM,
    yMm: node.top / UNITS_PER_MM,
    widthMm: node.width / UNITS_PER_MM,
    heightMm: node.height / UNITS_PER_MM,
  }
}

/** A face's text stands one line a box, so the box tells where the line is; its baseline is near enough at 78 %. */
function textRunOf(node: SatoriNode): TextRun {
  const box = boxOf(node)
  const style = (node.props.style ?? {}) as { fontSize?: number }
  const sizeMm = style.fontSize === undefined ? box.heightMm : style.fontSize / UNITS_PER_MM
  return {
    text: node.textContent ?? '',
    xMm: box.xMm,
    baselineMm: box.yMm + box.heightMm / 2 + sizeMm * 0.3,
    widthMm: box.widthMm,
    sizeMm,
  }
}
