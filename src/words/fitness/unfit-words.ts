/** Words unfit for children, with the endings that a rule gives them. */
import { rowsOf, wordsOf } from '../tables/installed-tables.js'

const endings = ['s', 'es', 'd', 'ed', 'ing', 'er', 'ers', "'s"]

/** Every blocked word with its regular endings; the caller keeps those that are words. */
export function blockedWords(): ReadonlySet<string> {
  const blocked = new Set<string>()
  for (const base of wordsOf('fitness/unfit-words')) {
    blocked.add(base)
    for (const ending of endings) blocked.add(base + ending)
    if (base.endsWith('e'))
      for (const ending of ['ed', 'ing', 'er', 'ers']) blocked.add(base.slice(0, -1) + ending)
    if (/[^aeiou][aeiou][bdgmnpt]$/.test(base))
      for (const ending of ['ed', 'ing', 'er', 'ers', 'y']) blocked.add(base + base.slice(-1) + ending)
    if (/[^aeiou]y$/.test(base))
      for (const ending of ['ies', 'ied', 'ier']) blocked.add(base.slice(0, -1) + ending)
  }
  for (const word of fitAfterAll('built')) blocked.delete(word)
  return blocked
}

/** To be offered although a published list flags them, or although they are built like a form of a blocked word. */
export function fitAfterAll(wanted: 'flagged' | 'built'): ReadonlySet<string> {
  return new Set(
    rowsOf('fitness/fit-after-all')
      .filter(([, why]) => why === wanted)
      .map(([word = '']) => word),
  )
}
