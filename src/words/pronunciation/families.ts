/**
 * A word with an ending sounds like its base, and a compound like its halves: the dictionary, typed by many hands, gives
 * want AA and wanted AO, report IY and reports IH, scare EH and scarecrow AE. Where they differ by no more than
 * dictionaries waver, the sounds of the base or of the halves are taken.
 */
import { lazily } from '../../lazily.js'
import { withoutStress } from '../alignment/arpabet.js'
import { isInCompoundGroup } from '../compounds/compound-groups.js'
import { endingOf } from '../endings/recognise.js'
import { isInWordGroup } from '../patterns/words-apart.js'
import { wordsOf } from '../tables/installed-tables.js'
import { wordList } from '../tables/word-list.js'

export interface Family {
  /** The pronunciation to teach first; undefined where the word is unknown or no base (a name). */
  readonly firstOf: (word: string) => string | undefined
}

/** Pairs of stressed vowels that the dictionary mixes up. */
const mixedUp: ReadonlySet<string> = new Set(['AA AO', 'AO AA', 'EH AE', 'AE EH'])
const weak: ReadonlySet<string> = new Set(['AH', 'IH', 'IY', 'EH', 'AE'])

const suffixes = /(?:ly|ful|less|ness|ment)$/

/** The pronunciation with its base's sounds, or as it is where no base explains it. */
export function likeItsBase(word: string, pronunciation: string, { firstOf }: Family): string {
  const base = baseOf(word, firstOf)
  const known = base === undefined ? undefined : firstOf(base)?.split(' ')
  const sounds = pronunciation.split(' ')
  if (known === undefined || known.length >= sounds.length) return pronunciation
  const agrees = known.every((sound, index) =>
    isNear(sound, sounds[index]!, sounds[index + 1] ?? known[index + 1] ?? ''),
  )
  return agrees ? withEndingS([...known, ...sounds.slice(known.length)], known).join(' ') : pronunciation
}

/** coyotes with Z, as its base ends with a voice; popes with S. */
function withEndingS(sounds: readonly string[], base: readonly string[]): readonly string[] {
  const isS = sounds.length === base.length + 1 && /^[SZ]$/.test(sounds.at(-1)!)
  if (!isS || /^(?:S|Z|SH|ZH|CH|JH)$/.test(base.at(-1)!)) return sounds
  return [...base, /^(?:P|T|K|F|TH)$/.test(base.at(-1)!) ? 'S' : 'Z']
}

/** unexpected as expected: the tail with the sounds of the word that follows the prefix. */
export function likeAfterPrefix(word: string, pronunciation: string, { firstOf }: Family): string {
  const prefix = /^(?:un|dis|in|im|re|pre|mis|non|over|under)(?=.{4})/.exec(word)?.[0]
  const known = prefix === undefined ? undefined : firstOf(word.slice(prefix.length))?.split(' ')
  const sounds = pronunciation.split(' ')
  const start = sounds.length - (known?.length ?? sounds.length)
  if (known === undefined || start < 1) return pronunciation
  const agrees = known.every((sound, index) =>
    isNear(sound, sounds[start + index]!, sounds[start + index + 1] ?? ''),
  )
  return agrees ? [...sounds.slice(0, start), ...known].join(' ') : pronunciation
}

/** The pronunciation with the sounds of its halves and its own stress, or as it is where it is no compound. */
export function likeItsHalves(word: string, pronunciation: string, family: Family): string {
  const { firstOf } = family
  if (isInCompoundGroup(word, 'no compound') || baseOf(word, firstOf) !== undefined) return pronunciation
  const sounds = pronunciation.split(' ')
  for (let at = shortestHalf; at <= word.length - shortestHalf; at++) {
    const [first, second] = [word.slice(0, at), word.slice(at)]
    if (isInCompoundGroup(first, 'no first half') || isInCompoundGroup(second, 'no second half')) continue
    const [firstSaid, secondSaid] = [firstOf(first), firstOf(second)]
    if (firstSaid === undefined || secondSaid === undefined) continue
    const known = [...firstSaid.split(' '), ...secondSaid.split(' ')]
    const agrees =
      known.length === sounds.length &&
      known.every((sound, index) => isSameVowel(sound, sounds[index]!, sounds[index + 1] ?? ''))
    if (!agrees) continue
    const keepsShortU = /u/.test(second)
    return known.map((sound, index) => inCompound(sound, stressOf(sounds[index]!), keepsShortU)).join(' ')
  }
  return pronunciation
}

/** A half keeps its short u, which the dictionary often writes as a schwa: the u of toothbrush is that of brush. */
function inCompound(sound: string, stress: string, keepsShortU: boolean): string {
  return keepsShortU && sound === 'AH1' && stress === '0' ? 'AH2' : withoutStress(sound) + stress
}

const shortestHalf = 3

/** Equal whatever the stress, or two vowels that dictionaries mix up; AE and EH, IY and IH only before R. */
function isSameVowel(first: string, second: string, following: string): boolean {
  const [a, b] = [withoutStress(first), withoutStress(second)]
  if (a === b || /^A[AO] A[AO]$/.test(`${a} ${b}`)) return true
  return following === 'R' && /^(?:AE EH|EH AE|IY IH|IH IY)$/.test(`${a} ${b}`)
}

/**
 * report as return: the dictionary gives some re-, pre- and de- a long e by chance. They have it where they are living
 * prefixes before a word (re·write, pre·school), and there alone.
 */
export function withWeakPrefix(word: string, pronunciation: string, { firstOf }: Family): string {
  const prefix = /^(?:re|pre|de|be|se|e)(?=[^aeiou])/.exec(word)?.[0]
  if (
    prefix === undefined ||
    !/^(?:(?:R|P R|D|B|S) )?IY(?:0 [^AEIOU]|2 (?:[^AEIOU]\S* )+\S+1)/.test(pronunciation)
  )
    return pronunciation
  const base = word.slice(prefix.length)
  const isLiving = firstOf(base) !== undefined && isSaidLike(pronunciation, firstOf(base)!)
  if (isLiving && !isInWordGroup(word, 'no prefix') && !hasWeakPrefix()(word)) return pronunciation
  return pronunciation.replace(/IY[02]/, 'IH0')
}

/** relocate has locate, though its second half is weaker. */
function isSaidLike(pronunciation: string, base: string): boolean {
  const level = (said: string) => said.replaceAll('2', '0')
  return level(pronunciation).endsWith(` ${level(base)}`)
}

const hasWeakPrefix = lazily(() => wordList(wordsOf('pronunciation/weak-prefixes')))

function baseOf(word: string, firstOf: Family['firstOf']): string | undefined {
  const inflected = endingOf({ text: word, isWord: base => firstOf(base) !== undefined })
  if (inflected !== null) return inflected.base
  const stem = word.replace(suffixes, '')
  return stem !== word && stem.length >= 3 && firstOf(stem) !== undefined ? stem : undefined
}

/** Equal but for stress, or two vowels that dictionaries mix up; AE and EH only before R. */
function isNear(first: string, second: string, following: string): boolean {
  const [a, b] = [withoutStress(first), withoutStress(second)]
  if (a === b) return stressOf(first) === stressOf(second)
  const strong = [first, second].some(sound => /[12]$/.test(sound))
  if (!strong) return weak.has(a) && weak.has(b)
  if (stressOf(first) !== stressOf(second)) return false
  return mixedUp.has(`${a} ${b}`) && (/^A[AO]$/.test(a) || following === 'R')
}

function stressOf(sound: string): string {
  return /\d$/.exec(sound)?.[0] ?? ''
}
