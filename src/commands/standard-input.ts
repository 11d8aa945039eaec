/** A plan that is typed or piped in. Apart from the reading of plans, which a command without one does not load. */

/** How a plan on standard input, typed as `-`, is named in messages. */
export const STANDARD_INPUT = 'standard input'

export interface Input {
  /** All of standard input. */
  readonly text: () => Promise<string>
}
