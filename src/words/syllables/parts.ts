/**
 * Divisions that the word's parts ask for: compounds between their words, endings and prefixes at their seam. The
 * evidence is always another word that is spelled and sounds alike, so that `corn` does not divide `corner` twice
 * wrongly and `hope` has no part in `open`.
 */
import { exceptions } from './exceptions.js'
import { isVowelSound, type Unit } from './units.js'

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
const familiarEnough = 20

/** A stretch of the word that is a word, or has lost a letter to what follows it. */
interface Part {
  readonly text: string
  /** Index of its first letter in the whole word. */
  readonly start: number
  readonly sounds: readonly string[]
}

interface Evidence {
  readonly units: readonly Unit[]
  readonly others: OtherWords
}

/** The seams of a word, those of its base and of its halves included: un·luck·y, skate·board·ing. */
export function seamsOf(
  word: string,
  units: readonly Unit[],
  others: OtherWords | undefined,
): readonly Seam[] {
  const sounds = units.flatMap(unit => unit.sounds)
  const seams =
    others === undefined ? [] : [...seamsIn({ text: word, start: 0, sounds }, { units, others }, true)]
  // trans·port, trans·late; tran·scribe and tran·sit share their s.
  if (/^trans[bdfglmnpv]/.test(word)) seams.push({ at: 5, rule: 'prefix trans-' })
  return /e[ds]$/.test(word) ? [...seams, ...endingsBySound(word, sounds.join(' '))] : seams
}

function seamsIn(part: Part, evidence: Evidence, isWhole = false): readonly Seam[] {
  if (!isWhole) {
    const listed = listedDivision(part)
    if (listed) return listed
  }
  const suffixed = suffixOf(part, evidence)
  if (suffixed) {
    const { base, seam } = suffixed
    const shared = part.start + lengthOfSharedStart(base.text, part.text)
    const inside = seamsIn(base, evidence).filter(({ at }) => at <= shared)
    return seam ? [...inside, seam] : inside
  }
  const prefixed = prefixOf(part, evidence)
  if (prefixed) return [prefixed.seam, ...seamsIn(prefixed.rest, evidence)]
  const compound = halvesOf(part, evidence)
  if (compound === undefined) return []
  return [...seamsIn(compound.left, evidence), compound.seam, ...seamsIn(compound.right, evidence)]
}

/** A base whose division is listed passes it on: every, everything. */
function listedDivision({ text, start, sounds }: Part): readonly Seam[] | undefined {
  const count = sounds.filter(isVowelSound).length
  const pieces = exceptions.get(text)?.find(division => division.length === count)
  if (pieces === undefined) return undefined
  let at = start
  return pieces.slice(0, -1).map(piece => {
    at += piece.length
    return { at, rule: `${text} is listed: the rules would divide otherwise` }
  })
}

/** want·ed and box·es show their ending in letters and sounds alone. */
function endingsBySound(word: string, sounds: string): readonly Seam[] {
  const at = word.length - 2
  if (/[td]ed$/.test(word) && /[TD] (?:IH|AH|EH) D$/.test(sounds))
    return /(?:tt|dd)ed$/.test(word) || notEndings.has(word) ? [] : [{ at, rule: 'ending -ed' }]
  if (/(?:[sxzcg]|[cs]h)es$/.test(word) && /(?:S|Z|SH|ZH|CH|JH) (?:IH|AH|EH) Z$/.test(sounds))
    return /(?:qui|whi|fe)zzes$/.test(word) ? [] : [{ at, rule: 'ending -es' }]
  return []
}

const notEndings = new Set('hundred sacred kindred naked wicked crooked rugged ragged jagged'.split(' '))

interface Suffix {
  readonly letters: string
  readonly sounds: readonly (readonly string[])[]
  /** Joined also after a dropped e or a doubled consonant; otherwise only after the whole base. */
  readonly joins: boolean
  /** Where only some bases take it. */
  readonly base?: RegExp
}

/** Letters, then how they are said, joined by `|`. Those with * also stand after a dropped e or a doubled letter. */
const suffixes: readonly Suffix[] = `
ing*   IH NG | IY NG
est*   AH S T | IH S T | EH S T
er*    ER
y*     IY
ie*    IY
ed*    IH D | AH D | D | T
es*    IH Z | AH Z
s      S | Z
en     AH N | IH N
ish    IH SH
able*  AH B AH L
ist    IH S T | AH S T
ern    ER N
ess    AH S | IH S | EH S
ous    AH S
al*    AH L       (?:on|[aiou][sv]e)$
ize    AY Z
ure    Y ER
age    IH JH | AH JH
ly     L IY
ful    F AH L
less   L AH S | L IH S
ness   N AH S | N IH S
ment   M AH N T
ship   SH IH P
hood   HH UH D
ward   W ER D
some   S AH M
teen   T IY N`
  .trim()
  .split('\n')
  .map(line => {
    const [letters = '', ...rest] = line.trim().split(/\s+/)
    const base = /[a-z$]/.test(rest.at(-1) ?? '') ? rest.pop() : undefined
    const suffix = {
      letters: letters.replace('*', ''),
      joins: letters.endsWith('*'),
      sounds: rest
        .join(' ')
        .split(' | ')
        .map(said => said.split(' ')),
    }
    return base === undefined ? suffix : { ...suffix, base: new RegExp(base) }
  })

