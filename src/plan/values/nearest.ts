/** What to say to a name that nothing is called: what was meant, where that can be told, and else where all names are. */
import { distance } from 'fastest-levenshtein'
import { foldName } from './fold-name.js'
import { inWords } from './in-words.js'

/** Names that are none of the kind asked for, folded, each with the sentence that says what to write instead. */
export type OtherNames = ReadonlyMap<string, string>

export interface Sought {
  /** As it was typed. */
  readonly name: string
  /** What can be named, as it is written; may be empty. */
  readonly known: readonly string[]
  /** Where all of them are listed, a sentence of its own. */
  readonly where: string
  /** Asked for only when it is needed. */
  readonly others?: (() => OtherNames) | undefined
}

/**
 * Whole words first: a name of something else, or a word of the trade; then known names that hold the word whole; then
 * what differs by a slip or two. Nothing else is guessed at: a wrong guess costs more than a list.
 */
export function nearestAdvice({ name, known, where, others = () => new Map() }: Sought): string {
  const folded = foldName(name)
  const elsewhere = others()
  const instead = elsewhere.get(folded)
  if (instead !== undefined) return instead
  const holding = known.filter(each => holdsWhole(foldName(each), folded))
  if (holding.length > 0 && holding.length <= mostOffered) return `${didYouMean(holding)} ${where}`
  const nearest = nearestOf(folded, known)
  if (nearest.length > 0) return `${didYouMean(nearest.slice(0, mostOffered))} ${where}`
  const [other] = nearestOf(folded, [...elsewhere.keys()])
  return other === undefined ? where : elsewhere.get(other)!
}

/** More would be a list, and that has a place of its own. */
const mostOffered = 4

/** `blend` in `ending-blend`; a word of one or two letters says too little. */
function holdsWhole(known: string, word: string): boolean {
  return word.length > 2 && known !== word && `-${known}-`.includes(`-${word}-`)
}

/** Those that are the fewest slips away, if these are no more than a word of that length may have. */
function nearestOf(name: string, known: readonly string[]): readonly string[] {
  const most = mostSlips(name)
  const found = known
    .filter(each => Math.abs(each.length - name.length) <= most)
    .map(each => ({ each, slips: slipsBetween(name, foldName(each)) }))
    .filter(({ slips }) => slips <= most)
  const fewest = Math.min(...found.map(({ slips }) => slips))
  const nearest = found.filter(({ slips }) => slips === fewest).map(({ each }) => each)
  // A slip is seldom in the first letter.
  const alike = nearest.filter(each => foldName(each)[0] === name[0])
  return alike.length > 0 ? alike : nearest
}

/** A slip in 2 letters, two in 5, three in 8 or more: beyond that another word is as near. */
function mostSlips(name: string): number {
  return Math.min(3, Math.floor((name.length + 1) / 3))
}

/** Letters added, left out or changed; two neighbours in each other's place are one slip. */
function slipsBetween(a: string, b: string): number {
  const at = [...a].findIndex((letter, index) => letter !== b[index])
  const swapped = at >= 0 && a.length === b.length && a[at] === b[at + 1] && a[at + 1] === b[at]
  return swapped && a.slice(at + 2) === b.slice(at + 2) ? 1 : distance(a, b)
}

function didYouMean(names: readonly string[]): string {
  return `Did you mean ${inWords(names.map(name => `"${name}"`))}?`
}
