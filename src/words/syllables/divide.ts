import { isVowelSound } from '../alignment/arpabet.js'
import { alignWord } from '../alignment/graphemes.js'
import type { Grapheme } from '../word.js'
import { breakBetween } from './between-vowels.js'
import { listedDivisions } from './exceptions.js'
import { seamsOf } from './seams.js'
import { type Unit, unitsOf } from './units.js'
import type { OtherWords, Seam } from './word-parts.js'

export interface DivisionTask {
  readonly text: string
  /** Cover the text, as the alignment gives them. */
  readonly graphemes: readonly Grapheme[]
  /** ARPABET with stress, the one that was aligned; tells rob·in from ro·bust. */
  readonly pronunciation?: string
  /** Evidence for compounds, prefixes and endings; without it only rules of letters and sounds divide. */
  readonly others?: OtherWords
}

export interface Division {
  /** Joined they give the text. */
  readonly syllables: readonly string[]
  /** Why each division stands where it does, in plain words; one fewer than the syllables. */
  readonly rules: readonly string[]
}

/** Syllables as primary teaching divides them, one a vowel sound: rab·bit, ti·ger, cab·in, ta·ble, pump·kin. */
export function divideSyllables(task: DivisionTask): readonly string[] {
  return divisionOf(task).syllables
}

/** The same with its reasons. */
export function divisionOf({ text, graphemes, pronunciation, others }: DivisionTask): Division {
  const word = text.toLowerCase()
  const units = unitsOf(graphemes, pronunciation)
  const listed = exceptionFor(text, units)
  if (listed) return listed
  const seams = seamsOf(word, units, others && { others, divisionsIn: divisionsWith(others) })
  const vowels: number[] = []
  for (const [index, { kind }] of units.entries())
    if (kind === 'vowel' || kind === 'syllabic') vowels.push(index)
  const breaks = vowels.slice(1).flatMap((right, order) => {
    const left = vowels[order]!
    const between = units.slice(left + 1, right)
    const seam = seams.find(({ at }) => at > units[left]!.start && at <= units[right]!.start)
    if (seam && mayStand(seam, units[left]!, between, units[right]!)) return [seam]
    const found = breakBetween({
      left: units[left]!,
      between,
      right: units[right]!,
      before: units[left - 1],
      isFirst: order === 0,
      stressBefore: units[vowels[order - 1] ?? -1]?.stress,
    })
    return found ? [found] : []
  })
  const edges = [0, ...breaks.map(({ at }) => at), text.length]
  return {
    syllables: edges.slice(1).map((edge, index) => text.slice(edges[index], edge)),
    rules: breaks.map(({ rule }) => rule),
  }
}

/** Between two vowels without a consonant a seam stands before the second, or before the r of the first: mem·o·rized. */
function mayStand({ at }: Seam, left: Unit, between: readonly Unit[], right: Unit): boolean {
  return between.length > 0 || at === right.start || (at === left.end - 1 && left.letters.endsWith('r'))
}

const remembered = new WeakMap<OtherWords, Map<string, readonly Seam[]>>()
/** So many answers are kept: many words share a base. */
const mostRemembered = 20_000

/** Where another word divides, which may itself be made from others. */
function divisionsWith(others: OtherWords): (word: string, pronunciation: string) => readonly Seam[] {
  const known = remembered.get(others) ?? new Map<string, readonly Seam[]>()
  remembered.set(others, known)
  return (word, pronunciation) => {
    const name = `${word} ${pronunciation}`
    const before = known.get(name)
    if (before !== undefined) return before
    const { graphemes } = alignWord(word, pronunciation)
    const { syllables, rules } = divisionOf({ text: word, graphemes, pronunciation, others })
    let at = 0
    const divisions = rules.map((rule, index) => {
      at += syllables[index]!.length
      return { at, rule: rule.startsWith('as in') ? rule : `as in ${word}: ${rule}` }
    })
    if (known.size >= mostRemembered) known.clear()
    known.set(name, divisions)
    return divisions
  }
}

/** The listed division with as many pieces as the word has vowel sounds. */
function exceptionFor(text: string, units: readonly Unit[]): Division | undefined {
  const listed = listedDivisions().get(text.toLowerCase())
  if (listed === undefined) return undefined
  const vowels = units.reduce((count, unit) => count + unit.sounds.filter(isVowelSound).length, 0)
  const pieces = listed.find(division => division.length === vowels)
  if (pieces === undefined) return undefined
  let start = 0
  const syllables = pieces.map(piece => {
    start += piece.length
    return text.slice(start - piece.length, start)
  })
  return { syllables, rules: pieces.slice(1).map(() => 'listed: the rules would divide otherwise') }
}
