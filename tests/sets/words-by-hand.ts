/** Words with just the analysis that a test is about, written by hand. */
import type { Finding, Grapheme, PartOfSpeech, Plural, SoundPiece, Word } from '../../src/words/word.js'

export interface HandWord {
  readonly text: string
  /** Letters and sounds: `'m:M ar:AA,R sh:SH'`; a silent letter has nothing after the colon. */
  readonly sounds?: string
  readonly syllables?: readonly string[]
  /** Pattern and letters: `'consonant-digraph:sh'`, at the last place where the letters stand; `'silent-e:a_e'`. */
  readonly patterns?: readonly string[]
  readonly partsOfSpeech?: readonly PartOfSpeech[]
  readonly plural?: Plural
  readonly clue?: string
}

export function wordByHand(hand: string | HandWord): Word {
  const given: HandWord = typeof hand === 'string' ? { text: hand } : hand
  const graphemes = readSounds(given.sounds ?? '')
  const sounds = graphemes.flatMap(grapheme => grapheme.sounds)
  const pieces = graphemes.map(piece)
  return {
    text: given.text,
    known: true,
    source: 'teacher',
    pronunciations: sounds.length > 0 ? [sounds.join(' ')] : [],
    graphemes,
    soundCount: pieces.filter(({ silent }) => !silent).length,
    phonemeCount: sounds.length,
    pieces,
    syllables: given.syllables ?? [given.text],
    patterns: (given.patterns ?? []).map(pattern => findingAt(given.text, pattern)),
    partsOfSpeech: given.partsOfSpeech ?? [],
    plural: given.plural ?? null,
    ...(given.clue === undefined ? {} : { clue: given.clue }),
  }
}

/** Counted as taught, but for x and qu, which no test needs. */
function piece({ letters, sounds }: Grapheme): SoundPiece {
  return { letters, silent: sounds.length === 0, counts: Math.min(sounds.length, 1) }
}

export function wordsByHand(...texts: readonly (string | HandWord)[]): Word[] {
  return texts.map(wordByHand)
}

function readSounds(sounds: string): Grapheme[] {
  let start = 0
  return sounds
    .split(' ')
    .filter(part => part !== '')
    .map(part => {
      const [letters = '', heard = ''] = part.split(':')
      const grapheme = { letters, start, sounds: heard.split(',').filter(sound => sound !== '') }
      start += letters.length
      return grapheme
    })
}

function findingAt(text: string, pattern: string): Finding {
  const [name = '', letters = ''] = pattern.split(':')
  const split = letters.includes('_')
  const start = split ? text.length - 3 : text.lastIndexOf(letters)
  if (start < 0) throw new Error(`${letters} does not stand in ${text}`)
  const end = split ? text.length : start + letters.length
  const place =
    start === 0 ? (end === text.length ? 'whole' : 'beginning') : end === text.length ? 'end' : 'middle'
  return { pattern: name, letters, start, end, place, why: 'written by hand' }
}
