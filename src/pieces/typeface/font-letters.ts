import type { FontFile } from './font-file.js'

/** The letters of every word, and those that the heights of a typeface are measured from. */
const letters = [...'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ']

/** No letter reaches further from its origin, in em; noise does. */
const farthestEm = 3

/** What keeps the font from setting words, a clause; undefined where each letter of the alphabet is drawn. */
export function faultOfLetters(font: FontFile): string | undefined {
  const lacking = letters.filter(letter => !font.covers(letter.codePointAt(0)!))
  if (lacking.length > 0) return `the font has no letter ${lacking.slice(0, 12).join(', ')}`
  const empty = letters.filter(letter => !font.draws(letter.codePointAt(0)!))
  if (empty.length > 0) return `the font draws nothing for the letter ${empty.slice(0, 12).join(', ')}`
  const absurd = letters.find(letter => !isLetter(font, letter))
  return absurd && `what the font draws for ${absurd} is no letter`
}

function isLetter(font: FontFile, letter: string): boolean {
  const shaped = font.shape(letter, [])
  const advance = shaped.reduce((sum, glyph) => sum + glyph.advanceEm, 0)
  const inks = shaped.flatMap(({ glyph }) => font.outline(glyph).ink ?? [])
  return (
    inks.length > 0 &&
    advance > 0 &&
    advance < farthestEm &&
    inks.every(({ left, right, top, bottom }) => [left, right, top, bottom].every(isNear) && bottom > top)
  )
}

function isNear(em: number): boolean {
  return Math.abs(em) < farthestEm
}
