/**
 * Divisions that the word's parts ask for: compounds between their words, endings and prefixes at their seam. The
 * evidence is always another word that is spelled and sounds alike, so that `corn` does not divide `corner` twice
 * wrongly and `hope` has no part in `open`.
 */
import type { Unit } from './units.js'

/** What is known of other words; asked for in lower case. */
export interface OtherWords {
  /** ARPABET with or without stress; empty where the word is unknown. */
  readonly pronunciationsOf: (word: string) => readonly string[]
  /** How familiar; 0 for names, fragments and unknown words. */
  readonly familiarity: (word: string) => number
}

export interface Seam {
  /** Index of the first letter after the seam. */
  readonly at: number
  readonly rule: string
}

/** About once in a million words of SUBTLEX-US; rarer look-alikes are mostly chance. */
const familiarEnough = 50

export function seamsOf(
  word: string,
  units: readonly Unit[],
  others: OtherWords | undefined,
): readonly Seam[] {
  const seams = [...endingsBySound(word, units)]
  if (others === undefined) return seams
  const suffix = suffixSeam(word, units, others)
  if (suffix) seams.push(suffix)
  const prefix = prefixSeam(word, units, others)
  if (prefix) seams.push(prefix)
  if (!suffix) {
    const compound = compoundSeam(word, units, others)
    if (compound) seams.push(compound)
  }
  return seams
}

/** want·ed and box·es show their ending in letters and sounds alone. */
function endingsBySound(word: string, units: readonly Unit[]): readonly Seam[] {
  const sounds = units.flatMap(unit => unit.sounds).join(' ')
  const at = word.length - 2
  if (/[td]ed$/.test(word) && /[TD] (?:IH|AH|EH) D$/.test(sounds) && !notEndings.has(word)) {
    if (/(?:tt|dd)ed$/.test(word)) return word === 'added' ? [{ at, rule: 'ending -ed' }] : []
    return [{ at, rule: 'ending -ed' }]
  }
  if (/(?:[sxzcg]|[cs]h)es$/.test(word) && /(?:S|Z|SH|ZH|CH|JH) (?:IH|AH|EH) Z$/.test(sounds)) {
    return /zzes$/.test(word) && word.length < 8 && /^(?:qui|whi|fe)/.test(word)
      ? []
      : [{ at, rule: 'ending -es' }]
  }
  return []
}

const notEndings = new Set('hundred sacred kindred naked wicked crooked rugged ragged jagged'.split(' '))

interface Suffix {
  readonly letters: string
  readonly sounds: string
  /** Joined after dropping e, doubling or y to i; otherwise only after the whole base. */
  readonly joins: boolean
}

const suffixes: readonly Suffix[] = [
  { letters: 'ing', sounds: 'IH NG', joins: true },
  { letters: 'ings', sounds: 'IH NG Z', joins: true },
  { letters: 'est', sounds: 'AH S T|IH S T|EH S T', joins: true },
  { letters: 'er', sounds: 'ER', joins: true },
  { letters: 'ers', sounds: 'ER Z', joins: true },
  { letters: 'y', sounds: 'IY', joins: true },
  { letters: 'en', sounds: 'AH N', joins: true },
  { letters: 'ened', sounds: 'AH N D', joins: false },
  { letters: 'ish', sounds: 'IH SH', joins: false },
  { letters: 'able', sounds: 'AH B AH L', joins: true },
  { letters: 'ist', sounds: 'IH S T|AH S T', joins: false },
  { letters: 'ern', sounds: 'ER N', joins: false },
  { letters: 'ess', sounds: 'AH S|IH S|EH S', joins: false },
  { letters: 'ous', sounds: 'AH S', joins: false },
  { letters: 'age', sounds: 'IH JH|AH JH', joins: false },
  { letters: 'ly', sounds: 'L IY', joins: false },
  { letters: 'ful', sounds: 'F AH L', joins: false },
  { letters: 'less', sounds: 'L AH S|L IH S', joins: false },
  { letters: 'ness', sounds: 'N AH S|N IH S', joins: false },
  { letters: 'ment', sounds: 'M AH N T', joins: false },
  { letters: 'ship', sounds: 'SH IH P', joins: false },
  { letters: 'hood', sounds: 'HH UH D', joins: false },
  { letters: 'ward', sounds: 'W ER D', joins: false },
  { letters: 'some', sounds: 'S AH M', joins: false },
  { letters: 'teen', sounds: 'T IY N', joins: false },
]