/** Endings so clear that a rare base will do: knead, kneading. */
const sureEndings = new Set('ing ed est s es ful less ness ship hood'.split(' '))

interface Suffixed {
  readonly base: Part
  /** Absent when the ending has no vowel sound of its own. */
  readonly seam?: Seam
}

function suffixOf(part: Part, evidence: Evidence): Suffixed | undefined {
  if (notSuffixed.has(part.text)) return undefined
  for (const suffix of suffixes) {
    if (part.text.length < suffix.letters.length + 2 || !part.text.endsWith(suffix.letters)) continue
    const said = suffix.sounds.find(sounds => endsWith(part.sounds, sounds))
    const found = said && joinedBase(part, suffix, said, evidence)
    if (found) return found
  }
  return undefined
}

function joinedBase(
  part: Part,
  { letters, joins, base }: Suffix,
  said: readonly string[],
  { others }: Evidence,
): Suffixed | undefined {
  const stem = part.text.slice(0, -letters.length)
  const sounds = part.sounds.slice(0, part.sounds.length - said.length)
  const at = part.start + stem.length
  const rule = `ending -${letters}`
  const found = (text: string, seamAt: number, why = rule, ofBase = sounds): Suffixed => {
    const whole = { text, start: part.start, sounds: ofBase }
    return said.some(isVowelSound) ? { base: whole, seam: { at: seamAt, rule: why } } : { base: whole }
  }
  const isKnown = (text: string) =>
    text.length > 1 &&
    /[aeiouy]/.test(text) &&
    others.familiarity(text) >= (sureEndings.has(letters) ? 1 : familiarEnough) &&
    base?.test(text) !== false
  const isBase = (text: string) => isKnown(text) && isSaid(text, sounds, others)

  // long, longer: the dictionary gives the longer form a /g/.
  if (/ng$/.test(stem) && sounds.at(-1) === 'G' && isKnown(stem) && isSaid(stem, sounds.slice(0, -1), others))
    return found(stem, at, rule, sounds.slice(0, -1))
  const doubled = /([bdfgklmnprstvz])\1$/.test(stem)
  const keepsDouble = /(?:ll|ss|ff|zz)$/.test(stem) || /^(?:add|egg|err|purr|ebb)$/.test(stem)
  const dividesInside = doubled && (!keepsDouble || (letters === 'y' && dividesDoubleBeforeY(stem)))
  if (!dividesInside && isBase(stem)) return found(stem, at)
  if (/[^aeiou]i$/.test(stem) && letters !== 'ing') {
    const withY = `${stem.slice(0, -1)}y`
    if (
      isKnown(withY) &&
      others.pronunciationsOf(withY).some(one => alike(soundsOf(one).slice(0, -1), sounds.slice(0, -1)))
    )
      return found(withY, at, rule, [...sounds.slice(0, -1), 'IY'])
  }
  if (!joins) return undefined
  if (doubled)
    return isBase(stem.slice(0, -1))
      ? found(stem.slice(0, -1), at - 1, `${rule} after a doubled consonant`)
      : undefined
  if (/[^aeiour]l$/.test(stem)) {
    // handle, handling: the l keeps the consonant before it.
    const keepsTeam = /(?:ck|x)l$/.test(stem)
    const withLe = `${stem}e`
    const fits =
      isKnown(withLe) &&
      others.pronunciationsOf(withLe).some(one => startsWith(sounds, soundsOf(one).slice(0, -2)))
    return fits ? found(withLe, at - (keepsTeam ? 1 : 2), `${rule} after a consonant + le`) : undefined
  }
  return isBase(`${stem}e`) ? found(`${stem}e`, at) : undefined
}

/** Dictionaries print sil·ly and bel·ly but hill·y and mess·y; a double l is divided unless listed. */
function dividesDoubleBeforeY(stem: string): boolean {
  return stem.endsWith('ll') ? !/^(?:hill|frill|smell|thrill)$/.test(stem) : !/(?:ss|ff|zz)$/.test(stem)
}

