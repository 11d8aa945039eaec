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
  /** A registered typeface's name, or the absolute path of a .ttf or .otf file; so are the fonts of items and groups. */
  readonly font: string
  readonly words: readonly PlanWord[]
  /** In the order in which the key shows them. */
  readonly marks: readonly PlanMark[]
  readonly print: readonly PrintItem[]
  readonly groups: readonly PlanGroup[]
  /** How her class speaks, where it bears on sounds and patterns. The reader always fills it in. */
  readonly accent?: Accent
  /** What her class counts as a sound; `as taught` where left out. */
  readonly countSounds?: CountSounds
  /** Whether drafts stand where she gave no clue; her own alone where left out. */
  readonly cluesFrom?: CluesFrom
  /** Path of the class file whose word overrides were taken over, as the teacher would type it from where she stands. */
  readonly classFile?: string
  /** What the class file says the class has been taught. */
  readonly taught?: readonly TaughtEntry[]
  /** What the teacher knows of her printer, some of it measured on its calibration sheet. */
  readonly printer?: PrinterSetting
  /** Ink and ground of the pieces; black on white where left out. */
  readonly contrast?: Contrast
  /** Lists for groups that are to be proposed; nothing is made of them. */
  readonly spread?: SpreadWish
  /** The week's whole set is among what is printed. */
  readonly week?: PlanWeek
  /** All words of the earlier weeks from which words come back, each once, lower case. */
  readonly earlierWords?: readonly string[]
  /** How many children are given the class's own sheets. */
  readonly children?: number
}

export interface PlanWeek {
  readonly place: Place
  /** The teacher names no marks: those are found that show what most of the words show. */
  readonly findsMarks: boolean
}

export interface SpreadWish {
  readonly place: Place
  readonly pattern: string
  readonly lists: number
  /** Of each list. */
  readonly words: number
}

/** Features of an accent that change phonemes or patterns; the lexicon's own is General American. */
export interface Accent {
  /** Whether r is sounded after a vowel, as in marsh. */
  readonly rhotic: boolean
  /** Whether the vowels of cot and caught are one. */
  readonly cotCaught: 'apart' | 'merged'
  /** Whether wh has its own sound, or sounds as w. */
  readonly wh: 'own' | 'w'
}

/**
 * `as taught`: every piece of the word that is heard is one, a vowel with its r too; only x and qu are two.
 * `every phoneme`: as many as the dictionary writes. A word that the teacher divided herself counts by her pieces.
 */
export type CluesFrom = 'own' | 'drafts'

export type CountSounds = 'as taught' | 'every phoneme'

export interface PrinterSetting {
  /** How the back is to be moved on the page, right and down positive, so that it lands behind its front. */
  readonly backShift?: { readonly rightMm: number; readonly downMm: number }
  /** The card is fed by hand a second time for its backs: all fronts are printed first, then all backs. */
  readonly handFed?: {
    /** Which sheet the printer takes first from the pile that is put back. */
    readonly pile: 'in order' | 'last sheet first'
  }
}

/** Two colours, each `#rrggbb` in lower case. */
export interface Contrast {
  readonly ink: string
  readonly ground: string
  /** The ground is the colour of the card that is printed on, and is not printed. */
  readonly stock?: true
}

export interface PlanWord {
  readonly text: string
  readonly place: Place
  readonly clue?: string
  /** To write from dictation. */
  readonly sentence?: string
  /** Absolute path. */
  readonly picture?: string
  readonly overrides: WordOverrides
  /** Where she wrote each of them: in the plan, its word list, or the class file. */
  readonly overridePlaces?: OverridePlaces
  /** Of a word of an earlier week, which is back for review. */
  readonly cameBack?: CameBack
}

export interface CameBack {
  /** The list it was on: its file's name without folder and ending; empty for one that stands in this plan. */
  readonly from: string
  readonly weeksAgo: number
}

/** By the key as she writes it. */
export type OverridePlaces = Readonly<Partial<Record<OverrideKey, Place>>>
export type OverrideKey = 'meant' | 'sounds' | 'syllables' | 'part of speech' | 'plural' | 'not' | 'also'

/** The teacher's own analysis, which wins over ours. */
export interface WordOverrides {
  /** Which of several words that are spelled alike she means, by its meaning as the study tells it. */
  readonly meant?: string
  /**
   * Her division into sounds, each the letters that spell it: `['m', 'ar', 'sh']`. Capitals as in the word.
   * Letters that say nothing may stand in brackets, `['c', 'a', 'k', '(e)']`, and letters that stand apart with a low
   * line, `['l', 'a_e', 'k']` (sound-division.ts). The letters add up to the word (hyphens and apostrophes left out).
   */
  readonly sounds?: readonly string[]
  /** Her division into syllables; the letters add up to the word (hyphens and apostrophes left out). */
  readonly syllables?: readonly string[]
  /** One or more of the ten names, in her order. */
  readonly partsOfSpeech?: readonly string[]
  readonly plural?: string
  /** She says that the word has no plural (`plural: none`). */
  readonly noPlural?: true
  /** Patterns that the word does not show for her class. */
  readonly notPatterns?: readonly PatternOverride[]
  /** Patterns that the word shows for her class, with the letters they stand on. */
  readonly alsoPatterns?: readonly (PatternOverride & { readonly letters: string })[]
}

