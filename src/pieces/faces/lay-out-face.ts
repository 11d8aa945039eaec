import type { SatoriOptions } from 'satori'
import type { JSXNode } from 'satori/jsx'
import type { Box, Size } from '../../geometry.js'
import type { Art, Shape, TextRun } from '../piece.js'
import { drawTextBlock, layTextBlock } from '../text/text-block.js'
import type { Typeface } from '../typeface/typeface.js'
import { type Face, type LaidOutFace, mm, UNITS_PER_MM } from './face.js'
import { linesInBox, type TextInBox } from './lines-in-box.js'
import { plainTree } from './plain-tree.js'
import { shapesOfSatoriSvg } from './satori-shapes.js'
import { type BoxToFill, type TreeShape, treeShape } from './tree-shape.js'
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

/** A box in the units of a face's tree. */
interface UnitBox {
  readonly left: number
  readonly top: number
  readonly width: number
  readonly height: number
}

/** A tree of boxes as satori lays it out, from its own top left corner; what is to be filled by its number. */
interface LaidOutTree {
  readonly svg: string
  readonly slots: ReadonlyMap<number, UnitBox>
  readonly lines: ReadonlyMap<number, UnitBox>
  /** Where the trees stand that are laid out apart, by their numbers. */
  readonly apart: ReadonlyMap<number, UnitBox>
}

/** With what fills it. */
interface FilledTree extends Omit<TreeShape, 'tree'> {
  readonly laid: LaidOutTree
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

type Corner = Pick<UnitBox, 'left' | 'top'>

interface PlacedTree extends Corner {
  readonly tree: FilledTree
}

/** The face that trees are when they stand where they do. */
function laidOutFace(
  { widthMm, heightMm }: Size,
  parts: readonly PlacedTree[],
  typeface: Typeface,
): LaidOutFace {
  const standing = parts.map(part => standingTree(part, typeface))
  const text = standing.flatMap(part => part.text)
  let art: Art | undefined
  return {
    text,
    slots: new Map(standing.flatMap(({ slots }) => slots)),
    drawArt: () => {
      art ??= {
        widthMm,
        heightMm,
        shapes: [
          ...standing.flatMap(({ drawBoxes }) => drawBoxes()),
          ...standing.flatMap(({ drawText }) => drawText()),
        ],
        text,
      }
      return art
    },
  }
}

/** A tree where it stands, in mm from the corner of its face. */
interface StandingTree {
  readonly slots: readonly (readonly [name: string, box: Box])[]
  readonly text: readonly TextRun[]
  /** Each the same shapes every time. */
  readonly drawBoxes: () => readonly Shape[]
  readonly drawText: () => readonly Shape[]
}

/** By where it stands; of a page on which a row is another, most other rows stand where they did. */
const known = new WeakMap<FilledTree, Map<string, StandingTree>>()

/** A row stands in few places: more were those of other weeks. */
const MOST_PLACES = 20

function standingTree({ tree, ...at }: PlacedTree, typeface: Typeface): StandingTree {
  const places = known.get(tree) ?? new Map<string, StandingTree>()
  known.set(tree, places)
  const place = `${at.left} ${at.top}`
  const standing = places.get(place) ?? treeAt(tree, at, typeface)
  if (places.size > MOST_PLACES) places.clear()
  places.set(place, standing)
  return standing
}

function treeAt({ laid, slots, lines }: FilledTree, at: Corner, typeface: Typeface): StandingTree {
  const blocks = [...laid.lines].map(
    ([number, box]): TextInBox => linesInBox(lines[number]!, boxOf(box, at), typeface),
  )
  return {
    slots: [...laid.slots].map(([number, box]) => [slots[number]!, boxOf(box, at)] as const),
    text: blocks.flatMap(({ block, at: top }) => layTextBlock(block, top)),
    drawBoxes: drawnOnce(() => shapesOfSatoriSvg(laid.svg, UNITS_PER_MM, at)),
    drawText: drawnOnce(() => blocks.flatMap(({ block, at: top }) => drawTextBlock(block, top).shapes)),
  }
}

function drawnOnce(draw: () => readonly Shape[]): () => readonly Shape[] {
  let shapes: readonly Shape[] | undefined
  return () => {
    shapes ??= draw()
    return shapes
  }
}

function boxOf({ left, top, width, height }: UnitBox, at: Corner): Box {
  return {
    xMm: (left + at.left) / UNITS_PER_MM,
    yMm: (top + at.top) / UNITS_PER_MM,
    widthMm: width / UNITS_PER_MM,
    heightMm: height / UNITS_PER_MM,
  }
}
