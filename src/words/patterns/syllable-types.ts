/** The six kinds of syllable; the sixth, consonant-le, is a pattern on letters. */
import { oncePerWord } from './once-per-word.js'
import type { Pattern, StudiedLetters, Teaching } from './pattern.js'
import { findingAt, type SpelledSound, spelledSounds } from './spelled-sounds.js'
import { isShortVowel } from './vowels.js'

type SyllableType = 'closed' | 'open' | 'silent-e' | 'vowel-team' | 'r-controlled' | 'consonant-le'

interface Syllable {
  readonly letters: string
  readonly start: number
  readonly end: number
  readonly type: SyllableType
  readonly why: string
}

const source = 'Moats and Tolman, six types of syllables (LETRS); from memory'

const syllablesOf = oncePerWord(readSyllables)

/** The pattern that the word's first syllable shows: `open-syllable`. */
export function kindOfFirstSyllable(word: StudiedLetters): string | undefined {
  const [first] = syllablesOf(word)
  return first?.start === 0 ? `${first.type}-syllable` : undefined
}

function readSyllables(word: StudiedLetters): readonly Syllable[] {
  const all = spelledSounds(word)
  return word.syllables.flatMap((letters, index) => {
    const vowel = all.find(spelled => spelled.kind === 'vowel' && spelled.syllable === index)
    if (vowel === undefined || isClosedBySoundAlone(vowel, all)) return []
    const start = word.text.toLowerCase().indexOf(letters.toLowerCase(), previousEnd(word, index))
    if (start < 0) return []
    const after = all.filter(spelled => spelled.index > vowel.index && spelled.syllable === index)
    return [{ letters, start, end: start + letters.length, ...kindOf(vowel, after, all, index) }]
  })
}

/**
 * The spe of special, the vi of vision: by its letters open, by its short vowel closed, since the consonant stands in
 * ti, ci, si, gi or ge, which begin the next syllable. Teachers call it neither without a word of why, and so do we.
 */
function isClosedBySoundAlone(vowel: SpelledSound, all: readonly SpelledSound[]): boolean {
  const next = all[vowel.index + 1]
  return (
    vowel.stress === 1 &&
    isShortVowel(vowel) &&
    next !== undefined &&
    next.syllable > vowel.syllable &&
    /^s?[tcsg][ie]/.test(next.letters)
  )
}

function previousEnd(word: StudiedLetters, index: number): number {
  let end = 0
  for (const earlier of word.syllables.slice(0, index)) {
    end = word.text.toLowerCase().indexOf(earlier.toLowerCase(), end) + earlier.length
  }
  return end
}

function kindOf(
  vowel: SpelledSound,
  after: readonly SpelledSound[],
  all: readonly SpelledSound[],
  syllable: number,
): { readonly type: SyllableType; readonly why: string } {
  if (vowel.letters === 'le') return { type: 'consonant-le', why: 'a consonant and le' }
  if (/r[eh]?$/.test(vowel.letters) && (vowel.syllable === vowel.lastSyllable || vowel.stress !== 0)) {
    return { type: 'r-controlled', why: `its vowel ${vowel.letters} is changed by r` }
  }
  if (vowel.syllable < vowel.lastSyllable)
    return { type: 'open', why: `it ends with its vowel; the r opens the next syllable` }
  if (vowel.letters.length > 1) return { type: 'vowel-team', why: `its vowel is the team ${vowel.letters}` }
  const silentE = after.at(-1)
  if (silentE?.letters === 'e' && silentE.kind === 'silent' && after.length > 1) {
    return { type: 'silent-e', why: `one vowel ${vowel.letters}, a consonant and a silent e` }
  }
  const next = all[vowel.index + 1]
  const dividedDouble = next !== undefined && next.syllable === syllable && next.lastSyllable > syllable
  if (after.some(({ kind }) => kind !== 'silent') || dividedDouble) {
    return { type: 'closed', why: `one vowel ${vowel.letters}, closed in by a consonant` }
  }
  const silent = after.map(({ letters }) => letters).join('')
  const unheard = silent === '' ? '' : `; ${silent} is silent`
  return { type: 'open', why: `it ends with its one vowel ${vowel.letters}${unheard}` }
}

/** What differs from one type to the next, in teaching order. */
const table: readonly (Teaching & { readonly type: Exclude<SyllableType, 'consonant-le'> })[] = [
  {
    type: 'closed',
    definition: 'a syllable with one vowel letter that ends in a consonant: pond, the rab of rabbit',
    condition: 'one vowel letter, then a consonant in the same syllable, no silent e',
    example: { word: 'rabbit', letters: 'rab' },
    counterExample: { word: 'go', why: 'its syllable ends with the vowel' },
  },
  {
    type: 'open',
    definition: 'a syllable that ends with its one vowel letter: go, the ti of tiger',
    condition: 'one vowel letter at the end of the syllable',
    example: { word: 'tiger', letters: 'ti' },
    counterExample: { word: 'rabbit', why: 'both its syllables are closed by a consonant' },
  },
  {
    type: 'silent-e',
    definition: 'a syllable with one vowel letter, a consonant and a silent e: wave, the plete of complete',
    condition:
      'one vowel letter, consonants, and a silent e at the end of the syllable, whatever the vowel says',
    example: { word: 'wave', letters: 'wave' },
    counterExample: { word: 'house', why: 'its vowel is a team, with a silent e after it' },
  },
  {
    type: 'vowel-team',
    definition:
      'a syllable whose vowel is spelled with two or more letters: reed, cloud, the night of midnight',
    condition: 'the vowel grapheme has two or more letters and no r; diphthongs count',
    example: { word: 'reed', letters: 'reed' },
    counterExample: { word: 'react', why: 'its e and a are in two syllables' },
  },
  {
    type: 'r-controlled',
    definition: 'a syllable whose vowel is changed by r: marsh, the har of harbor',
    condition: 'the vowel grapheme ends in r',
    example: { word: 'harbor', letters: 'har' },
    counterExample: { word: 'around', why: 'its r begins the second syllable' },
  },
]

export const syllableTypes: readonly Pattern[] = table.map(({ type, ...teaching }) => {
  const pattern = `${type}-syllable`
  return {
    name: pattern,
    scope: 'syllable',
    ...teaching,
    source,
    find: word =>
      syllablesOf(word)
        .filter(syllable => syllable.type === type)
        .map(({ letters, start, end, why }) =>
          findingAt(word, { pattern, start, end, why: `the syllable ${letters}: ${why}` }),
        ),
  }
})
