/**
 * Compounds: two familiar words that are written as one and keep their sounds. The one rule for all who ask: the
 * pattern, the division into syllables, and the lexicon, whose compounds sound like their halves.
 */
import { isVowelSound } from '../alignment/arpabet.js'
import { hasNoEnding } from '../endings/recognise.js'
import { alike, isSaid, type OtherWords } from '../syllables/word-parts.js'
import { isInCompoundGroup } from './compound-groups.js'
import { type Halves, listedHalves } from './listed-compounds.js'

/** A grapheme of the word, as far as the rule asks. */
interface SaidLetters {
  /** Index of the first letter in the word's text. */
  readonly start: number
  readonly end: number
  /** ARPABET without stress. */
  readonly sounds: readonly string[]
  /** Of its vowel; undefined where no pronunciation tells. */
  readonly stress: number | undefined
}

export interface CompoundQuestion {
  /** Lower case: the word, or what is left of it without its endings. */
  readonly text: string
  /** Cover the text; the last may have lost a letter to an ending. */
  readonly letters: readonly SaidLetters[]
}

/** Twice in five million words; rarer halves are mostly chance. */
const familiarHalf = 20
const shortestHalf = 3
/** Shorter words that open or close compounds so often that they are no chance. */
const shortFirst: ReadonlySet<string> = new Set(['up', 'on'])
const shortSecond: ReadonlySet<string> = new Set(['up', 'by'])

/** Where the word divides in more than one way, the halves of which the rarer is the most familiar. */
export function halvesOf({ text, letters }: CompoundQuestion, others: OtherWords): Halves | undefined {
  const listed = listedHalves(text)
  if (listed !== undefined) return listed
  if (isInCompoundGroup(text, 'no compound')) return undefined
  let best: Candidate | undefined
  for (const { start } of letters.slice(1)) {
    const at = start - letters[0]!.start
    const [first, second] = [text.slice(0, at), text.slice(at)]
    const familiarity = Math.min(familiarityOf(first, others), familiarityOf(second, others))
    if (familiarity < familiarHalf) continue
    if (isInCompoundGroup(first, 'no first half') || isInCompoundGroup(second, 'no second half')) continue
    if (!isLongEnough(first, shortFirst) || !isLongEnough(second, shortSecond)) continue
    const before = letters.filter(({ end }) => end <= start)
    const after = letters.filter(each => each.start >= start)
    if (!isSaid(first, soundsIn(before), others) || !isSaidSecond(second, after, others)) continue
    const candidate = { first, second, at, familiarity, isPlural: isPlural(first, others) }
    if (best === undefined || isBetter(candidate, best)) best = candidate
  }
  return best
}

interface Candidate extends Halves {
  /** Of the rarer half. */
  readonly familiarity: number
  /** The first half is a noun and its s: the windows of windowsill, not the news of newsprint. */
  readonly isPlural: boolean
}

function isBetter(candidate: Candidate, best: Candidate): boolean {
  if (candidate.isPlural !== best.isPlural) return best.isPlural
  return candidate.familiarity > best.familiarity
}

function isPlural(half: string, others: OtherWords): boolean {
  return /[^s]s$/.test(half) && !hasNoEnding(half) && others.familiarity(half.slice(0, -1)) >= familiarHalf
}

function isLongEnough(half: string, short: ReadonlySet<string>): boolean {
  return half.length >= shortestHalf || short.has(half)
}

function soundsIn(letters: readonly SaidLetters[]): readonly string[] {
  return letters.flatMap(({ sounds }) => sounds)
}

const reduced: ReadonlySet<string> = new Set(['AH', 'IH', 'ER'])

/** Second halves whose vowel is weak in most compounds: fireman, milkmen, woodland. */
const weakForms: Readonly<Record<string, string>> = { man: 'M AH N', men: 'M AH N', land: 'L AH N D' }

function isSaidSecond(half: string, letters: readonly SaidLetters[], others: OtherWords): boolean {
  const sounds = soundsIn(letters)
  const weak = weakForms[half]
  if (weak !== undefined && alike(weak.split(' '), sounds)) return true
  return isHeard(half, letters) && (isSaid(half, sounds, others) || isSaidAsForm(half, sounds, others))
}

/** The dictionary lacks a form of a word that it has: pecker in woodpecker. */
function isSaidAsForm(half: string, sounds: readonly string[], others: OtherWords): boolean {
  if (!half.endsWith('er') || others.pronunciationsOf(half).length > 0 || sounds.at(-1) !== 'ER') return false
  return [half.slice(0, -2), half.slice(0, -1)].some(base => isSaid(base, sounds.slice(0, -1), others))
}

/**
 * The second half is not said weakly: it has some stress (sail·boat), or a vowel that no weak syllable has (snow·fall).
 * Where the dictionary hears neither (drum·stick, black·bird), four letters are enough to be no chance; kin in pumpkin
 * and per in hamper are not.
 */
function isHeard(second: string, letters: readonly SaidLetters[]): boolean {
  const vowels = letters.filter(({ sounds }) => sounds.some(isVowelSound))
  if (vowels.some(({ stress }) => stress !== 0)) return true
  if (second.length < shortestHalf) return false
  return (
    second.length > shortestHalf || vowels.some(({ sounds }) => !sounds.some(sound => reduced.has(sound)))
  )
}

/** A half is as familiar as the word that it is a form of: scraper, mower, pecker. */
function familiarityOf(half: string, others: OtherWords): number {
  const own = others.familiarity(half)
  return own > 0 && own < familiarHalf && /(?:er|s)$/.test(half)
    ? Math.max(own, familiarityOfBase(half, others))
    : own
}

function familiarityOfBase(half: string, others: OtherWords): number {
  const stem = half.replace(/(?:er|s)$/, '')
  return Math.max(others.familiarity(stem), others.familiarity(`${stem}e`))
}
