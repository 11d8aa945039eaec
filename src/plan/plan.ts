/** What the plan stage gives: the teacher's plan, read, checked against the vocabulary, defaults filled in. */
import type { Size } from '../geometry.js'
import type { Place } from '../problems.js'

export interface Plan {
  /** Path as the teacher gave it, for messages. */
  readonly file: string
  /** File name without folder and ending: the name of the output folder. */
  readonly stem: string
  readonly title: string
  /** Empty where not given. */
  readonly className: string
  readonly seed: number
  readonly font: string
  readonly words: readonly PlanWord[]
  /** In the order in which the key shows them. */
  readonly marks: readonly PlanMark[]
  readonly print: readonly PrintItem[]
  readonly groups: readonly PlanGroup[]
}

export interface PlanWord {
  readonly text: string
  readonly place: Place
  readonly clue?: string
  /** Absolute path. */
  readonly picture?: string
  readonly overrides: WordOverrides
}

/** The teacher's own analysis, which wins over ours. */
export interface WordOverrides {
  /** Her division into sounds, each the letters that spell it: `['m', 'ar', 'sh']`. */
  readonly sounds?: readonly string[]
  readonly syllables?: readonly string[]
  readonly partsOfSpeech?: readonly string[]
  readonly plural?: string
}

/** What a mark stands on: the letters of a named pattern, or exact letters. */
export type MarkTarget =
  | { readonly kind: 'pattern'; readonly pattern: string; readonly place?: MarkPlace }
  | { readonly kind: 'letters'; readonly letters: string; readonly place?: MarkPlace }

export type MarkPlace = 'beginning' | 'middle' | 'end'

export interface PlanMark {
  readonly place: Place
  readonly target: MarkTarget
  /** A line style's name, where the teacher chose one. */
  readonly line?: string
  /** An outline's name, where the teacher chose one. */
  readonly outline?: string
  /** `#rrggbb`, lower case. */
  readonly color?: string
  readonly label?: string
  readonly tag?: string
}

export interface PlanGroup {
  readonly name: string
  readonly place: Place
  /** Empty: the plan's own words. */
  readonly words: readonly PlanWord[]
  readonly size?: TypeSize
  readonly font?: string
}

/** How large the main word is to be. */
export type TypeSize =
  | { readonly kind: 'normal' }
  | { readonly kind: 'large' }
  | { readonly kind: 'points'; readonly points: number }
  | { readonly kind: 'x-height'; readonly mm: number }

export type CardOrder = 'rows' | 'stack' | 'child'
export type BackKind = 'none' | 'name' | 'answer' | 'clue' | 'picture' | 'pattern'
export type CutStyle = 'lines' | 'ticks' | 'none'

/** How the sheet is divided: by count, by card size, or as the layout likes best. */
export type Division =
  | { readonly kind: 'count'; readonly across?: number; readonly down?: number }
  | { readonly kind: 'card'; readonly size: Size }
  | { readonly kind: 'layout' }

/** A thing to print. What the teacher left out and the layout decides is `undefined`. */
export interface PrintItem {
  readonly place: Place
  readonly layout: string
  readonly name: string
  readonly paper: Paper
  readonly orientation?: 'portrait' | 'landscape'
  readonly marginMm?: number
  readonly division: Division
  readonly gapMm: number
  readonly copies: number
  readonly size?: TypeSize
  readonly font?: string
  readonly marks?: 'all' | 'none'
  /** A subset of the plan's words, in this order. */
  readonly words?: readonly string[]
  /** The groups to print for, by name; where left out: the whole class's words and every group. */
  readonly groups?: readonly string[]
  /** A line style's name, or `none`. */
  readonly border?: string
  readonly order: CardOrder
  readonly back: BackKind
  readonly flip: 'long edge' | 'short edge'
  readonly cut: CutStyle
  /** The layout's own options, read by the readers that the layout declares. */
  readonly options: Readonly<Record<string, unknown>>
}

/** A paper size as fed, portrait: the shorter edge is the width. */
export interface Paper extends Size {
  readonly name: string
}
