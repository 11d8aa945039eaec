import type { SatoriOptions } from 'satori'
import type { Box } from '../../geometry.js'
import type { TextRun } from '../piece.js'
import type { Typeface } from '../typeface/typeface.js'
import { type Face, type LaidOutFace, mm, UNITS_PER_MM } from './face.js'
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

/** A week's plan has some thirty shapes of faces and pages; each is a few kilobytes. */
const MANY = 1000

/**
 * Lays out faces with satori and keeps each layout: faces that differ only in what fills their slots (thirty
 * bingo boards) are laid out once.
 */
export function faceLayouter(): FaceLayouter {
  let kept = new Map<string, Promise<LaidOutFace>>()
  let asked = new Map<string, Promise<LaidOutFace>>()
  let count = 0
  // One array a typeface: satori reads the fonts anew for each array that it has not seen.
  const fonts = new Map<Typeface, { readonly number: number; readonly files: SatoriOptions['fonts'] }>()
  return {
    layOut: (face, typeface) => {
      const tree = plainTree(face.tree)
      const font = fonts.get(typeface) ?? { number: fonts.size, files: fontsOf(typeface) }
      fonts.set(typeface, font)
      const key = `${font.number} ${face.widthMm}x${face.heightMm} ${JSON.stringify(tree)}`
      const known = asked.get(key) ?? kept.get(key)
      if (known === undefined) count += 1
      const layout = known ?? layOutFace({ ...face, tree }, font.files)
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

/** Further files come under names of their own: satori asks them for characters that the first ones lack. */
function fontsOf({ family, bytes }: Typeface): SatoriOptions['fonts'] {
  const { regular, bold, extended, extendedBold } = bytes
  return [
    { name: family, data: regular, weight: 400 as const },
    { name: family, data: bold, weight: 700 as const },
    { name: `${family} extended`, data: extended, weight: 400 as const },
    { name: `${family} extended`, data: extendedBold, weight: 700 as const },
  ].flatMap(({ data, ...font }) =>
    data === undefined ? [] : [{ ...font, data: Buffer.from(data), style: 'normal' as const }],
  )
}

async function layOutFace(face: Face, fonts: SatoriOptions['fonts']): Promise<LaidOutFace> {
  // Loaded with the first face: layouts are named, and plans read, without it.
  const { default: satori } = await import('satori')
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
