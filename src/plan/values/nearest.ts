import { closest, distance } from 'fastest-levenshtein'

/** Among more names than these, only those that begin alike are compared: a slip is seldom in the first letter. */
const many = 300

/**
 * What to do about an unknown name: the nearest known one first, then where all of them are listed.
 * `known` may be empty; `where` is a sentence of its own; `shown` is how a known name is written.
 */
export function nearestAdvice(
  name: string,
  known: readonly string[],
  where: string,
  shown: (known: string) => string = known => known,
): string {
  const compared = known.length > many ? known.filter(other => other[0] === name[0]) : known
  if (compared.length === 0) return where
  const shortest = distance(name, closest(name, compared))
  const candidates = compared.filter(other => distance(name, other) === shortest)
  const nearest = candidates.find(other => other[0] === name[0]) ?? candidates[0]!
  const close = distance(name, nearest) <= Math.max(2, name.length / 3)
  return `${close ? `Did you mean "${shown(nearest)}"?` : `The nearest known one is "${shown(nearest)}".`} ${where}`
}
