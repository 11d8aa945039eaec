/** What the files stage takes: a plan's items, each with its sheets, ready to be written in any format. */
import type { Paper } from '../plan/plan.js'
import type { WeekDay } from '../plan/week/week-place.js'
import type { AnswerData } from '../sets/answer-data.js'
import type { Deal } from '../sets/card-set.js'
import type { Flip } from '../sheets/flip.js'
import type { Sheet, SheetToDraw } from '../sheets/sheet.js'

export interface PrintedPlan<S extends PrintedSheet = Sheet> {
  /** Name of the output folder. */
  readonly stem: string
  readonly title: string
  /** Empty where not given. */
  readonly className: string
  readonly seed: number
  /** Names of every item of the plan in print order, those included that this run does not make (`--only`). */
  readonly itemNames: readonly string[]
  /** The items that this run makes, or could make. */
  readonly items: readonly PrintedItem<S>[]
}

export interface WeekUse {
  readonly day: WeekDay
  /** With its group: `Word cards, Otters`. */
  readonly title: string
  /** What to print, a clause behind that verb: `22, one for each child`. */
  readonly print: string
}

/** A sheet that is drawn, or one that will be when it is written. */
export type PrintedSheet = Sheet | SheetToDraw

/** An item on its sheets before they are drawn. */
export type PlacedItem = PrintedItem<SheetToDraw>

export interface PrintedItem<S extends PrintedSheet = Sheet> {
  /** Name of the item's folder and the beginning of its files' names; unique within the plan. */
  readonly name: string
  /** As people call it: `Word cards`. */
  readonly title: string
  readonly layout: string
  /** The group for which it is printed, by name; `null` for the whole class. */
  readonly group: string | null
  /** As the sheets lie: width and height already turned for landscape. */
  readonly paper: Paper
  readonly sheets: readonly S[]
  /** Of a plan that has the week's set made: for which of its days it is, and how many to print. */
  readonly week?: WeekUse
  /** How its backs get onto the paper; left out where nothing is printed on the back. */
  readonly backs?: { readonly flip: Flip; readonly fedByHand: boolean }
  readonly deal?: Deal
  /** What the children find out with it, for a machine to check. */
  readonly answerData?: AnswerData
  /** Plain sentences for the teacher: what to print how often, on which stock, in what order. */
  readonly notes: readonly string[]
  /** Those of the notes that say how the words came out in size and the pieces on the sheet. */
  readonly fittingNotes: readonly string[]
}

/** The sheet with all that stands on it. */
export function drawnSheet(sheet: PrintedSheet): Sheet {
  return 'draw' in sheet ? sheet.draw() : sheet
}

/** The item with every sheet drawn. */
export function drawnItem<S extends PrintedSheet>(item: PrintedItem<S>): PrintedItem {
  return { ...item, sheets: item.sheets.map(drawnSheet) }
}