/** Look-alikes: the base is a word and sounds right, and the dictionary divides otherwise. */
const notSuffixed = new Set(
  `corner number hunger finger anger linger after offer center former water inner wander difficulty festival phony worthy factory victory gorgeous outrageous counter master mister sister winter temper tender gender fender render quarter porter barber charter clover
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

/** A prefix with the sounds it opens the word with. */
const prefixes: readonly { readonly letters: string; readonly sounds: RegExp }[] = Object.entries({
  un: /^AH N$/,
  re: /^R (?:IY|IH|AH)$/,
  dis: /^D IH S$/,
  mis: /^M IH S$/,
  pre: /^P R (?:IY|IH|AH)$/,
  in: /^IH N$/,
  im: /^IH M$/,
  non: /^N AA N$/,
  over: /^OW V ER$/,
  under: /^AH N D ER$/,
  sub: /^S AH B$/,
  out: /^AW T$/,
  up: /^AH P$/,
  fore: /^F AO R$/,
  ex: /^(?:IH|EH) (?:K S|G Z)$/,
  en: /^(?:IH|EH) N$/,
  a: /^AH$/,
  be: /^B (?:IH|IY|AH)$/,
  de: /^D (?:IY|IH|AH)$/,
  mid: /^M IH D$/,
  inter: /^IH N T ER$/,
  super: /^S UW P ER$/,
  trans: /^T R AE N [SZ]$/,
  self: /^S EH L F$/,
  anti: /^AE N T (?:IY|AY)$/,
  semi: /^S EH M (?:IY|AY)$/,
  bi: /^B AY$/,
  tri: /^T R AY$/,
}).map(([letters, sounds]) => ({ letters, sounds }))

function prefixOf(part: Part, { units, others }: Evidence): { seam: Seam; rest: Part } | undefined {
  if (notPrefixed.has(part.text)) return undefined

  for (const { letters, sounds } of prefixes) {
    const base = part.text.slice(letters.length)
    const at = part.start + letters.length
    if (!part.text.startsWith(letters) || base.length < 3 || !units.some(unit => unit.start === at)) continue
    if (others.familiarity(base) < familiarEnough) continue
    const opening = units
      .filter(unit => unit.start >= part.start && unit.end <= at)
      .flatMap(unit => unit.sounds)
    const rest = part.sounds.slice(opening.length)
    if (!sounds.test(opening.join(' ')) || !isSaid(base, rest, others)) continue
    return { seam: { at, rule: `prefix ${letters}-` }, rest: { text: base, start: at, sounds: rest } }
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

function halvesOf(
  part: Part,
  { units, others }: Evidence,
): { left: Part; seam: Seam; right: Part } | undefined {
  if (part.text.length < 6 || notCompound.has(part.text)) return undefined
  const inside = units.filter(unit => unit.start >= part.start && unit.end <= part.start + part.text.length)
  const hasVowel = (unit: Unit) => unit.kind === 'vowel' || unit.kind === 'syllabic'
  const firstVowel = inside.find(hasVowel)
  const lastStressed = inside.findLast(unit => hasVowel(unit) && (unit.stress ?? 1) > 0)
  if (firstVowel === undefined || lastStressed === undefined) return undefined
  for (const { start: at } of inside) {
    // Each half has a vowel, and the second is not said weakly.
    if (at < firstVowel.end || at > lastStressed.start) continue
    const leftText = part.text.slice(0, at - part.start)
    const rightText = part.text.slice(at - part.start)
    if (rightText.length < 3 || (leftText.length < 3 && !/^(?:up|in|on)$/.test(leftText))) continue
    if (others.familiarity(leftText) < familiarEnough || others.familiarity(rightText) < familiarEnough)
      continue
    const sounds = inside.filter(unit => unit.end <= at).flatMap(unit => unit.sounds)
    const left = { text: leftText, start: part.start, sounds }
    const right = { text: rightText, start: at, sounds: part.sounds.slice(sounds.length) }
    if (weakHalves.has(rightText)) continue
    if (isSaid(leftText, left.sounds, others) && isSaid(rightText, right.sounds, others))
      return { left, seam: { at, rule: `compound: ${leftText} + ${rightText}` }, right }
  }
  return undefined
}

/** Words that are endings more often than halves. */
const weakHalves = new Set('ate age ages ant ants ion ions able king ring ling ting'.split(' '))

const notCompound = new Set(
  `carpet parking cartridge mustard farthing window button cotton season person garbage message herring
  outer notice office justice father rather together begin hero`.split(/\s+/),
)

function isSaid(word: string, sounds: readonly string[], others: OtherWords): boolean {
  return others.pronunciationsOf(word).some(said => alike(soundsOf(said), sounds))
}

function lengthOfSharedStart(first: string, second: string): number {
  let length = 0
  while (length < first.length && first.charAt(length) === second.charAt(length)) length += 1
  return length
}

function soundsOf(pronunciation: string): readonly string[] {
  return pronunciation.split(' ').map(sound => sound.replace(/\d$/, ''))
}

function startsWith(sounds: readonly string[], opening: readonly string[]): boolean {
  return sounds.length > opening.length && alike(sounds.slice(0, opening.length), opening)
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
