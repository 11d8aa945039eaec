/**
 * A word's sounds as every page says them: the number and the pieces, silent ones in brackets. There are as many pieces
 * outside brackets as the number says; where one counts for more, it is said behind them: `4: b·o·x, x counts two`.
 */
import type { SoundPiece, Word } from './word.js'

type Sounding = Pick<Word, 'pieces' | 'soundCount' | 'source'>

/** `4: s·n·a·k·(e)`, for under a heading that says sounds; said to be a guess where it is one. */
export function soundsInWords(word: Sounding): string {
  return `${word.soundCount}: ${piecesInWords(word)}${word.source === 'guess' ? ' (a guess)' : ''}`
}

/** `4 sounds: s·n·a·k·(e)`, `1 sound: I`. */
export function soundsInASentence(word: Sounding): string {
  const sounds = word.soundCount === 1 ? 'sound' : 'sounds'
  return soundsInWords(word).replace(/^(\d+)/, `$1 ${sounds}`)
}

/** `s·n·a·k·(e)`; `qu·ee·n, qu counts two`. */
export function piecesInWords({ pieces }: Pick<Word, 'pieces'>): string {
  const shown = pieces.map(shownPiece).join('·')
  return [shown, ...countsInWords(pieces)].join(', ')
}

/** The same of the pieces up to the last of so many that are heard: `s·n`, `kn·o`. */
export function piecesSoFar({ pieces }: Pick<Word, 'pieces'>, heard: number): string {
  const heardAt = pieces.flatMap(({ silent }, index) => (silent ? [] : [index]))
  return piecesInWords({ pieces: pieces.slice(0, heardAt[heard - 1]! + 1) })
}

/** `k`, and `(e)` where it says nothing. */
export function shownPiece({ letters, silent }: SoundPiece): string {
  return silent ? `(${letters})` : letters
}

/**
 * The word's own division as a plan takes it: `s n a k (e)`. Undefined where it is a guess, or where a piece counts for
 * more than one sound, which a division cannot say.
 */
export function divisionToWrite({ pieces, source }: Sounding): string | undefined {
  if (source === 'guess' || pieces.some(({ counts, silent }) => !silent && counts !== 1)) return undefined
  return pieces.map(shownPiece).join(' ')
}

const numbers = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten']

/** `x counts two`, `ar and er count two`: one sentence for each number above one. */
function countsInWords(pieces: readonly SoundPiece[]): readonly string[] {
  const more = [...new Set(pieces.map(({ counts }) => counts))].filter(counts => counts > 1)
  return more
    .toSorted((a, b) => a - b)
    .map(counts => {
      const names = [...new Set(namesOf(pieces, counts))]
      const [last, ...before] = names.toReversed()
      const all = before.length === 0 ? last : `${before.toReversed().join(', ')} and ${last}`
      return `${all} ${names.length === 1 ? 'counts' : 'count'} ${numbers[counts] ?? counts}`
    })
}

const places = ['first', 'second', 'third', 'fourth']

/** The letters of each piece that counts for so many, and which of several where the same letters count otherwise too. */
function namesOf(pieces: readonly SoundPiece[], counts: number): readonly string[] {
  return pieces.flatMap((piece, index) => {
    if (piece.counts !== counts) return []
    const letters = plain(piece)
    const alike = pieces.filter(other => !other.silent && plain(other) === letters)
    if (alike.length === 1) return [letters]
    if (alike.every(other => other.counts === counts)) return [`each ${letters}`]
    const place = pieces.slice(0, index).filter(other => alike.includes(other)).length
    return [`the ${places[place] ?? 'last'} ${letters}`]
  })
}

function plain({ letters }: SoundPiece): string {
  return letters.toLowerCase().replaceAll(/['-]/g, '')
}
