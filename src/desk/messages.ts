/** What the page and its server say to one another, as plain data. The page is built from this and from its own room alone. */

import type { ItemControl } from '../door/control.js'

/** A key of a thing to print. */
export type DeskKey = ItemControl

/** What a plan holds: every value is text. */
export type Data = string | readonly Data[] | { readonly [key: string]: Data }

export type Path = readonly (string | number)[]

/** A change of the plan, as the library writes it; or of a list of words beside it, whose entries stand under `words`. */
export type Change = Edit & {
  /** Of a list: as the plan names it. */
  readonly file?: string
}

type Edit =
  | { readonly kind: 'set'; readonly path: Path; readonly value: Data; readonly textAs?: string }
  | { readonly kind: 'remove'; readonly path: Path }
  | { readonly kind: 'insert'; readonly path: Path; readonly at: number; readonly values: readonly Data[] }
  | { readonly kind: 'move'; readonly path: Path; readonly from: number; readonly to: number }

/** One step of hers: all of its changes or none. */
export interface Step {
  /** The state of the plan that she saw. */
  readonly from: string
  readonly changes: readonly Change[]
  /** What is undone with it, as a clause: `the clue of marsh`. */
  readonly says: string
  /** Steps of one gesture, such as typing a word, are undone as one. */
  readonly gesture?: string
}

export type StepAnswer =
  | { readonly ok: true; readonly version: string }
  /** Nothing was changed, and why. */
  | { readonly ok: false; readonly why: string }

export interface StudiedPiece {
  readonly letters: string
  readonly silent: boolean
  readonly counts: number
}

export interface Shown {
  readonly pattern: string
  readonly letters: string
  readonly start: number
  readonly end: number
  readonly place: string
  /** She said so herself. */
  readonly yours: boolean
  readonly why: string
}

/** A word as the study tells it. */
export interface DeskWord {
  readonly text: string
  /** `lexicon`, `teacher` or `guess`. */
  readonly source: string
  /** What of it she settled: `sounds`, `plural`, … */
  readonly yours: readonly string[]
  /** `4: s·n·a·k·(e)` */
  readonly sounds: string
  readonly said: readonly string[]
  /** Of words spelled alike: which there are, each with how it is said. */
  readonly meanings: readonly { readonly meaning: string; readonly said: string }[]
  readonly soundCount: number
  readonly pieces: readonly StudiedPiece[]
  readonly syllables: readonly string[]
  readonly partsOfSpeech: readonly string[]
  readonly partsAreGuessed: boolean
  readonly plural: { readonly form: string; readonly rule: string } | null
  readonly patterns: readonly Shown[]
  readonly notes: readonly string[]
  readonly clue?: string
  readonly clueDraft?: string
  /** Address of the word drawn with the plan's marks. */
  readonly picture?: string
}

/** A typed text that is no word. */
export interface NoWordHere {
  readonly trouble: string
  readonly advice: string
}

export interface DeskProblem {
  readonly severity: 'error' | 'warning'
  readonly message: string
  readonly advice: string
  /** Line of the plan, from 1. */
  readonly line?: number
  /** What it is about, where it is about something of the plan. */
  readonly path?: Path
}

export interface DeskPattern {
  readonly name: string
  readonly title: string
  readonly definition: string
  /** Words of the plan that show it. */
  readonly words: readonly string[]
}

export interface DeskSheet {
  readonly address: string
  readonly title: string
  readonly kind: string
  readonly side: 'front' | 'back'
  readonly widthMm: number
  readonly heightMm: number
}

export interface DeskItem {
  readonly name: string
  readonly title: string
  readonly layout: string
  readonly group: string | null
  readonly notes: readonly string[]
  readonly sheets: readonly DeskSheet[]
  /** Its sheets are those of an earlier state; the new ones are on their way. */
  readonly toCome?: true
}

/** A sheet that she sees, by its item's name and its place among the item's sheets from 0: what is seen comes first. */
export interface SeenSheet {
  readonly item: string
  readonly sheet: number
}

/** What is told of an entry of a list of words; null where it names a list's file, or is one too many to show. */
export type ToldEntry = DeskWord | NoWordHere | null

