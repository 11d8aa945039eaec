/** The vowel by which a word is sorted: the one it has, or the one that is stressed; how it is spelled, how it is said. */
import { isVowelSound } from '../../words/alignment/arpabet.js'
import { soundName } from '../../words/patterns/sound-names.js'
import type { SortableWord } from '../../words/sortable-word.js'
import type { Grapheme } from '../../words/word.js'

export interface SpelledVowel {
  /** `a_e`, `ai`, `ar`, `are`, `a`. */
  readonly spelling: string
  /** Vowel sound, with R where an r has changed it: `EY`, `AA R`, `ER`. */
  readonly sound: string
  readonly grapheme: Grapheme
}

/** The vowels of the word with their spellings, from left to right. */
export function vowelsOf(word: SortableWord): readonly SpelledVowel[] {
  const known = read.get(word)
  if (known !== undefined) return known
  const vowels = word.graphemes.flatMap((grapheme, index) => vowelAt(word, grapheme, index))
  read.set(word, vowels)
  return vowels
}

const read = new WeakMap<SortableWord, readonly SpelledVowel[]>()

/** The vowel of a word of one syllable, the stressed one of a longer word. */
export function mainVowel(word: SortableWord): SpelledVowel | undefined {
  const vowels = vowelsOf(word)
  if (vowels.length === 1 || word.syllables.length === 1) return vowels.length === 1 ? vowels[0] : undefined
  const stressed = stressedVowel(word.pronunciations[0] ?? '')
  return stressed === undefined ? undefined : vowels[stressed]
}

/** How many vowels stand before the one with the main stress. */
function stressedVowel(pronunciation: string): number | undefined {
  const stresses: readonly string[] = pronunciation.match(/\d/g) ?? []
  const index = stresses.indexOf('1')
  return index < 0 ? undefined : index
}

/** AO is taught as short o where the letter o spells it (dog), and is neither short nor long elsewhere (saw). */
const vowelNames: Readonly<Record<string, string>> = {
  AE: 'short a',
  EH: 'short e',
  IH: 'short i',
  AA: 'short o',
  AH: 'short u',
  EY: 'long a',
  IY: 'long e',
  AY: 'long i',
  OW: 'long o',
  UW: 'long u',
  AO: 'aw as in saw',
  AW: 'ow as in cow',
  OY: 'oy as in boy',
  UH: 'oo as in book',
}

export const vowelOrder = Object.values(vowelNames)

/** `short a`, `long o`; undefined for a vowel with an r, which is neither short nor long. */
export function vowelName({ sound }: SpelledVowel): string | undefined {
  return vowelNames[sound]
}

const shortLetters: Readonly<Record<string, string>> = {
  a: 'AE',
  e: 'EH',
  i: 'IH',
  o: 'AA',
  u: 'AH',
  y: 'IH',
}

/** One letter with its short sound. */
export function isShortLetter({ spelling, sound }: Pick<SpelledVowel, 'spelling' | 'sound'>): boolean {
  return shortLetters[spelling] === sound
}

function vowelAt(word: SortableWord, grapheme: Grapheme, index: number): readonly SpelledVowel[] {
  const vowel = grapheme.sounds.find(isVowelSound)
  if (vowel === undefined) return []
  const withR = word.patterns.find(
    ({ pattern, start }) => pattern === 'r-controlled' && start === grapheme.start,
  )
  const letters = grapheme.letters.toLowerCase()
  if (withR !== undefined || grapheme.sounds.includes('R')) {
    const spelling = (withR?.letters ?? letters).toLowerCase()
    return [{ spelling, sound: vowel === 'ER' ? 'ER' : `${vowel} R`, grapheme }]
  }
  const sound = vowel === 'AO' && letters === 'o' ? 'AA' : vowel
  return [{ spelling: withSilentE(word, index) ?? letters, sound, grapheme }]
}

/** `a_e` where one consonant and a silent e follow a lone vowel letter, whatever it says: cake, have. */
function withSilentE({ graphemes, patterns }: SortableWord, index: number): string | undefined {
  const [vowel, consonant, e] = graphemes.slice(index, index + 3)
  if (vowel === undefined || consonant === undefined || e === undefined || vowel.letters.length > 1)
    return undefined
  if (consonant.sounds.length === 0 || consonant.sounds.some(isVowelSound)) return undefined
  const isSilent = patterns.some(({ pattern, end }) => pattern === 'silent-e' && end === e.start + 1)
  return isSilent ? `${vowel.letters.toLowerCase()}_e` : undefined
}

const keyWordsWithR: Readonly<Record<string, string>> = {
  'AA R': 'car',
  'AO R': 'fork',
  'EH R': 'chair',
  'IH R': 'deer',
  'AY R': 'fire',
  'UH R': 'cure',
}

/** `/EY/ as in day`, `/AA R/ as in car`. */
export function soundInWords({ sound }: Pick<SpelledVowel, 'sound'>): string {
  const keyWord = keyWordsWithR[sound]
  return keyWord === undefined ? soundName(sound) : `/${sound}/ as in ${keyWord}`
}
