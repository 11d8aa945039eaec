/** What a tree that satori has laid out gives where it stands on a face: its slots, its text, its shapes. */
import type { Box } from '../../geometry.js'
import { lazily } from '../../lazily.js'
import type { Shape, TextRun } from '../piece.js'
import { drawTextBlock, layTextBlock } from '../text/text-block.js'
import type { Typeface } from '../typeface/typeface.js'
import { UNITS_PER_MM } from './face.js'
import { linesInBox, type TextInBox } from './lines-in-box.js'
import { shapesOfSatoriSvg } from './satori-shapes.js'
import type { TreeShape } from './tree-shape.js'

/** A box in the units of a face's tree. */
export interface UnitBox {
  readonly left: number
  readonly top: number
  readonly width: number
  readonly height: number
}

/** A tree of boxes as satori lays it out, from its own top left corner; what is to be filled by its number. */
export interface LaidOutTree {
  readonly svg: string
  readonly slots: ReadonlyMap<number, UnitBox>
  readonly lines: ReadonlyMap<number, UnitBox>
  /** Where the trees stand that are laid out apart, by their numbers. */
  readonly apart: ReadonlyMap<number, UnitBox>
}

/** With what fills it. */
export interface FilledTree extends Omit<TreeShape, 'tree'> {
  readonly laid: LaidOutTree
}

export type Corner = Pick<UnitBox, 'left' | 'top'>

export interface PlacedTree extends Corner {
  readonly tree: FilledTree
}

/** A tree where it stands, in mm from the corner of its face. */
export interface StandingTree {
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

export function standingTree({ tree, ...at }: PlacedTree, typeface: Typeface): StandingTree {
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
    drawBoxes: lazily(() => shapesOfSatoriSvg(laid.svg, UNITS_PER_MM, at)),
    drawText: lazily(() => blocks.flatMap(({ block, at: top }) => drawTextBlock(block, top).shapes)),
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
