/**
 * Where to divide between two neighbouring vowel sounds: the rules that primary teaching and dictionaries share.
 * Each is named, so that a division can say why. Common practice, no source; measured against `hyphen`.
 */
import type { Unit } from './units.js'

export interface Stretch {
  readonly left: Unit
  /** Consonants and silent letters from the one vowel to the other. */
  readonly between: readonly Unit[]
  readonly right: Unit
  /** The consonant or silent letter before the left vowel. */
  readonly before: Unit | undefined
  /** The left vowel opens the word (or its prefix). */
  readonly isFirst: boolean
  /** Stress of the vowel before the left one; undefined at the beginning or where none was given. */
  readonly stressBefore: number | undefined
}

export interface Break {
  /** Index of the first letter after the division. */
  readonly at: number
  readonly rule: string
}

/** Two or three consonant graphemes that can begin a syllable together. */
const onsets = new Set(
  `bl br cl cr dr fl fr gl gr pl pr tr thr shr phr phl chr chl sc sk scr sl sm sn sp spl spr squ st str
  sw tw sch qu gu gw`.split(/\s+/),
)

/** Null where the two vowel sounds make one syllable on paper: fire, hour, flour. */
export function breakBetween(stretch: Stretch): Break | null {
  const { left, between, right } = stretch
  const beforeHyphen = [left, ...between].find(unit => unit.endsPart)
  if (beforeHyphen) return { at: beforeHyphen.end, rule: 'hyphen: divide after it' }
  if (right.kind === 'syllabic') {
    const isFire = between.length === 0 && right.sounds.includes('ER')
    return isFire ? null : beforeSyllabic(stretch)
  }
  const silent = silentVowel(stretch)
  if (silent) return silent
  const consonants = between.filter(unit => unit.kind === 'consonant')
  if (consonants.length === 0) return betweenVowels(stretch)
  if (consonants.length === 1) return oneConsonant(stretch, consonants[0]!)
  return severalConsonants(stretch, consonants)
}

/** ta·ble, lit·tle, pick·le, cas·tle, a·cre; but pris·m, did·n't. */
function beforeSyllabic({ left, between, right }: Stretch): Break {
  if (!/^(?:le|re|l)/.test(right.letters))
    return { at: right.start, rule: 'a syllable without a vowel letter' }
  const before = between.at(-1)
  if (before?.letters === 'bt') return { at: before.start + 1, rule: 'after a silent letter' }
  if (before === undefined) return { at: right.start, rule: 'consonant + le' }
  const split = insideUnit(before)
  if (split !== undefined) return { at: split, rule: 'consonant + le takes one of a pair' }
  if (/^(?:ck|x|tch|ng|v|sh|th|ch|ph)$/.test(before.letters) && isShort(left) && before.letters !== 'ph')
    return { at: before.end, rule: 'le after a team that stays with its vowel' }
  return { at: before.start, rule: 'consonant + le' }
}

/** After a silent e inside the word (use·ful, some·thing); ev·ery and choc·olate lose a vowel before r or l. */
function silentVowel({ left, between, right }: Stretch): Break | undefined {
  const index = between.findIndex(unit => unit.kind === 'silent vowel')
  const silent = between[index]
  if (silent === undefined) return undefined
  const before = between[index - 1]
  if (before === undefined) return undefined
  const after = between.slice(index + 1)
  if (after.length === 2 && after[0]!.letters === 's' && /^[mdw]$/.test(after[1]!.letters))
    return { at: after[0]!.end, rule: 'after es in a compound' }
  const losesVowel =
    after.length === 1 &&
    /^(?:[rln]|ll)$/.test(after[0]!.letters) &&
    !/^(?:ly|ness)/.test(`${after[0]!.letters}${right.letters}`)
  if (losesVowel && index > 1) return { at: between[1]!.start, rule: 'VC·CV' }
  if (losesVowel && isShort(left) && left.stress !== 0)
    return { at: silent.start, rule: 'a vowel that is not said: divide before it' }
  if (losesVowel) return { at: before.start, rule: 'a vowel that is not said goes with the next syllable' }
  return { at: silent.end, rule: 'after a silent e' }
}

