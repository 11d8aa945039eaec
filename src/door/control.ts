/** A key of a thing to print as a control of a page. */
export type ItemControl = {
  readonly name: string
  /** What it does, a clause that begins small and has no full stop. */
  readonly does: string
  /** What holds where it is left out. */
  readonly usual?: string
  /** A value as it may be written. */
  readonly example: string
} & Control

export type Control =
  | { readonly takes: 'number'; readonly least: number; readonly most: number }
  | { readonly takes: 'choice'; readonly choices: readonly string[] }
  | { readonly takes: 'yes or no' }
  /** Columns and rows: `4x4`. */
  | { readonly takes: 'grid'; readonly least: number; readonly most: number }
  /** A bare number is mm. */
  | { readonly takes: 'length' }
  | { readonly takes: 'text'; readonly what: string }
