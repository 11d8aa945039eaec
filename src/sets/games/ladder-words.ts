/** A word as a ladder steps on it: the pieces of it that are heard. */
import { isVowelSound } from '../../words/alignment/arpabet.js'
import { countAsTaught } from '../../words/sound-pieces.js'
import type { Grapheme, Word } from '../../words/word.js'

/** What is one sound as taught: `ar` is, and so is each consonant of a blend. */
export interface HeardPiece {
  /** ARPABET without stress, several with spaces between: `AA R`. */
  readonly sounds: string
  /** As they are told: `ee`; `a_e` for a vowel with its silent e. */
  readonly letters: string
  readonly isVowel: boolean
  /** Of x and qu two. */
  readonly counts: number
}

export interface LadderWord {
  readonly word: Word
  readonly pieces: readonly HeardPiece[]
  /** Whether it is one of the teacher's words. */
  readonly isOnList: boolean
  /** How often it stands in the 51 million words of SUBTLEX-US; those of the list are familiar whatever is counted. */
  readonly familiarity: number
  readonly clue?: string
}

/** Runs of graphemes that are one piece each, silent ones left out. */
export function heardPieces(runs: readonly (readonly Grapheme[])[]): readonly HeardPiece[] {
  return runs.flatMap((run, index): readonly HeardPiece[] => {
    const sounds = run.flatMap(grapheme => grapheme.sounds)
    if (sounds.length === 0) return []
    const letters = run.map(grapheme => grapheme.letters).join('')
    const isVowel = sounds.some(isVowelSound)
    return [
      {
        sounds: sounds.join(' '),
        letters: (isVowel && isSplit(runs, index) ? `${letters}_e` : letters).toLowerCase(),
        isVowel,
        counts: countAsTaught(letters, sounds),
      },
    ]
  })
}

/** Whether the vowel at `index` is spelled together with a silent e at the word's end, one consonant away: cake. */
function isSplit(runs: readonly (readonly Grapheme[])[], index: number): boolean {
  const [vowel, , last] = runs.slice(index)
  const lettersOf = (run: readonly Grapheme[] | undefined) =>
    run?.map(({ letters }) => letters).join('') ?? ''
  return (
    index === runs.length - 3 &&
    /^[aeiouy]$/i.test(lettersOf(vowel)) &&
    /^e$/i.test(lettersOf(last)) &&
    last!.every(({ sounds }) => sounds.length === 0)
  )
}

/** One of the teacher's words, divided as its pieces are shown. */
export function listedLadderWord(word: Word): LadderWord {
  let [letters, end] = [0, 0]
  const runs = word.pieces.map(piece => {
    const start = end
    letters += piece.letters.length
    while (end < word.graphemes.length && (word.graphemes[end]!.start ?? 0) < letters) end++
    return word.graphemes.slice(start, end)
  })
  const pieces = heardPieces(runs)
  const base = { word, pieces, isOnList: true, familiarity: Number.POSITIVE_INFINITY }
  return word.clue === undefined ? base : { ...base, clue: word.clue }
}

/** One name for all words that sound the same. */
export function soundsOf({ pieces }: Pick<LadderWord, 'pieces'>): string {
  return pieces.map(({ sounds }) => sounds).join('|')
}

/** Whether one sound of a piece is another and no more: `AA R` may become `AO R`. */
export function isOneSoundChanged(from: string, to: string): boolean {
  if (!from.includes(' ') && !to.includes(' ')) return from !== to
  const [before, after] = [from.split(' '), to.split(' ')]
  return (
    before.length === after.length && before.filter((sound, index) => sound !== after[index]).length === 1
  )
}
