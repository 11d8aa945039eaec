/** What the words stage gives: a word, studied. Keys of `study --json` come from here. */

/** Letters that spell one sound, or that are silent together (`sounds` empty). */
export interface Grapheme {
  /** As they stand in the word, capitals kept. */
  readonly letters: string
  /** Index of the first letter in the word's text, from 0. */
  readonly start: number
  /** ARPABET without stress, e.g. `['EH']`; `x` is `['K', 'S']`; a silent letter with no team is `[]`. */
  readonly sounds: readonly string[]
}

/** A stretch of the word as it is shown and counted on paper: `s·n·a·k·(e)`. */
export interface SoundPiece {
  /** As they stand in the word. */
  readonly letters: string
  /** Shown in brackets, and counted as nothing. */
  readonly silent: boolean
  /** How many sounds it counts for: of a word's pieces together, its `soundCount`. */
  readonly counts: number
}

export type PlaceInWord = 'beginning' | 'middle' | 'end' | 'whole'

/** A pattern found in the word, with the reason. */
export interface Finding {
  /** A name from `oaktag list patterns`, e.g. `consonant-digraph`. */
  readonly pattern: string
  /** The letters it stands on; a split pattern shows the gap: `a_e`. */
  readonly letters: string
  readonly start: number
  /** Index after the last letter. */
  readonly end: number
  readonly place: PlaceInWord
  /** Which rule fired and on what evidence, in plain words. */
  readonly why: string
  /** What the word is made of: a compound's two words, a base and its ending, the two words of a contraction. */
  readonly madeOf?: readonly [string, string]
  /** How the ending joins its base, in plain words: `drop e, add ed`. */
  readonly rule?: string
  /** Hers: the plan or the class file says so. */
  readonly source?: 'teacher'
}

export type PartOfSpeech =
  | 'noun'
  | 'verb'
  | 'adjective'
  | 'adverb'
  | 'pronoun'
  | 'preposition'
  | 'conjunction'
  | 'determiner'
  | 'interjection'
  | 'number'

export interface Plural {
  readonly form: string
  /** In plain words: `add s`, `add es after ch, sh, s, x, z`, `y to i, add es`, … */
  readonly rule: string
  /** A second form where two are in use. */
  readonly alternatives?: readonly string[]
}

/** `teacher` where the plan settled something of it; sounds that were guessed stay a `guess`. */
export type WordSource = 'lexicon' | 'teacher' | 'guess'

/** What the teacher may settle. */
export type Overridden = 'meaning' | 'sounds' | 'syllables' | 'part of speech' | 'plural' | 'patterns'

export interface Word {
  /** As the teacher typed it (Unicode NFC, apostrophes straightened). */
  readonly text: string
  readonly known: boolean
  readonly source: WordSource
  /** ARPABET with stress, sounds divided by spaces; the first is the one aligned. */
  readonly pronunciations: readonly string[]
  /** Cover the text left to right without gap or overlap. */
  readonly graphemes: readonly Grapheme[]
  /** What a class counts (sound-pieces.ts): the sum over the pieces. */
  readonly soundCount: number
  /** The sounds of the pronunciation, whatever a class counts. */
  readonly phonemeCount: number
  /** Cover the text left to right without gap or overlap; the teacher's own where she divided the word. */
  readonly pieces: readonly SoundPiece[]
  readonly syllables: readonly string[]
  readonly patterns: readonly Finding[]
  /** Commonest first. */
  readonly partsOfSpeech: readonly PartOfSpeech[]
  readonly plural: Plural | null
  /** No source lists the word's parts of speech: they are guessed by its ending, and its plural with them. */
  readonly partsOfSpeechGuessed?: true
  /** What the teacher settled; her word stands instead of what the analysis found. */
  readonly overridden?: readonly Overridden[]
  /** What a teacher should know besides: spellings that no rule explains, ways of saying that she may choose from. */
  readonly notes?: readonly string[]
  /** A short meaning, the one that a child meets first: a draft for a clue, not the teacher's words. */
  readonly clueDraft?: string
  readonly clue?: string
  /** The clue is the draft: the teacher gave none and said that drafts will do. */
  readonly clueIsDraft?: true
  /** The teacher's sentence with the word, to write from dictation. */
  readonly sentence?: string
  /** Absolute path of the teacher's own picture. */
  readonly picture?: string
  /** How many weeks ago it was taught, of a word that is back for review. */
  readonly backAfterWeeks?: number
}
