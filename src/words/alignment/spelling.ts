/** A word's text made ready for the table: letters alone, with the way back to the text. */
export interface Spelling {
  /** Lower case, accents folded, apostrophes and hyphens removed. */
  readonly letters: string
  /** For each letter, where its stretch of text begins: an apostrophe before it belongs to it. */
  readonly begins: readonly number[]
  /** For each letter, where its stretch of text ends: a hyphen after it belongs to it. */
  readonly ends: readonly number[]
  /** Letters before which a grapheme must end, because a sign stands there. */
  readonly breaks: ReadonlySet<number>
}

/** @param text Unicode NFC, apostrophes straight */
export function spell(text: string): Spelling {
  let letters = ''
  const begins: number[] = []
  const ends: number[] = []
  const breaks = new Set<number>()
  let pendingApostrophe: number | undefined
  for (let index = 0; index < text.length; index++) {
    const character = text[index]!
    if (character === "'" || character === '-') {
      if (character === "'" && index + 1 < text.length) pendingApostrophe ??= index
      else if (ends.length > 0) ends[ends.length - 1] = index + 1
      if (letters.length > 0) breaks.add(letters.length)
      continue
    }
    const folded = foldLetter(character)
    for (let part = 0; part < folded.length; part++) {
      letters += folded[part]!
      begins.push(part === 0 ? (pendingApostrophe ?? index) : index + 1)
      ends.push(index + 1)
    }
    pendingApostrophe = undefined
  }
  breaks.delete(letters.length)
  return { letters, begins, ends, breaks }
}

const ligatures: Readonly<Record<string, string>> = { æ: 'ae', œ: 'oe', ß: 'ss', ø: 'o', ł: 'l', đ: 'd' }

/** é → e, Ñ → n; a ligature gives its letters. */
export function foldLetter(character: string): string {
  if (character >= 'a' && character <= 'z') return character
  const lower = character.toLowerCase()
  return ligatures[lower] ?? lower.normalize('NFD').replace(/\p{Mark}/gu, '')
}
