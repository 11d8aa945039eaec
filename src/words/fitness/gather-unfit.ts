/** Words not to be offered to children. Build time. */
import { cuss } from 'cuss'
import { spelledElsewhere } from './spelled-elsewhere.js'
import { blockedWords, fitAfterAll } from './unfit-words.js'

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
