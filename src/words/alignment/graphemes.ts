/** A word's text and pronunciation → its graphemes. */
import { lazily } from '../../lazily.js'
import { rowsOf } from '../tables/installed-tables.js'
import type { Grapheme } from '../word.js'
import { type AlignedStretch, align } from './align.js'
import { soundsOf } from './arpabet.js'
import { type GraphemeTable, graphemeTable } from './grapheme-table.js'
import { spell } from './spelling.js'

export interface AlignedWord {
  /** Cover the text left to right without gap or overlap. */
  readonly graphemes: readonly Grapheme[]
  /** What the grapheme table does not explain, in plain words; empty for a word that follows English spelling. */
  readonly exceptions: readonly string[]
  /** How unlikely the spelling is: negative natural logarithm of its probability under the table. */
  readonly cost: number
}

/** The table with the weights learned from the lexicon. */
export const learnedTable: () => GraphemeTable = lazily(() => {
  const costs = rowsOf('alignment/grapheme-weights').map(
    ([letters, sounds, cost]) => [`${letters} ${sounds}`, Number(cost)] as const,
  )
  return graphemeTable(new Map(costs))
})

/**
 * @param text Unicode NFC, apostrophes straight
 * @param pronunciation ARPABET, with or without stress
 */
export function alignWord(text: string, pronunciation: string): AlignedWord {
  const name = `${text} ${pronunciation}`
  const known = remembered.get(name)
  if (known !== undefined) return known
  const aligned = alignAnew(text, pronunciation)
  if (remembered.size >= mostRemembered) remembered.clear()
  remembered.set(name, aligned)
  return aligned
}

/** A word is aligned for one question after another, so that the newest answers are kept. */
const mostRemembered = 500
const remembered = new Map<string, AlignedWord>()

function alignAnew(text: string, pronunciation: string): AlignedWord {
  const spelling = spell(text)
  const sounds = soundsOf(pronunciation)
  const { stretches, cost } = align(learnedTable(), { ...spelling, sounds })
  const graphemes = stretches.map(({ start, end, from, to }) => {
    const begin = spelling.begins[start]!
    return {
      letters: text.slice(begin, spelling.ends[end - 1]),
      start: begin,
      sounds: sounds.slice(from, to),
    }
  })
  return { graphemes, exceptions: exceptionsIn(stretches, graphemes), cost }
}

function exceptionsIn(
  stretches: readonly AlignedStretch[],
  graphemes: readonly Grapheme[],
): readonly string[] {
  if (!stretches.some(({ irregular }) => irregular)) return []
  return stretches.flatMap(({ irregular }, index) => {
    if (!irregular) return []
    const { letters, sounds } = graphemes[index]!
    return sounds.length === 0
      ? [`${letters} is silent here, which no rule explains`]
      : [`${letters} spells /${sounds.join(' ')}/, which no rule explains`]
  })
}
