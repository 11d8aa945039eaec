/** What a printable is. Each file beside this one holds one; `index.ts` lists them. */
import type { ColumnsAndRows, Size } from '../src/geometry.js'
import { succeed } from '../src/outcomes.js'
import type { CardFace, Face, WordSlot } from '../src/pieces/faces/face.js'
import type { StyledMark } from '../src/pieces/marks/styled-mark.js'
import type { Picture } from '../src/pieces/parts/picture-slot.js'
import type { TextMeasure } from '../src/pieces/text/break-lines.js'
import type { TypeScale } from '../src/pieces/text/type-scale.js'
import type { Typeface } from '../src/pieces/typeface/typeface.js'
import type { Plan, PrintItem } from '../src/plan/plan.js'
import { areOptions, type OptionReaders, type OptionsOf } from '../src/plan/values/options.js'
import type { WeekPlace } from '../src/plan/week/week-place.js'
import type { Outcome } from '../src/problems.js'
import type { Card, CardSet } from '../src/sets/card-set.js'
import type { Lettering } from '../src/sheets/furniture/lettering.js'
import type { Grid } from '../src/sheets/grid.js'
import type { Sheet, SheetKind } from '../src/sheets/sheet.js'
import type { Word } from '../src/words/word.js'

/** Children who play a game together, with the words on their boards. */
export interface GameSide {
  /** Null for the whole class. */
  readonly name: string | null
  readonly words: readonly Word[]
}

/** The children for whom an item is printed. */
export interface LayoutGroup {
  readonly name: string
  /** Whether its words are others than the class's. */
  readonly hasOwnWords: boolean
}

/**
 * All that a layout may look at. A program that holds a plan open lays pieces out anew when something of this has
 * changed, and for nothing else; the colours of the marks come in only when pieces are drawn, so `marks` has none
 * then. `O` are the values of its own options, unknown to what serves every layout.
 */
export interface LayoutRequest<O = unknown> {
  readonly plan: Pick<Plan, 'title' | 'className' | 'seed' | 'accent' | 'taught'>
  readonly item: Omit<PrintItem, 'options'>
  readonly options: O
  /** Null for the whole class. */
  readonly group: LayoutGroup | null
  /** The words that its children worked with in earlier weeks, where the plan brings some of them back. */
  readonly earlierWords?: readonly string[]
  /** How many children it is for, where the plan says it. */
  readonly children?: number
  /** Unique within the plan, e.g. `bingo-otters`: the item's name and its group's. */
  readonly itemName: string
  /** What it is and for which group, as a title: `Word cards, Otters`. */
  readonly itemTitle: string
  /** The plan and the group, as they stand on the backs of cards: `Along the marsh · Otters`. */
  readonly setTitle: string
  /** As short as the foot of a piece needs it and unlike that of any other set of the plan; it opens their set marks. */
  readonly shortSetTitle: string
  /** Under the title of a page: the plan, the class, how the pieces of the set are marked. */
  readonly subtitle: string
  /** The words of this item, studied, in order. */
  readonly words: readonly Word[]
  /** All for whom the item is printed, the class first, where its layout says that they play one game; else none. */
  readonly sides: readonly GameSide[]
  /** The plan's marks with their styles; a layout that shows none of them still needs them for its key. */
  readonly marks: readonly StyledMark[]
  /** Whether words on the pieces are marked. */
  readonly marked: boolean
  readonly shownWithWords: ShownWithWords
  readonly typeface: Typeface
  readonly type: TypeScale
  readonly measure: TextMeasure
  /** The teacher's picture of a word, where she gave one that can be read. */
  readonly pictureOf: (word: Word) => Picture | undefined
}

/** The request of a layout that declares these options. */
export type RequestWith<R extends OptionReaders> = LayoutRequest<OptionsOf<R>>

/** What stands with the words of an item beside the marks of the plan. */
export type ShownWithWords = Pick<WordSlot, 'soundMarks' | 'syllableBreaks'>

/** A page that holds no loose pieces: a key, a caller's sheet, answers, a list. */
export interface PageFace extends Face {
  readonly kind: Exclude<SheetKind, 'pieces'>
  readonly title: string
  /** What a teacher should know of it, in a plain sentence. */
  readonly note?: string
}

/** Options of a layout under which its words have more room. */
export interface RoomierOptions<O = unknown> {
  /** Those that change. */
  readonly options: Partial<O>
  /** As the teacher would write it: `grid: 4x4`. */
  readonly says: string
  /** Whether the plan leaves it open, so that it may be taken without asking. */
  readonly open: boolean
  /** How many times as many sheets it takes; as many where left out. Never taken for a group without asking. */
  readonly timesSheets?: number
}

interface LayoutBasics {
  readonly name: string
  /** One line for `oaktag list layouts`. */
  readonly summary: string
  /** Options of this layout alone, beside those that every item takes. */
  readonly options: OptionReaders
  /** The name of the paper that it is made for, where an item names none; the plan's own where left out. */
  readonly paper?: string
  /** Whether its words are marked where the teacher does not say. */
  readonly marks: 'all' | 'none'
  readonly inWeek: WeekPlace
}

interface WordsShown<O> {
  /** What its options say shall stand with the words of an item. */
  readonly shownWithWords: (options: O) => ShownWithWords
  /** Whether they have some of its words marked, whatever `marks` says. */
  readonly marksSome: (options: O) => boolean
}