/** li·on, po·et; the r of a vowel-r team before a vowel goes where one consonant would: sto·ry, hair·y. */
function betweenVowels(stretch: Stretch): Break {
  const { left, right } = stretch
  const letters = /r+$/.exec(left.letters)
  if (letters === null || left.letters.length === letters[0].length)
    return { at: right.start, rule: 'vowel · vowel' }
  if (letters[0].length > 1) return { at: left.end - 1, rule: 'double r: divide between' }
  return rStaysWithVowel(stretch)
    ? { at: left.end, rule: 'r stays with its vowel' }
    : { at: left.end - 1, rule: 'r begins the next syllable after a long or weak vowel' }
}

function rStaysWithVowel({ left, right, isFirst }: Stretch): boolean {
  const [vowel] = left.sounds.filter(sound => sound !== 'R' && sound !== 'Y')
  const vowelLetters = left.letters.slice(0, -1)
  if (vowel === 'ER') {
    if ((left.stress ?? 1) > 0) return true
    if (right.stress === 1 && (isFirst || vowelLetters !== 'e')) return false
    if (vowelLetters === 'e') return true
    return !/^(?:y|ies?|ia|io|ial|a)$/.test(right.letters)
  }
  if (vowel === 'EH' || vowel === 'AE') return true
  if (left.stress === 0) return false
  if (vowel === 'IH' || vowel === 'IY')
    return vowelLetters === 'i' || vowelLetters === 'y' || vowelLetters === 'ea'
  if (vowel === 'AO') return vowelLetters === 'o' && !right.sounds.includes('IY')
  return false
}

/** rob·in, ti·ger, a·bout, rab·bit, moth·er, fa·ther, tax·i. */
function oneConsonant(stretch: Stretch, consonant: Unit): Break {
  const { left, before } = stretch
  const { letters } = consonant
  if (/^sci?$/.test(letters) && /^[aeo]$/.test(left.letters) && isBeforeStress(left, stretch.right))
    return { at: consonant.start, rule: 'sc stays together before the stress' }
  const split = insideUnit(consonant)
  if (split !== undefined) return { at: split, rule: 'double consonant: divide between' }
  if (/^(?:x|ck|tch|ng|dge|dg|lk|lf)$/.test(letters))
    return { at: consonant.end, rule: `${letters} stays with its vowel` }
  if (letters === 'shi') return { at: consonant.start + 2, rule: 'sh stays with its vowel' }
  if (letters === 'xi') return { at: consonant.start + 1, rule: 'x stays with its vowel' }
  if (/^(?:ti|ci|si|sci|gi|ce|ge)$/.test(letters))
    return { at: consonant.start, rule: 'ti, ci, si, gi begin the next syllable' }
  if (/r$/.test(left.letters)) return { at: consonant.start, rule: 'after r: divide before the consonant' }
  if (letters === 'n' && left.letters === 'o' && /^(?:SH|ZH|CH|JH)$/.test(before?.sounds.at(-1) ?? ''))
    return { at: consonant.end, rule: 'tion, sion and gion stay whole' }
  if (isShort(left) && isStressed(stretch)) {
    const at = letters === 'qu' ? consonant.start + 1 : consonant.end
    return { at, rule: 'VC·V: the first vowel is short' }
  }
  return {
    at: consonant.start,
    rule: isShort(left) ? 'V·CV: the first vowel is weak' : 'V·CV: the first vowel is long',
  }
}