export interface PatternOverride {
  readonly pattern: string
  /** The letters concerned, lower case; where left out, wherever in the word. */
  readonly letters?: string
}

/** One thing that a class has been taught to read. */
export type TaughtEntry =
  | { readonly kind: 'pattern'; readonly pattern: string; readonly place: Place }
  /** Letters of a sound or a blend, or a whole word, lower case; a low line stands for the letters between: `a_e`. */
  | { readonly kind: 'letters'; readonly letters: string; readonly asIn?: string; readonly place: Place }

/** What a mark stands on: the letters of a named pattern, exact letters, or whole words. */
export type MarkTarget =
  | {
      readonly kind: 'pattern'
      readonly pattern: string
      readonly place?: MarkPlace
      /** Whether a consonant digraph is marked inside a digraph blend too (the sh of shrub); left out where she does not say. */
      readonly insideBlends?: boolean
    }
  /** Letters in lower case; a low line stands for a single letter or team between: `a_e`. */
  | { readonly kind: 'letters'; readonly letters: string; readonly place?: MarkPlace }
  /** Every word of which this is so: that it is a noun, has 4 sounds. */
  | { readonly kind: 'word'; readonly feature: WordFeature; readonly value: string }

/** What stands on letters, of a pattern or exact ones. */
export type LetterTarget = Exclude<MarkTarget, { readonly kind: 'word' }>

/** By the key that a plan names it with. */
export type WordFeature = 'part of speech' | 'plural' | 'sounds' | 'syllables'

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
  /** The teacher's own words for the key. */
  readonly label?: string
  /** One to three characters, printed beside the mark; of a whole word's mark in the corner. */
  readonly tag?: string
  /** What a line does at a descender: hang below it (`clear`) or leave a gap for it (`break`). */
  readonly descenders?: 'clear' | 'break'
  /** What joins the two ends of a split pattern (a_e): straight with square corners, or a curve. */
  readonly link?: 'bracket' | 'arc'
}

export interface PlanGroup {
  /** As she wrote it; `fileSafeName` (names.ts) makes it a part of a file name, unique among the groups. */
  readonly name: string
  readonly place: Place
  /** Empty: the plan's own words; none empty where the plan has no words itself. */
  readonly words: readonly PlanWord[]
  readonly size?: TypeSize
  readonly font?: string
  readonly contrast?: Contrast
  /** Its own, in place of the plan's. */
  readonly marks?: readonly PlanMark[]
  readonly children?: number
  /** Of earlier weeks, where the group has words of its own. */
  readonly earlierWords?: readonly string[]
}

/** How large the main word is to be: at least so large, unless `exactly` is said. */
export type TypeSize =
  | { readonly kind: 'normal' }
  | { readonly kind: 'large' }
  | { readonly kind: 'points'; readonly points: number; readonly exactly?: true }
  | { readonly kind: 'x-height'; readonly mm: number; readonly exactly?: true }
  /** From the child's reading acuity; `xHeightForAcuityMm` (acuity.ts) gives the x-height. */
  | {
      readonly kind: 'acuity'
      /** Logarithm of the smallest angle read, in minutes of arc; 0 is 20/20, 1 is 20/200. */
      readonly logMar: number
      readonly distanceMm: number
      /** How many times larger than the smallest readable the type is to be. */
      readonly reserve: number
    }

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
  /** File-safe and unique in the plan without regard to capitals: names the item's folder and files. */
  readonly name: string
  /** The name that she gave it, as she wrote it. */
  readonly givenName?: string
  /** It came with the week: where the words are not enough for it, the week goes without it. */
  readonly ofWeek?: true
  readonly paper: Paper
  readonly orientation?: 'portrait' | 'landscape'
  readonly marginMm?: number
  readonly division: Division
  readonly gapMm: number
  readonly copies: number
  readonly size?: TypeSize
  readonly font?: string
  readonly marks?: 'all' | 'none'
  /** A subset of the words of the plan and its groups, in this order. */
  readonly words?: readonly string[]
  /** The groups to print for, by name; where left out: the whole class's words and every group; empty: the class alone. */
  readonly groups?: readonly string[]
  /** A line style's name, or `none`. */
  readonly border?: string
  readonly order: CardOrder
  readonly back: BackKind
  readonly flip: 'long edge' | 'short edge'
  readonly cut: CutStyle
  /** Where the key of the marks stands: on the set's cover, on a strip at the foot of every sheet, or nowhere. */
  readonly key: 'cover' | 'strip' | 'none'
  /** Whether a cover goes with the set. */
  readonly cover: boolean
  readonly contrast?: Contrast
  /** The layout's own options, read by the readers that the layout declares. */
  readonly options: Readonly<Record<string, unknown>>
}

/** A paper size as fed, portrait: the shorter edge is the width. */
export interface Paper extends Size {
  readonly name: string
  /** No paper at all: a picture on a screen, whose pixels are CSS pixels (geometry.ts), whatever else is printed how fine. */
  readonly screen?: true
}