export interface DeskGroup {
  /** Beside its own list of words, and beside the entries of its list of marks. */
  readonly words: readonly ToldEntry[]
  readonly looks: readonly (string | null)[]
  /** Where it has marks of its own and the words of the class: these words as they are marked for it. */
  readonly ofClass: readonly DeskWord[]
}

/** A list of words in a file of its own. */
export interface DeskFile {
  /** As the plan names it. */
  readonly name: string
  readonly entries: readonly Data[]
  readonly words: readonly ToldEntry[]
  /** Whether it is a spreadsheet's file, whose rows hold more than the word. */
  readonly isTable: boolean
  /** Why it cannot be changed here, a sentence. */
  readonly why?: string
}

/** The plan as it stands. */
export interface DeskPlan {
  /** Of the file's text: a step is made from it. */
  readonly version: string
  readonly file: string
  /** Null where the file cannot be read as a plan: then nothing is changed here. */
  readonly data: Data | null
  readonly undo: string | null
  readonly redo: string | null
  /** Beside the entries of its list of words. */
  readonly words: readonly ToldEntry[]
  /** Beside the entries of its list of groups. */
  readonly groups: readonly DeskGroup[]
  /** Lists of words in files beside the plan, which it names. */
  readonly files: readonly DeskFile[]
  /** Words of earlier weeks that come back. */
  readonly oldWords: readonly DeskWord[]
  readonly patterns: readonly DeskPattern[]
  /** Paths of the pictures that lie beside the plan or in folders there. */
  readonly pictures: readonly string[]
  /** Paths of plans and lists beside the plan or in folders there, which may be earlier weeks, or a class file. */
  readonly weeks: readonly string[]
  /** Beside the entries of its list of marks: address of the looks of each. */
  readonly looks: readonly (string | null)[]
}

/** What has to come before there can be sheets: words, or a thing to make. */
export type Waits = 'words' | 'things'

/**
 * The sheets of the newest run that succeeded, and what is wrong with the plan. While a run is under way, those that she sees
 * are told as soon as they are there, in place of the older ones.
 */
export interface DeskSheets {
  /** Of the plan that the problems are about. */
  readonly version: string
  /** Whether a run is under way. */
  readonly busy: boolean
  /** Whether the sheets are those of an earlier state, because this one has an error. */
  readonly older: boolean
  readonly waits?: Waits
  readonly items: readonly DeskItem[]
  readonly problems: readonly DeskProblem[]
}

/** What may stand in a plan: the names and keys that the page offers. */
export interface DeskNames {
  readonly layouts: readonly NamedChoice[]
  readonly papers: readonly NamedChoice[]
  readonly fonts: readonly NamedChoice[]
  readonly borders: readonly NamedChoice[]
  readonly patterns: readonly NamedChoice[]
  /** Styles, each with the address of its picture. */
  readonly lines: readonly NamedChoice[]
  readonly outlines: readonly NamedChoice[]
  readonly partsOfSpeech: readonly string[]
  /** What the week's whole set is made of. */
  readonly weekParts: readonly NamedChoice[]
  /** Keys of every item, and by layout those of its own. */
  readonly itemKeys: readonly DeskKey[]
  readonly layoutKeys: Readonly<Record<string, readonly DeskKey[]>>
}

export interface NamedChoice {
  readonly name: string
  /** As it stands in a sentence, where that is not the name. */
  readonly title?: string
  readonly summary: string
}

/** What was written where she asked for files. */
export type SaveAnswer =
  | {
      readonly ok: true
      readonly folder: string
      readonly pdfs: readonly { readonly name: string; readonly address: string }[]
    }
  | { readonly ok: false; readonly why: string }

/** Lists for groups, from short words to long. */
export interface ProposedLists {
  readonly lists: readonly { readonly name: string; readonly words: readonly string[] }[]
  /** Why they are none, or short. */
  readonly why?: string
}

/** A layout as a picture of her own words, or why there is none. */
export interface LayoutPicture {
  readonly picture?: string
  readonly why?: string
}
