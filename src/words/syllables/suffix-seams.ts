/** Endings: what they are, how they join, and which words only look as if they had one. */
import { isVowelSound, soundsOf } from '../alignment/arpabet.js'
import { byLetter } from '../by-letter.js'
import { pastForms } from '../endings/irregular-verbs.js'
import { isInWordGroup } from '../patterns/words-apart.js'
import { prefixOf } from './prefix-seams.js'
import { isInSeamGroup } from './seam-groups.js'
import { alike, type Evidence, endsWith, isSaid, type Part, type Seam, startsWith } from './word-parts.js'

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
es*    IH Z | AH Z | Z
s      S | Z
en*    AH N | IH N
ish*   IH SH
able*  AH B AH L
ible   AH B AH L
ably*  AH B L IY
ist    IH S T | AH S T
ism    IH Z AH M
istic  IH S T IH K
ern    ER N
ess    AH S | IH S | EH S
ous    AH S
al*    AH L       (?:on|[aiou][sv]e)$
ize    AY Z
ure    Y ER
age    IH JH | AH JH
ery*   ER IY
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

const suffixesByLast = byLetter(suffixes, ({ letters }) => letters.at(-1)!)

/** Endings so clear that any base will do: knead, kneading. */
const sureEndings = new Set('ing ed est s es ful less ness ly ship hood'.split(' '))
/** Once in ten million words of SUBTLEX-US: the look-alikes are read by eye and listed. */
const familiarBase = 5

export interface Suffixed {
  readonly base: Part
  /** Absent when the ending has no vowel sound of its own. */
  readonly seam?: Seam
}

/** The ending of a part and the base before it, when that base is a word. */
export function suffixOf(part: Part, evidence: Evidence): Suffixed | undefined {
  for (const suffix of suffixesByLast.get(part.text.at(-1)!) ?? []) {
    if (part.text.length < suffix.letters.length + 2 || !part.text.endsWith(suffix.letters)) continue
    if (isInSeamGroup(part.text, 'no suffix')) return undefined
    // trea·ty, fel·o·ny: a y that no suffix gave; the other suffixes have their own look-alikes.
    if (suffix.letters === 'y' && isInWordGroup(part.text, 'no suffix')) continue
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
  evidence: Evidence,
): Suffixed | undefined {
  const { others } = evidence
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
    others.familiarity(text) >= (sureEndings.has(letters) ? 1 : familiarBase) &&
    base?.test(text) !== false
  const isBase = (text: string) => isKnown(text) && isSaid(text, sounds, others)

  // long, longer: the dictionary gives the longer form a /g/.
  if (/ng$/.test(stem) && sounds.at(-1) === 'G' && isKnown(stem) && isSaid(stem, sounds.slice(0, -1), others))
    return found(stem, at, rule, sounds.slice(0, -1))
  const doubled = /([bdfgklmnprstvz])\1$/.test(stem)
  const keepsDouble = /(?:ll|ss|ff|zz)$/.test(stem) || /^(?:add|odd|egg|err|purr|ebb)$/.test(stem)
  const dividesInside = doubled && (!keepsDouble || (letters === 'y' && dividesDoubleBeforeY(stem)))
  if (!dividesInside && isBase(stem)) return found(stem, at)
  // undoubtedly: nobody says undoubted, but un- and doubted are known.
  if (
    /^(?:ly|ness)$/.test(letters) &&
    prefixOf({ text: stem, start: part.start, sounds }, evidence) !== undefined
  )
    return found(stem, at)
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
  if (/[^aeiouyr]l$/.test(stem)) {
    // handle, handling: the l keeps the consonant before it.
    const keepsTeam = /(?:ck|x)l$/.test(stem)
    const withLe = `${stem}e`
    const fits =
      isKnown(withLe) &&
      others.pronunciationsOf(withLe).some(one => startsWith(sounds, soundsOf(one).slice(0, -2)))
    return fits ? found(withLe, at - (keepsTeam ? 1 : 2), `${rule} after a consonant + le`) : undefined
  }
  const withE = `${stem}e`
  // bro·ken, cho·sen: dictionaries divide these before the consonant, and wid·en after it; so e·mer·gen·cy, but juic·y.
  if (letters === 'en' && pastForms().has(withE)) return undefined
  if (letters === 'y' && /[aeiouy].*[ae]nc$/.test(stem)) return undefined
  return isBase(withE) ? found(withE, at) : undefined
}

/** Dictionaries print sil·ly and bel·ly but hill·y and mess·y; a double l is divided unless listed. */
function dividesDoubleBeforeY(stem: string): boolean {
  return stem.endsWith('ll') ? !isInSeamGroup(stem, 'll kept') : !/(?:ss|ff|zz)$/.test(stem)
}