interface PlayedTogether<O> {
  /** Whether its options say that all for whom it is printed play one game. */
  readonly isOneGame: (options: O) => boolean
}

interface PieceLayoutBasics<O> extends LayoutBasics {
  readonly kind: 'pieces'
  /** How many pieces stand on a sheet where the teacher does not say. */
  readonly perSheet: ColumnsAndRows
  /** The same in large print: fewer and larger. */
  readonly perSheetLarge: ColumnsAndRows
  readonly set: (request: LayoutRequest<O>) => Outcome<CardSet>
  /** Ways to give the words of a board more room, the least change first. */
  readonly roomier?: (request: LayoutRequest<O>) => readonly RoomierOptions<O>[]
  /** Pages that go with the set, each no larger than `room`. */
  readonly pages: (request: LayoutRequest<O>, set: CardSet, room: Size) => readonly PageFace[]
}

/** Each card's face is made by itself; only its words share a size with the others. */
interface FaceByFace<O> {
  readonly face: (request: LayoutRequest<O>, card: Card, set: CardSet, size: Size) => CardFace
}

/** The faces are made together, in the order of the cards, because their texts share a size, or may not fit. */
interface FacesTogether<O> {
  readonly faces: (request: LayoutRequest<O>, set: CardSet, size: Size) => Outcome<readonly CardFace[]>
}

/** A layout of loose pieces: a set of cards or boards, a face for each, and pages that go with the set. */
export interface PieceLayout<O = unknown> extends PieceLayoutBasics<O>, FacesTogether<O> {}

/** A layout of whole pages without loose pieces. */
export interface PageLayout<O = unknown> extends LayoutBasics {
  readonly kind: 'pages'
  /** It holds the key alone: where the words show no mark, there is nothing to print. */
  readonly isKey?: true
  /** Of pages that ask something: the answers, or the problem that nothing can be asked. It has no cards. */
  readonly set?: (request: LayoutRequest<O>) => Outcome<CardSet>
  readonly pages: (request: LayoutRequest<O>, room: Size) => readonly PageFace[]
}

/** A set of loose pieces that the plan prints, for lists and labels of them. */
export interface PlanSet {
  /** What is printed, as a title: `Bingo`. */
  readonly title: string
  /** For which group of children; null for the whole class. */
  readonly group: string | null
  /** It opens the set marks of its pieces. */
  readonly shortSetTitle: string
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
  /** The sets that the plan prints, in its order, for the groups that the item names, as they are printed. */
  readonly sets: readonly PlanSet[]
}

/** A layout of whole sheets for the plan as one: printed once, not once a group. */
export interface SheetLayout<O = unknown> extends LayoutBasics {
  readonly kind: 'sheets'
  readonly sheets: (request: LayoutRequest<O>, room: SheetRoom) => Outcome<readonly Sheet[]>
}

/** A layout as the index holds it, whatever its options. */
export type Layout = (PieceLayout | PageLayout | SheetLayout) & WordsShown<unknown> & PlayedTogether<unknown>

/** A layout as its file writes it: its functions are given the options that it declares. */
export type LayoutWith<R extends OptionReaders, O = OptionsOf<R>> = { readonly options: R } & (
  | (PieceLayoutBasics<O> & (FaceByFace<O> | FacesTogether<O>))
  | PageLayout<O>
  | SheetLayout<O>
) &
  Partial<WordsShown<O> & PlayedTogether<O>>

/**
 * Makes a layout one of many. The plan keeps the options of all layouts under one type; here, and nowhere else, the
 * values are found to be those that the layout's own readers give, and its functions receive them as such.
 */
export function defineLayout<R extends OptionReaders>(layout: LayoutWith<R>): Layout {
  const { name, options: readers } = layout
  const own = (options: unknown): OptionsOf<R> => {
    if (areOptions(readers, options)) return options
    throw new Error(`the options of an item of ${name} are not those that its readers give`)
  }
  const withOwn = (request: LayoutRequest) => ({ ...request, options: own(request.options) })
  const shown: WordsShown<unknown> & PlayedTogether<unknown> = {
    shownWithWords: options => layout.shownWithWords?.(own(options)) ?? {},
    marksSome: options => layout.marksSome?.(own(options)) ?? false,
    isOneGame: options => layout.isOneGame?.(own(options)) ?? false,
  }
  switch (layout.kind) {
    case 'sheets':
      return { ...layout, ...shown, sheets: (request, room) => layout.sheets(withOwn(request), room) }
    case 'pages': {
      const { set, ...pageLayout } = layout
      return {
        ...pageLayout,
        ...shown,
        ...(set === undefined ? {} : { set: (request: LayoutRequest) => set(withOwn(request)) }),
        pages: (request: LayoutRequest, room: Size) => layout.pages(withOwn(request), room),
      }
    }
    case 'pieces': {
      return {
        ...layout,
        ...shown,
        roomier: request => layout.roomier?.(withOwn(request)) ?? [],
        set: request => layout.set(withOwn(request)),
        faces: (request, set, size) => {
          const typed = withOwn(request)
          if ('faces' in layout) return layout.faces(typed, set, size)
          return succeed(set.cards.map(card => layout.face(typed, card, set, size)))
        },
        pages: (request, set, room) => layout.pages(withOwn(request), set, room),
      }
    }
  }
}
