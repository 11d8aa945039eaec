import { isVowelSound } from '../alignment/arpabet.js'
import type { Grapheme } from '../word.js'

/** A grapheme as the division sees it. */
export interface Unit {
  /** Lower case. */
  readonly letters: string
  readonly start: number
  readonly end: number
  readonly sounds: readonly string[]
  /**
   * `vowel` holds a syllable's vowel sound; `syllabic` holds one that has no vowel letter before it (le in table,
   * m in prism); `silent vowel` is a vowel letter without a sound; the rest, signs included, is `consonant`.
   */
  readonly kind: 'vowel' | 'syllabic' | 'silent vowel' | 'consonant'
  /** The vowel's stress, 1, 2 or 0; undefined where no pronunciation was given. */
  readonly stress: number | undefined
  /** After /w/, where a stands for short o: quality, wander. */
  readonly followsW: boolean
  /** A hyphen follows. */
  readonly endsPart: boolean
}

export function unitsOf(graphemes: readonly Grapheme[], pronunciation: string | undefined): readonly Unit[] {
  const stresses = stressesOf(graphemes, pronunciation)
  let vowelsBefore = 0
  let followsW = false
  return graphemes.map(({ letters, start, sounds }) => {
    const lower = withoutSigns(letters.toLowerCase())
    const kind = kindOf(lower, sounds)
    let stress: number | undefined
    for (const sound of sounds) {
      if (!isVowelSound(sound)) continue
      stress ||= stresses?.[vowelsBefore]
      vowelsBefore += 1
    }
    const unit: Unit = {
      letters: lower,
      // An apostrophe before a consonant stays with the syllable before: o'·clock.
      start: kind === 'consonant' && /^'[a-z]/i.test(letters) ? start + 1 : start,
      end: start + letters.length,
      sounds,
      kind,
      stress,
      followsW,
      endsPart: letters.endsWith('-'),
    }
    followsW = sounds.at(-1) === 'W'
    return unit
  })
}

function withoutSigns(letters: string): string {
  return letters.includes("'") || letters.includes('-') ? letters.replace(/['-]/g, '') : letters
}

function kindOf(letters: string, sounds: readonly string[]): Unit['kind'] {
  const startsWithVowel = isVowelLetter(letters.charCodeAt(0))
  if (sounds.some(isVowelSound)) return startsWithVowel || letters === 'ho' ? 'vowel' : 'syllabic'
  return startsWithVowel && sounds.length === 0 ? 'silent vowel' : 'consonant'
}

const vowelLetters = new Set([...'aeiouyáàâäéèêëíîïóôöúûü'].map(letter => letter.charCodeAt(0)))

function isVowelLetter(code: number): boolean {
  return vowelLetters.has(code)
}

/** One for each vowel sound; undefined unless the pronunciation has exactly the vowels of the graphemes. */
function stressesOf(
  graphemes: readonly Grapheme[],
  pronunciation: string | undefined,
): readonly number[] | undefined {
  if (pronunciation === undefined) return undefined
  let spelled = 0
  for (const { sounds } of graphemes) for (const sound of sounds) if (isVowelSound(sound)) spelled += 1
  const stresses: number[] = []
  for (const said of pronunciation.split(' ')) {
    const digit = said.charCodeAt(said.length - 1) - 48
    const hasStress = digit >= 0 && digit <= 9
    if (!isVowelSound(hasStress ? said.slice(0, -1) : said)) continue
    if (!hasStress) return undefined
    stresses.push(digit)
  }
  return stresses.length === spelled ? stresses : undefined
}
