import type { Word } from '../../words/word.js'

const MOST_NAMED = 12

/** `"reed", "marsh" and "fen"`, or the first dozen and how many more. */
export function namedWords(words: readonly Word[]): string {
  const shown = words.slice(0, MOST_NAMED).map(({ text }) => `"${text}"`)
  if (words.length > MOST_NAMED) return `${shown.join(', ')} and ${words.length - MOST_NAMED} more`
  return shown.length === 1 ? shown[0]! : `${shown.slice(0, -1).join(', ')} and ${shown.at(-1)}`
}
