/** What a printable is. Each file beside this one holds one; `index.ts` lists them. */
import type { ColumnsAndRows, Size } from '../src/geometry.js'
import type { CardFace, Face } from '../src/pieces/faces/face.js'
import type { StyledMark } from '../src/pieces/marks/styled-mark.js'
import type { Picture } from '../src/pieces/parts/card-back.js'
import type { TextMeasure } from '../src/pieces/text/text-lines.js'
import type { TypeScale } from '../src/pieces/text/type-scale.js'
import type { Typeface } from '../src/pieces/typeface/typeface.js'
import type { Plan, PlanGroup, PrintItem } from '../src/plan/plan.js'
import type { OptionReader } from '../src/plan/values/options.js'
import type { Outcome } from '../src/problems.js'
import type { Card, CardSet } from '../src/sets/card-set.js'
import type { Lettering } from '../src/sheets/furniture/lettering.js'
import type { Grid } from '../src/sheets/grid.js'
import type { Sheet, SheetKind } from '../src/sheets/sheet.js'
import type { Word } from '../src/words/word.js'

/** All that a layout may look at. */
export interface LayoutRequest {
  readonly plan: Plan
  readonly item: PrintItem
  readonly group: PlanGroup | null
  /** Unique within the plan, e.g. `bingo-otters`: the item's name and its group's. */
  readonly itemName: string
  /** Name of the set in full, for its pages. */
  readonly setTitle: string
  /** The same, as short as the foot of a piece needs it, printed small on each. */
  readonly shortSetTitle: string
  /** Under the title of a page: class, group. */
  readonly subtitle: string
  /** The words of this item, studied, in order. */
  readonly words: readonly Word[]
  /** The plan's marks with their styles; a layout that shows none of them still needs them for its key. */
  readonly marks: readonly StyledMark[]
  /** Whether words on the pieces are marked. */
  readonly marked: boolean
  readonly typeface: Typeface
  readonly type: TypeScale
  readonly measure: TextMeasure
  /** The teacher's picture of a word, where she gave one that can be read. */
  readonly pictureOf: (word: Word) => Picture | undefined
}

/** A page that holds no loose pieces: a key, a caller's sheet, answers, a list. */
export interface PageFace extends Face {
  readonly kind: Exclude<SheetKind, 'pieces'>
  readonly title: string
}

/** Options of a layout under which its words have more room. */
export interface RoomierOptions {
  readonly options: PrintItem['options']
  /** As the teacher would write it: `grid: 4x4`. */
  readonly says: string
  /** Whether the plan leaves it open, so that it may be taken without asking. */
  readonly open: boolean
}

interface LayoutBasics {
  readonly name: string
  /** One line for `oaktag list layouts`. */
  readonly summary: string
  /** Options of this layout alone, beside those that every item takes. */
  readonly options: Readonly<Record<string, OptionReader<unknown>>>
  /** Whether its words are marked where the teacher does not say. */
  readonly marks: 'all' | 'none'
}

interface PieceLayoutBasics extends LayoutBasics {
  readonly kind: 'pieces'
  /** How many pieces stand on a sheet where the teacher does not say. */
  readonly perSheet: ColumnsAndRows
  /** The same in large print: fewer and larger. */
  readonly perSheetLarge: ColumnsAndRows
  readonly set: (request: LayoutRequest) => Outcome<CardSet>
  /** Ways to give the words of a board more room, the least change first. */
  readonly roomier?: (request: LayoutRequest) => readonly RoomierOptions[]
  /** Pages that go with the set, each no larger than `room`. */
  readonly pages: (request: LayoutRequest, set: CardSet, room: Size) => readonly PageFace[]
}

/** Each card's face is made by itself; only its words share a size with the others. */
interface FaceByFace {
  readonly face: (request: LayoutRequest, card: Card, set: CardSet, size: Size) => CardFace
}

/** The faces are made together, in the order of the cards, because their texts share a size, or may not fit. */
interface FacesTogether {
  readonly faces: (request: LayoutRequest, set: CardSet, size: Size) => Outcome<readonly CardFace[]>
}

/** A layout of loose pieces: a set of cards or boards, a face for each, and pages that go with the set. */
export type PieceLayout = PieceLayoutBasics & (FaceByFace | FacesTogether)

/** A layout of whole pages without loose pieces. */
export interface PageLayout extends LayoutBasics {
  readonly kind: 'pages'
  readonly pages: (request: LayoutRequest, room: Size) => readonly PageFace[]
}

/** A set of loose pieces that the plan prints, for lists and labels of them. */
export interface PlanSet {
  /** The name of what is printed: `bingo`. */
  readonly name: string
  /** As it stands small on each piece. */
  readonly shortSetTitle: string
  /** Class and group. */
  readonly subtitle: string
  readonly copies: number
  /** In the order of the list; the set may leave some out. */
  readonly words: readonly Word[]
  readonly set: CardSet
}

/** What whole sheets are made from. */
export interface SheetRoom {
  /** The whole page as one place. */
  readonly grid: Grid
  readonly lettering: Lettering
  /** The sets that the plan prints, in its order, for the groups that the item names; dealt, not drawn. */
  readonly sets: () => readonly PlanSet[]
}

/** A layout of whole sheets for the plan as one: printed once, not once a group. */
export interface SheetLayout extends LayoutBasics {
  readonly kind: 'sheets'
  readonly sheets: (request: LayoutRequest, room: SheetRoom) => Outcome<readonly Sheet[]>
}

export type Layout = PieceLayout | PageLayout | SheetLayout
