/**
 * How a teacher writes her division of a word into sounds, each as the letters that spell it: `m ar sh`. A letter that
 * says nothing may stand in brackets, `c a k (e)`, or without them, `c a k e`: then the alignment finds out. A sound
 * spelled by letters that stand apart has a low line, `c a_e k`: what is behind it follows the next sound and says
 * nothing of its own.
 */
export interface DividedLetters {
  readonly letters: string
  /** She says herself that they say nothing. */
  readonly silent: boolean
}

/** `k(e)` → `k (e)` */
export function bracketsApart(text: string): string {
  return text.replaceAll(/\([^()]*\)/g, bracketed => ` ${bracketed.replaceAll(/\s+/g, '')} `)
}

const piece = /^(?:(?<letters>[^()_]+)(?:_(?<behind>[^()_]+))?|\((?<silent>[^()_]+)\))$/

/** The letters in the order of the word; `undefined` for a piece that is none, or a low line with no sound after it. */
export function dividedLetters(pieces: readonly string[]): readonly DividedLetters[] | undefined {
  const divided: DividedLetters[] = []
  let waiting: string | undefined
  for (const written of pieces) {
    const groups = piece.exec(written)?.groups
    if (groups === undefined || (waiting !== undefined && groups.behind !== undefined)) return undefined
    const { letters, behind, silent } = groups
    divided.push({ letters: letters ?? silent!, silent: letters === undefined })
    if (waiting !== undefined) divided.push({ letters: waiting, silent: true })
    waiting = behind
  }
  return waiting === undefined ? divided : undefined
}
