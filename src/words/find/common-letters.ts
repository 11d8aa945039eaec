import { openOfferedWords } from './offered-file.js'

/** The words that are looked through, the most familiar first: what children meet. */
const LOOKED_THROUGH = 4000
/** A spelling that fewer of them have is a rarity. */
const LEAST_WORDS = 3

const known = new Map<string, readonly string[]>()

/** The letters in which a pattern is met, the commonest first: sh, th, ck … of consonant digraphs. */
export function commonLetters(pattern: string): readonly string[] {
  const found = known.get(pattern) ?? countLetters(pattern)
  known.set(pattern, found)
  return found
}

function countLetters(pattern: string): readonly string[] {
  const counts = new Map<string, number>()
  for (const { findings } of openOfferedWords().slice(0, LOOKED_THROUGH))
    for (const { letters } of findings.filter(finding => finding.pattern === pattern))
      counts.set(letters, (counts.get(letters) ?? 0) + 1)
  return [...counts]
    .filter(([, count]) => count >= LEAST_WORDS)
    .sort(([a, counted], [b, other]) => other - counted || (a < b ? -1 : 1))
    .map(([letters]) => letters)
}