/** sun·set, pump·kin, chil·dren; ze·bra and a·gree keep a blend together after a long or weak vowel. */
function severalConsonants(stretch: Stretch, consonants: readonly Unit[]): Break {
  const { left } = stretch
  const last = consonants.at(-1)!
  const first = consonants[0]!
  if (consonants.length === 2 && first.sounds.length === 0 && first.letters !== 'h')
    return { at: first.end, rule: 'after a silent letter' }
  if (consonants.length === 2 && isBlend(consonants) && mayOpen(stretch)) {
    if (!first.letters.startsWith('s') || isWeakR(left) || opensBeforeS(stretch))
      return { at: first.start, rule: 'V·CCV: a blend stays together after a long or weak vowel' }
  }
  if (
    /^(?:s|st)$/.test(first.letters) &&
    consonants.length === 3 &&
    isBlend(consonants) &&
    opensBeforeS(stretch)
  )
    return { at: first.start, rule: 'V·CCCV after a prefix' }
  const doubled = /^([a-z])\1/.test(first.letters) && consonants.length === 2
  // at·tract, ap·plause, mil·lion; but hill·bil·ly.
  if (doubled && /^[lriu]/.test(last.letters))
    return { at: first.start + 1, rule: 'double consonant: divide between' }
  for (const size of [3, 2]) {
    if (size >= consonants.length) continue
    const onset = consonants.slice(-size)
    if (isBlend(onset)) return { at: onset[0]!.start, rule: 'VC·CCV: a blend or digraph stays together' }
  }
  return { at: last.start + (/^(?:([a-z])\1|pt|pb|bp)/.test(last.letters) ? 1 : 0), rule: 'VC·CV' }
}

function isBlend(units: readonly Unit[]): boolean {
  return onsets.has(
    units.map(({ letters, sounds }) => (letters === 'u' && sounds[0] === 'W' ? 'w' : letters)).join(''),
  )
}

/** Long, or weak, or closed by its own r: a blend after it begins the next syllable. */
function mayOpen(stretch: Stretch): boolean {
  const { left } = stretch
  return /r$/.test(left.letters) || !isShort(left) || !isStressed(stretch)
}

/** in·ter·state, per·spire; but pars·ley. */
function isWeakR({ letters, stress }: Unit): boolean {
  return letters.endsWith('r') && stress !== 1
}

/**
 * re·spect, de·stroy, cor·re·spond: the weak e of re-, de- and be- before a stressed syllable; fes·tiv·i·ty, mis·take and
 * as·ton·ish divide the blend.
 */
function opensBeforeS({ left, before, right }: Stretch): boolean {
  return /^(?:rr?|d|b)$/.test(before?.letters ?? '') && left.letters === 'e' && isBeforeStress(left, right)
}

function isBeforeStress(left: Unit, right: Unit): boolean {
  return left.stress === 0 && right.stress !== undefined && right.stress > 0
}

/** Between the halves of bb, ck-free pairs, and of st, sc, ft with a silent letter: rab·bit, cas·tle, mus·cle. */
function insideUnit({ letters, start }: Unit): number | undefined {
  if (/^([a-z])\1/.test(letters)) return start + 1
  if (/^(?:st|ft|sc|sci|cqu|xc|xh|dj|pt|pb|bp)$/.test(letters)) return start + 1
  return undefined
}

/** Short by its sound and its spelling: o in robin, not the a of father, which has the same sound. */
export function isShort({ sounds, letters, followsW }: Unit): boolean {
  const vowel = sounds.find(sound => sound !== 'Y' && sound !== 'W')
  if (vowel === undefined) return false
  if (['AE', 'EH', 'IH', 'UH', 'AH'].includes(vowel)) return true
  if (vowel === 'AA') return letters === 'o' || letters === 'ow' || (letters === 'a' && followsW)
  return vowel === 'AO' && letters === 'o'
}

/** By the pronunciation; without one, a vowel other than AH, and AH spelled u, o or a team, is taken for stressed. */
function isStressed({ left, right, isFirst, stressBefore }: Stretch): boolean {
  // The dictionary gives some weak vowels a second stress: de·cide, hos·pi·tal.
  if (left.stress === 2 && left.sounds.includes('IH'))
    return isFirst ? left.letters !== 'e' : stressBefore !== 1
  if (left.stress !== undefined) return left.stress > 0
  if (left.sounds.includes('AH')) return isFirst && !/^[ae]$/.test(left.letters) && left.start > 0
  if (isFirst && left.letters === 'e' && left.sounds.includes('IH')) return false
  return isFirst || right.kind === 'vowel'
}
