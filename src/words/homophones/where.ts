/** Where a group of words sounds the same. */
export const whereabouts = [
  'every accent',
  'wh said as w',
  'merry said as marry',
  'cot and caught merged',
  'r dropped',
] as const

export type Where = (typeof whereabouts)[number]

export interface HomophoneGroup {
  /** The most familiar first. */
  readonly words: readonly string[]
  readonly where: Where
}

export function readWhere(written: string): Where | undefined {
  return whereabouts.find(each => each === written)
}
