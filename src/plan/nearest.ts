import { closest, distance } from 'fastest-levenshtein'

/**
 * What to do about an unknown name: the nearest known one first, then where all of them are listed.
 * `known` may be empty; `where` is a sentence of its own.
 */
export function nearestAdvice(name: string, known: readonly string[], where: string): string {
  if (known.length === 0) return where
  const nearest = closest(name, known)
  const close = distance(name, nearest) <= Math.max(2, name.length / 3)
  return `${close ? `Did you mean "${nearest}"?` : `The nearest known one is "${nearest}".`} ${where}`
}
