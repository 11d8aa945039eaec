/** The teacher's own division of a word into sounds: her letters win, the known sounds are fitted to them. */
import type { Grapheme } from '../word.js'
import { align } from './align.js'
import { soundsOf } from './arpabet.js'
import { learnedTable } from './graphemes.js'
import { type Spelling, spell } from './spelling.js'

/** A stretch of the word's letters that she takes as one; the part after a low line (`a_e`) is silent. */
export interface DividedPart {
  readonly start: number
  readonly end: number
  readonly silent: boolean
}

/**
 * @param division each sound as the letters that spell it; `a_e` for letters that stand apart
 * @returns undefined when the letters do not add up to the word
 */
export function readDivision(text: string, division: readonly string[]): readonly DividedPart[] | undefined {
  const { letters } = spell(text)
  const parts: DividedPart[] = []
  let at = 0
  let waiting: string | undefined
  const take = (written: string, silent: boolean) => {
    const part = spell(written).letters
    if (part.length === 0 || !letters.startsWith(part, at)) return false
    parts.push({ start: at, end: at + part.length, silent })
    at += part.length
    return true
  }
  for (const sound of division) {
    const [first = '', rest, ...more] = sound.split('_')
    if (more.length > 0 || !take(first, false)) return undefined
    if (waiting !== undefined && !take(waiting, true)) return undefined
    waiting = rest
  }
  if (waiting !== undefined && !take(waiting, true)) return undefined
  return at === letters.length ? parts : undefined
}

/**
 * @param pronunciations ARPABET, the likeliest first
 * @returns her graphemes and the pronunciation fitted to them, undefined when none of them can be fitted
 */
export function alignDivision(
  text: string,
  parts: readonly DividedPart[],
  pronunciations: readonly string[],
): { readonly graphemes: readonly Grapheme[]; readonly pronunciation: string } | undefined {
  const spelling = spell(text)
  const breaks = new Set(parts.slice(1).map(part => part.start))
  let best: { cost: number; graphemes: readonly Grapheme[]; pronunciation: string } | undefined
  for (const pronunciation of pronunciations.flatMap(listed => [listed, withErApart(listed)])) {
    const sounds = soundsOf(pronunciation)
    const { stretches, cost } = align(learnedTable(), { letters: spelling.letters, breaks, sounds })
    if (stretches.some(stretch => stretch.irregular) || (best !== undefined && best.cost <= cost)) continue
    const graphemes = parts.map(part => {
      const inside = stretches.filter(stretch => stretch.start >= part.start && stretch.end <= part.end)
      return graphemeOf(text, spelling, part, sounds.slice(inside[0]!.from, inside.at(-1)!.to))
    })
    if (parts.some((part, index) => !part.silent && graphemes[index]!.sounds.length === 0)) continue
    best = { cost, graphemes, pronunciation }
  }
  return best
}

/** She may hear a vowel and an r (a-round) where the dictionary writes both as one sound. */
function withErApart(pronunciation: string): string {
  return pronunciation.replace(/\bER([012])\b/g, 'AH$1 R')
}

function graphemeOf(
  text: string,
  spelling: Spelling,
  part: DividedPart,
  sounds: readonly string[],
): Grapheme {
  const start = spelling.begins[part.start]!
  return { letters: text.slice(start, spelling.ends[part.end - 1]), start, sounds }
}
