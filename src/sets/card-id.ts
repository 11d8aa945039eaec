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
  /** Of a board that is joined from several sheets: which, 1, 2, … */
  readonly part?: number | undefined
}

/** `card-03`; a further copy is `card-03-copy-2`, a sheet of a board `board-01-part-2`, so that every piece of a set has an id of its own. */
export function cardId({ prefix, number, copy, of, part }: CardName): string {
  const digits = Math.max(2, String(of).length)
  const first = `${prefix}-${String(number).padStart(digits, '0')}`
  const named = copy === 1 ? first : `${first}-copy-${copy}`
  return part === undefined ? named : `${named}-part-${part}`
}
