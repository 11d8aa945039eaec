/** A word aligned by hand, and how far an analysis agrees with it. */
import type { Word } from '../../../src/words/word.js'

export interface Agreement {
  readonly phonemes: number
  /** Of those, the ones that stand on the same letters. */
  readonly right: number
  /** All graphemes are the same. */
  readonly whole: boolean
}

/** Ways of a cell are divided by ` ~ `; each is right. */
export function waysOf(cell: string): readonly string[] {
  return cell.split(' ~ ')
}

/**
 * Best agreement with one of the ways to align the word.
 * @param cell graphemes as `letters=SOUND+SOUND`, `-` for none, sounds that are both right divided by `|`
 */
export function agreementWith(cell: string, word: Word): Agreement {
  const spoken = spokenGraphemes(word)
  const agreements = waysOf(cell).map(way => compare(way.split(' '), spoken))
  return agreements.reduce((best, next) =>
    next.right - next.phonemes > best.right - best.phonemes || next.whole ? next : best,
  )
}

interface SpokenGrapheme {
  readonly letters: string
  readonly sounds: string
  readonly isStressed: boolean
}

/** By the index of their first letter. */
function spokenGraphemes({ graphemes, pronunciations }: Word): ReadonlyMap<number, SpokenGrapheme> {
  const spoken = (pronunciations[0] ?? '').split(' ')
  let next = 0
  return new Map(
    graphemes.map(({ letters, start, sounds }) => {
      const said = spoken.slice(next, next + sounds.length)
      next += sounds.length
      const isStressed = said.some(sound => /[12]$/.test(sound))
      return [start, { letters, sounds: sounds.join('+'), isStressed }]
    }),
  )
}

function compare(cells: readonly string[], spoken: ReadonlyMap<number, SpokenGrapheme>): Agreement {
  let start = 0
  let phonemes = 0
  let right = 0
  let whole = cells.length === spoken.size
  for (const cell of cells) {
    const [letters = '', sounds = ''] = cell.split('=')
    const ways = sounds.split('|').map(way => (way === '-' ? '' : way))
    const count = ways[0]!.split('+').filter(Boolean).length
    const found = spoken.get(start)
    const same = found !== undefined && found.letters === letters && ways.some(way => soundsAlike(way, found))
    phonemes += count
    if (same) right += count
    else whole = false
    start += letters.length
  }
  return { phonemes, right, whole }
}

/** Of a vowel without stress dictionaries write now IH, now AH. */
function soundsAlike(way: string, { sounds, isStressed }: SpokenGrapheme): boolean {
  const reduced = (text: string) => (isStressed ? text : text.replace(/\bIH\b/g, 'AH'))
  return reduced(way) === reduced(sounds)
}
