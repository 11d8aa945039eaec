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
  readonly stress?: number
  /** After /w/, where a stands for short o: quality, wander. */
  readonly followsW: boolean
  /** A hyphen follows. */
  readonly endsPart: boolean
}

const vowelSounds = new Set('AA AE AH AO AW AY EH ER EY IH IY OW OY UH UW'.split(' '))

export function isVowelSound(sound: string): boolean {
  return vowelSounds.has(sound)
}

export function unitsOf(graphemes: readonly Grapheme[], pronunciation: string | undefined): readonly Unit[] {
  const stresses = stressesOf(graphemes, pronunciation)
  let vowelsBefore = 0
  return graphemes.map(({ letters, start, sounds }, index) => {
    const lower = letters.toLowerCase().replace(/['-]/g, '')
    const followsW = graphemes[index - 1]?.sounds.at(-1) === 'W'
    const kind = kindOf(lower, sounds)
    const end = start + letters.length
    // An apostrophe before a consonant stays with the syllable before: o'·clock.
    const shift = kind === 'consonant' && /^'[a-z]/i.test(letters) ? 1 : 0
    const unit = {
      letters: lower,
      start: start + shift,
      end,
      sounds,
      kind,
      followsW,
      endsPart: letters.endsWith('-'),
    }
    const count = sounds.filter(isVowelSound).length
    const stress = stresses?.slice(vowelsBefore, vowelsBefore + count).find(value => value > 0) ?? 0
    vowelsBefore += count
    return stresses !== undefined && count > 0 ? { ...unit, stress } : unit
  })
}

function kindOf(letters: string, sounds: readonly string[]): Unit['kind'] {
  const startsWithVowel = /^[aeiouyáàâäéèêëíîïóôöúûü]/.test(letters)
  if (sounds.some(isVowelSound)) return startsWithVowel || letters === 'ho' ? 'vowel' : 'syllabic'
  return startsWithVowel && sounds.length === 0 ? 'silent vowel' : 'consonant'
}

/** Undefined unless the pronunciation has exactly the vowels of the graphemes. */
function stressesOf(
  graphemes: readonly Grapheme[],
  pronunciation: string | undefined,
): readonly number[] | undefined {
  if (pronunciation === undefined) return undefined
  const spelled = graphemes.flatMap(grapheme => grapheme.sounds.filter(isVowelSound))
  const said = pronunciation.split(' ').filter(sound => isVowelSound(sound.replace(/\d$/, '')))
  if (said.length !== spelled.length) return undefined
  const stresses = said.map(sound => Number(/\d$/.exec(sound)?.[0] ?? Number.NaN))
  return stresses.every(Number.isFinite) ? stresses : undefined
}
