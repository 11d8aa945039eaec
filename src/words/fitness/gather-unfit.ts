/** Words not to be offered to children. Build time. */
import { cuss } from 'cuss'
import { rowsOf, wordsOf } from '../tables/installed-tables.js'

/**
 * `cuss` rates 0 (mostly harmless: banana, church), 1 (may be a swear word) and 2 (is one). From 1 upwards it is
 * followed, ordinary school words apart; what is rated 0 is left out only when our own topics name it.
 */
const lowestRating = 1

/** Wherever these letters stand, the word is out: compounds and forms that no list has. */
const coarseLetters = /fuck|shit(?!ak)|bitch|whore|nigg[ae]|cunt|faggot|wank|bollock|arsehole|asshole/

/** @param words every word that could be offered, lower case */
export function gatherUnfit(words: Iterable<string>): Set<string> {
  const unfit = new Set([...blockedWords(), ...spelledElsewhere()])
  const fit = fitAfterAll('flagged')
  for (const [word, rating] of Object.entries(cuss))
    if (rating >= lowestRating && !fit.has(word) && !word.includes(' ')) unfit.add(word)
  for (const word of words) if (coarseLetters.test(word)) unfit.add(word)
  return unfit
}

const endings = ['s', 'es', 'd', 'ed', 'ing', 'er', 'ers', "'s"]

/** Every blocked word with its regular endings; the caller keeps those that are words. */
function blockedWords(): ReadonlySet<string> {
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
function fitAfterAll(wanted: 'flagged' | 'built'): ReadonlySet<string> {
  return new Set(
    rowsOf('fitness/fit-after-all')
      .filter(([, why]) => why === wanted)
      .map(([word = '']) => word),
  )
}

const endingsElsewhere = ['s', 'd', 'ed', 'ing', 'r', 'rs', 'er', 'ers', 'ly', 'less', 'ful', 'able']

/** Spellings that American schools do not teach, with the endings they take. */
function spelledElsewhere(): ReadonlySet<string> {
  const spellings = new Set<string>()
  const american: string[] = []
  for (const [spelling = '', how] of rowsOf('fitness/spelled-elsewhere')) {
    if (how === 'American') american.push(spelling)
    else spellings.add(spelling)
    if (how !== 'with its endings') continue
    for (const ending of endingsElsewhere) {
      spellings.add(spelling + ending)
      spellings.add(spelling.replace(/e$/, '') + ending)
    }
  }
  for (const word of american) spellings.delete(word)
  return spellings
}
