/** Words not to be offered to children. Build time. */
import { cuss } from 'cuss'
import { sFormOf } from '../endings/verb-endings.js'
import { rowsOf, wordsOf } from '../tables/installed-tables.js'
import { withKin } from './kin.js'

/**
 * `cuss` rates 0 (mostly harmless: banana, church), 1 (may be a swear word) and 2 (is one). From 1 upwards it is
 * followed, with an s as well and ordinary school words apart; what is rated 0 is left out only when our own topics name it.
 */
const lowestRating = 1

/** Wherever these letters stand, the word is out: compounds and forms that no list has. */
const coarseLetters = /fuck|shit(?!ak)|bitch|whore|nigg[ae]|cunt|faggot|wank|bollock|arsehole|asshole/

/** @param words every word that could be offered, lower case */
export function gatherUnfit(words: Iterable<string>): Set<string> {
  const unfit = new Set([...kinOf(wordsOf('fitness/unfit-words')), ...spelledElsewhere()])
  const fit = fitAfterAll('flagged')
  for (const [word, rating] of Object.entries(cuss))
    if (rating >= lowestRating && !fit.has(word) && !word.includes(' '))
      for (const form of withS(word)) if (!fit.has(form)) unfit.add(form)
  for (const word of words) if (coarseLetters.test(word)) unfit.add(word)
  return unfit
}

/** Odd by their form and not by what they mean: their kin may be ordinary words (rep, reply). */
const oddByForm = new Set(['speech', 'foreign', 'brand', 'dated', 'abbreviation'])

/** Fit words that are not offered either; lower case. */
export function gatherNotReadAloud(): ReadonlySet<string> {
  const rows = rowsOf('fitness/not-read-aloud')
  const isOdd = ([, why = '']: (typeof rows)[number]) => oddByForm.has(why)
  const odd = rows.filter(isOdd).flatMap(([word = '']) => withS(word))
  const byMeaning = rows.filter(row => !isOdd(row)).map(([word = '']) => word)
  return new Set([...odd, ...kinOf(byMeaning)])
}

function withS(word: string): readonly string[] {
  return [word, sFormOf({ text: word }).form]
}

/** The words with their kin, without those that are fit all the same. */
function kinOf(words: readonly string[]): ReadonlySet<string> {
  const kin = withKin(words)
  for (const word of fitAfterAll('built')) kin.delete(word)
  return kin
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
