import { isVowelSound } from '../alignment/arpabet.js'
import type { Grapheme } from '../word.js'
import { breakBetween } from './between-vowels.js'
import { listedDivisions } from './exceptions.js'
import { seamsOf } from './seams.js'
import { type Unit, unitsOf } from './units.js'
import type { OtherWords } from './word-parts.js'

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
  const seams = seamsOf(word, units, others)
  const vowels: number[] = []
  for (const [index, { kind }] of units.entries())
    if (kind === 'vowel' || kind === 'syllabic') vowels.push(index)
  const breaks = vowels.slice(1).flatMap((right, order) => {
    const left = vowels[order]!
    const between = units.slice(left + 1, right)
    const seam = seams.find(({ at }) => at > units[left]!.start && at <= units[right]!.start)
    if (seam && (between.length > 0 || seam.at === units[right]!.start)) return [seam]
    const found = breakBetween({
      left: units[left]!,
      between,
      right: units[right]!,
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
