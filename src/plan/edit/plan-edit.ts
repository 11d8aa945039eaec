/** A change of a plan's text, told by what it is to mean; how it is written is decided beside what stands there. */

/** What a plan holds, as plain data: every scalar is text. */
export type PlanData = string | readonly PlanData[] | { readonly [key: string]: PlanData }

/** From the top: a key as it is written, or the number of an entry of a list, from 0. */
export type PlanPath = readonly (string | number)[]

export type PlanEdit =
  /**
   * Gives a key or an entry this value; a key that is not there is added. Where the key belongs to an entry that is text
   * alone (`- reed`), that text is written behind the key `textAs` first (`- word: reed`).
   */
  | { readonly kind: 'set'; readonly path: PlanPath; readonly value: PlanData; readonly textAs?: string }
  /** Takes a key or an entry out; notes beside it stay. */
  | { readonly kind: 'remove'; readonly path: PlanPath }
  /** Puts entries into a list before its entry `at`; a list that is not there is begun. */
  | {
      readonly kind: 'insert'
      readonly path: PlanPath
      readonly at: number
      readonly values: readonly PlanData[]
    }
  /** Puts an entry of a list in another place: `to` is where it stands then. */
  | { readonly kind: 'move'; readonly path: PlanPath; readonly from: number; readonly to: number }