function suffixSeam(word: string, units: readonly Unit[], others: OtherWords): Seam | undefined {
  if (notSuffixed.has(word)) return undefined
  const sounds = units.flatMap(unit => unit.sounds)
  for (const suffix of suffixes) {
    const at = word.length - suffix.letters.length
    if (!word.endsWith(suffix.letters) || at < 2) continue
    const ending = suffix.sounds
      .split('|')
      .map(one => one.split(' '))
      .find(one => endsWith(sounds, one))
    if (ending === undefined) continue
    const stemSounds = sounds.slice(0, sounds.length - ending.length)
    const stem = word.slice(0, at)
    const rule = `ending -${suffix.letters}`
    const doubled = /([bdfgklmnprstvz])\1$/.test(stem)
    const known = (base: string) => isBase(base, stemSounds, others)
    if (doubled && suffix.letters !== 'ly') {
      if (known(stem) && !(suffix.letters === 'y' && keepsYWithDouble(stem))) return { at, rule }
      if (suffix.joins && known(stem.slice(0, -1)))
        return { at: at - 1, rule: `${rule} after a doubled consonant` }
      continue
    }
    if (known(stem) || (suffix.joins && !doubled && known(`${stem}e`) && !/[^aeiour]l$/.test(stem)))
      return { at, rule }
    // handle, handling: the l goes with the consonant before it.
    if (suffix.joins && /[^aeiour]l$/.test(stem) && isSoundedLikeLe(stem, stemSounds, others)) {
      const team = /(?:ck|ng|x)l$/.test(stem) && !/ngl$/.test(stem)
      return { at: team ? at - 1 : at - 2, rule: `${rule} after a consonant + le` }
    }
  }
  return undefined
}

/** Dictionaries print sil·ly and bel·ly but hill·y and mess·y; a double l is divided unless listed. */
function keepsYWithDouble(stem: string): boolean {
  return stem.endsWith('ll') ? !/^(?:hill|frill|smell|thrill)$/.test(stem) : !/(?:ss|ff|zz)$/.test(stem)
}

function isSoundedLikeLe(stem: string, stemSounds: readonly string[], others: OtherWords): boolean {
  const base = `${stem}e`
  if (others.familiarity(base) < familiarEnough) return false
  return others.pronunciationsOf(base).some(said => {
    const sounds = soundsOf(said)
    return alike(sounds.slice(0, -2), stemSounds.slice(0, sounds.length - 2))
  })
}

/** Look-alikes: the base is a word and sounds right, and the dictionary divides otherwise. */
const notSuffixed = new Set(
  `corner number counter master mister sister winter temper tender gender fender render quarter porter barber charter clover
  crater liter meter cider taper caper saucer poster butter letter matter bitter better litter latter utter
  butcher summer hammer banner plaster order border murder super tuber sober
  party county forty tardy lady baby navy gravy story pony tidy crazy lazy cozy tiny duty puny army bounty early
  jelly belly bully tally ivy levy glory ruby fiery
  forest tempest harvest honest modest earnest even raven haven siren token broken oven linen
  garbage cabbage cottage message passage mustard lightning evening morning ceiling darling shilling
  ally rally family jolly holly folly reply apply supply july fully
  cartridge moment cement comment princess actress mattress access success process express address
  brandy candy dandy randy handsome sober powder thunder wonder rudder
  fluent talent garden warden burden sudden
  capable notable vegetable
  pastry pantry entry angry hungry country monkey donkey jockey hockey
  seven eleven heaven kitchen chicken happen listen often soften fasten glisten
  cartoonist dentist fifty liver silver river ever never over cover
  tablet scarlet cutlet hatchet bucket`.split(/\s+/),
)

