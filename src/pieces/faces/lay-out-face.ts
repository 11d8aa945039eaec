import type { SatoriOptions } from 'satori'
import type { JSXNode } from 'satori/jsx'
import type { Size } from '../../geometry.js'
import { lazily } from '../../lazily.js'
import type { Art } from '../piece.js'
import type { Typeface } from '../typeface/typeface.js'
import { type Face, type LaidOutFace, mm } from './face.js'
import { plainTree } from './plain-tree.js'
import {
  type Corner,
  type FilledTree,
  type LaidOutTree,
  type PlacedTree,
  standingTree,
  type UnitBox,
} from './standing-tree.js'
import { type BoxToFill, treeShape } from './tree-shape.js'
import { treesApart } from './trees-apart.js'

type SatoriNode = Parameters<NonNullable<SatoriOptions['onNodeDetected']>>[0]

/** Gives the face's layout in this typeface. */
export type FaceLayOut = (face: Face, typeface: Typeface) => Promise<LaidOutFace>

export interface FaceLayouter {
  readonly layOut: FaceLayOut
  /** How many faces were laid out, those of one shape once. */
  readonly laidOut: () => number
  /** How often satori was asked: for a face without its rows, for a row. */
  readonly treesLaidOut: () => number
  /** Where many are kept, lets go of those that nobody has asked for since it last did. */
  readonly letGo: () => void
}

/** A week's plan has some thirty shapes of faces and pages; that of a page of lists takes up to eighty kilobytes. */
const MANY = 100

/** Rows of pages take two or three kilobytes each, and a week's plan has some hundreds. */
const MANY_TREES = 1000

/**
 * Lays out faces with satori and keeps each layout: faces that differ only in what fills their slots (thirty
 * bingo boards) are laid out once. A row of a page is laid out by itself, so that of a page on which a row is another the rest is
 * not laid out anew.
 */
export function faceLayouter(): FaceLayouter {
  const faces = layoutsKept<LaidOutFace>(MANY)
  const trees = layoutsKept<FilledTree>(MANY_TREES)
  const shapes = layoutsKept<LaidOutTree>(MANY_TREES)
  let [laidOut, treesLaidOut] = [0, 0]
  const numbers = new Map<Typeface, number>()
  const filledTree = async (plain: JSXNode, size: Size, typeface: Typeface): Promise<FilledTree> => {
    const { tree, slots, lines } = treeShape(plain, typeface)
    const laid = await shapes.once(keyOf(size, tree), () => {
      treesLaidOut += 1
      return layOutTree(tree, size)
    })
    return { laid, slots, lines }
  }
  return {
    layOut: (face, typeface) => {
      const tree = plainTree(face.tree)
      const number = numbers.get(typeface) ?? numbers.size
      numbers.set(typeface, number)
      return faces.once(`${number} ${keyOf(face, tree)}`, async () => {
        laidOut += 1
        const { rest, apart } = treesApart(tree)
        const layOut = (plain: JSXNode, size: Size) =>
          trees.once(`${number} ${keyOf(size, plain)}`, () => filledTree(plain, size, typeface))
        const page = await layOut(rest, face)
        const parts: PlacedTree[] = [{ tree: page, left: 0, top: 0 }]
        for (const [index, row] of apart.entries())
          parts.push({
            tree: await layOut(row.tree, row.size),
            ...cornerOf(page.laid.apart.get(index), row.size),
          })
        return laidOutFace(face, parts, typeface)
      })
    },
    laidOut: () => laidOut,
    treesLaidOut: () => treesLaidOut,
    letGo: () => {
      for (const kept of [faces, trees, shapes]) kept.letGo()
    },
  }
}

function keyOf({ widthMm, heightMm }: Size, tree: JSXNode): string {
  return `${widthMm}x${heightMm} ${JSON.stringify(tree)}`
}

let opening: Promise<void> | undefined

/**
 * Begins to open what lays out faces; given once that has begun. V8 looks through its WebAssembly beside whatever is done before
 * the first face.
 */
export function beginToLayOut(): Promise<void> {
  opening ??= import('satori').then(({ default: satori }) => {
    const nothing = { type: 'div', key: null, props: { style: { display: 'flex' } } }
    // What fails here fails again at the first face, which tells it.
    satori(nothing, { width: 1, height: 1, fonts: [] }).catch(() => undefined)
  })
  return opening
}

interface LayoutsKept<T> {
  readonly once: (key: string, make: () => Promise<T>) => Promise<T>
  readonly letGo: () => void
}

/** Where many are kept, those that nobody has asked for since it last let go are let go. */
function layoutsKept<T>(many: number): LayoutsKept<T> {
  let kept = new Map<string, Promise<T>>()
  let asked = new Map<string, Promise<T>>()
  return {
    once: (key, make) => {
      const layout = asked.get(key) ?? kept.get(key) ?? make()
      asked.set(key, layout)
      return layout
    },
    letGo: () => {
      if (asked.size < many) return
      kept = asked
      asked = new Map()
    },
  }
}

async function layOutTree(tree: JSXNode, { widthMm, heightMm }: Size): Promise<LaidOutTree> {
  // Loaded with the first face: layouts are named, and plans read, without it.
  const { default: satori } = await import('satori')
  const slots = new Map<number, UnitBox>()
  const lines = new Map<number, UnitBox>()
  const apart = new Map<number, UnitBox>()
  const svg = await satori(tree as Parameters<typeof satori>[0], {
    width: mm(widthMm),
    height: mm(heightMm),
    // Whatever is read stands in boxes that are filled here: satori opens no typeface, and shapes and draws no letter.
    fonts: [],
    onNodeDetected: ({ left, top, width, height, props }: SatoriNode) => {
      const box = { left, top, width, height }
      const { 'data-slot': slot, 'data-lines': linesOf, 'data-apart': number }: BoxToFill = props
      if (slot !== undefined) slots.set(slot, box)
      if (linesOf !== undefined) lines.set(linesOf, box)
      if (number !== undefined) apart.set(number, box)
    },
  })
  return { svg, slots, lines, apart }
}

/** A tree is laid out in its box's own size: a page that gives it another one would have it elsewhere. */
function cornerOf(box: UnitBox | undefined, size: Size): Corner {
  if (box === undefined || box.width !== mm(size.widthMm) || box.height !== mm(size.heightMm))
    throw new Error('what is laid out apart does not stand in a box of its size')
  return { left: box.left, top: box.top }
}

/** The face that trees are when they stand where they do. */
function laidOutFace(
  { widthMm, heightMm }: Size,
  parts: readonly PlacedTree[],
  typeface: Typeface,
): LaidOutFace {
  const standing = parts.map(part => standingTree(part, typeface))
  const text = standing.flatMap(part => part.text)
  const drawArt = lazily(
    (): Art => ({
      widthMm,
      heightMm,
      shapes: [
        ...standing.flatMap(({ drawBoxes }) => drawBoxes()),
        ...standing.flatMap(({ drawText }) => drawText()),
      ],
      text,
    }),
  )
  return { text, slots: new Map(standing.flatMap(({ slots }) => slots)), drawArt }
}
