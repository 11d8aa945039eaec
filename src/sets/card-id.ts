/** What a card is called in the manifest and in messages. */

export interface CardName {
  /** `card`, `board`, … */
  readonly prefix: string
  /** 1, 2, … in set order. */
  readonly number: number
  /** 1, 2, … */
  readonly copy: number
  /** How many cards the set has, which decides the leading zeros. */
  readonly of: number
}

/** `card-03`; a further copy is `card-03-copy-2`, so that every piece of a set has an id of its own. */
export function cardId({ prefix, number, copy, of }: CardName): string {
  const digits = Math.max(2, String(of).length)
  const first = `${prefix}-${String(number).padStart(digits, '0')}`
  return copy === 1 ? first : `${first}-copy-${copy}`
}