const prefixes =
  'un re dis mis pre in im non over under sub out up fore ex en a be de mid inter super trans self'.split(' ')

function prefixSeam(word: string, units: readonly Unit[], others: OtherWords): Seam | undefined {
  if (notPrefixed.has(word)) return undefined
  const sounds = units.flatMap(unit => unit.sounds)
  for (const prefix of prefixes) {
    const base = word.slice(prefix.length)
    if (!word.startsWith(prefix) || base.length < 3 || !units.some(unit => unit.start === prefix.length))
      continue
    if (others.familiarity(base) < familiarEnough) continue
    const fits = others.pronunciationsOf(base).some(said => endsWith(sounds, soundsOf(said)))
    const opening = units.filter(unit => unit.end <= prefix.length)
    if (fits && opening.some(unit => unit.kind === 'vowel'))
      return { at: prefix.length, rule: `prefix ${prefix}-` }
  }
  return undefined
}

const notPrefixed = new Set(
  `uncle under reach read real ready reason rest red rent reel dear deal deep debt deck desk bean bear beat bed beg bell belt
  bend best bet apart ally are art ask ate ace ache inter into inch ink over miss mist missile
  repent record present second secret never upper inner outer record preface
  invent intent event estate escape extra enter entry engine energy enemy address
  animal anise amend united unit union uniform unique island demon denim dentist
  alien apple arena avenue acre acorn asp ash also area`.split(/\s+/),
)

function compoundSeam(word: string, units: readonly Unit[], others: OtherWords): Seam | undefined {
  if (word.length < 6 || notCompound.has(word)) return undefined
  const sounds = units.flatMap(unit => unit.sounds)
  for (const unit of units) {
    const at = unit.start
    if (at < 2 || word.length - at < 3) continue
    const left = word.slice(0, at)
    const right = word.slice(at)
    if (
      left.length + right.length < 6 ||
      (left.length < 3 && left !== 'up' && left !== 'in' && left !== 'on')
    )
      continue
    if (others.familiarity(left) < familiarEnough || others.familiarity(right) < familiarEnough) continue
    const leftSounds = units.filter(one => one.end <= at).flatMap(one => one.sounds)
    const rightSounds = sounds.slice(leftSounds.length)
    if (isSaid(left, leftSounds, others) && isSaid(right, rightSounds, others))
      return { at, rule: `compound: ${left} + ${right}` }
  }
  return undefined
}

const notCompound = new Set(
  `carpet parking cartridge mustard farthing window button cotton season person garbage message herring
  outer notice office justice father rather together begin hero`.split(/\s+/),
)

function isBase(base: string, sounds: readonly string[], others: OtherWords): boolean {
  if (base.length < 2 || !/[aeiouy]/.test(base) || others.familiarity(base) < familiarEnough) return false
  return isSaid(base, sounds, others)
}

function isSaid(word: string, sounds: readonly string[], others: OtherWords): boolean {
  return others.pronunciationsOf(word).some(said => alike(soundsOf(said), sounds))
}

function soundsOf(pronunciation: string): readonly string[] {
  return pronunciation.split(' ').map(sound => sound.replace(/\d$/, ''))
}

function endsWith(sounds: readonly string[], ending: readonly string[]): boolean {
  return sounds.length > ending.length && alike(sounds.slice(sounds.length - ending.length), ending)
}

/** Sounds between which the dictionary wavers count as the same. */
const wavering = new Set(['AA AO', 'AO AA', 'IH AH', 'AH IH', 'TH DH', 'DH TH', 'IY IH', 'IH IY', 'S Z'])

function alike(first: readonly string[], second: readonly string[]): boolean {
  return (
    first.length === second.length &&
    first.every((sound, index) => sound === second[index] || wavering.has(`${sound} ${second[index]}`))
  )
}
