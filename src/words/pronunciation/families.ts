/**
 * A word with an ending sounds like its base: the dictionary, typed by many hands, gives want AA and wanted AO, report
 * IY and reports IH. Where the two differ by no more than dictionaries waver, the base's sounds are taken for both.
 */
import { withoutStress } from '../alignment/arpabet.js'
import { endingOf } from '../endings/recognise.js'

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
  return agrees ? [...known, ...sounds.slice(known.length)].join(' ') : pronunciation
}

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
