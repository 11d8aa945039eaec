/** What is said of words that a game has no place for. */

export interface LeftOut {
  readonly text: string
  /** A clause: `it has fewer than 3 letters`. */
  readonly why: string
}

/** `"ox" is not hidden: it has …`, and once for all words of which the same holds: `"a", "ox" are not hidden: each has …` */
export function leftOutInWords(
  leftOut: readonly LeftOut[],
  what: string,
): readonly { readonly message: string; readonly why: string }[] {
  return [...new Set(leftOut.map(({ why }) => why))].map(why => {
    const names = leftOut.filter(each => each.why === why).map(({ text }) => `"${text}"`)
    return names.length === 1
      ? { message: `${names[0]} is ${what}: ${why}`, why }
      : { message: `${names.join(', ')} are ${what}: ${why.replace(/^it /, 'each ')}`, why }
  })
}
