/** A grapheme with its sounds as the pronunciation has them, stress included. */
export interface Spoken {
  readonly letters: string
  readonly said: readonly string[]
}
