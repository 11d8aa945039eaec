/** A word as likeness compares it: its stressed vowel, and the frame of consonants at its beginning and its end. */
import { isVowelSound } from '../alignment/arpabet.js'
import { plainName } from '../patterns/plain-name.js'
import type { OfferedFinding, OfferedWord } from './offered-word.js'

export interface WordShape {
  readonly vowel: VowelSpelling
  /** `one consonant`, `a beginning blend`, …; `a vowel` where none stands before the first. */
  readonly opening: string
  readonly close: string
  /** Letters and sounds from the stressed vowel on. */
  readonly rime: string
}

export interface VowelSpelling {
  /** `ee`; `a_e` for a split team. */
  readonly letters: string
  readonly sounds: string
  /** The pattern that names it best; undefined for a vowel that no pattern names. */
  readonly pattern: string | undefined
}

/** @returns undefined for a word without a vowel sound */
export function shapeOf(word: OfferedWord): WordShape | undefined {
  const { text, graphemes, stressed, findings } = word
  const vowel = graphemes[stressed]
  if (vowel === undefined) return undefined
  const isVowel = ({ sounds }: { readonly sounds: readonly string[] }) => sounds.some(isVowelSound)
  const first = graphemes.findIndex(isVowel)
  const last = graphemes.findLastIndex(isVowel)
  const silentE = graphemes.length - 1 > last && isSilentE(graphemes.at(-1)!)
  const closing = graphemes.slice(last + 1, silentE ? -1 : undefined)
  const closeEnd = silentE ? text.length - 1 : text.length
  const opens = ({ start, end }: OfferedFinding) => start === 0 && end <= graphemes[first]!.start
  const closes = ({ start, end }: OfferedFinding) =>
    end >= closeEnd && closing.some(grapheme => grapheme.start === start)
  return {
    vowel: vowelSpelling(vowel, findings),
    opening: kindOf(first, openings, findings.filter(opens)),
    close: kindOf(closing.length, closings, findings.filter(closes)),
    rime: [text.slice(vowel.start), ...graphemes.slice(stressed).flatMap(({ sounds }) => sounds)].join(' '),
  }
}

const vowelPatterns =
  'silent-e r-controlled vowel-team diphthong y-as-vowel short-vowel long-vowel schwa'.split(' ')

function vowelSpelling(
  { letters, start, sounds }: OfferedWord['graphemes'][number],
  findings: readonly OfferedFinding[],
): VowelSpelling {
  const own = findings.filter(finding => finding.start === start)
  const named = vowelPatterns.flatMap(name => own.filter(({ pattern }) => pattern === name))[0]
  const wider = named?.pattern === 'silent-e' || named?.pattern === 'r-controlled'
  return {
    letters: (wider ? named.letters : letters).toLowerCase(),
    sounds: sounds.join(' '),
    pattern: named?.pattern,
  }
}

const openings = 'three-letter-blend digraph-blend beginning-blend consonant-digraph silent-letters qu'.split(
  ' ',
)
const closings =
  'three-letter-blend digraph-blend ending-blend consonant-digraph trigraph double-consonant silent-letters'.split(
    ' ',
  )

function kindOf(consonants: number, names: readonly string[], findings: readonly OfferedFinding[]): string {
  if (consonants === 0) return 'a vowel'
  const name = names.find(each => findings.some(({ pattern }) => pattern === each))
  if (name !== undefined) return withArticle(plainName(name))
  return consonants === 1 ? 'one consonant' : 'several consonants'
}

function withArticle(name: string): string {
  if (name.endsWith('s') || name === 'qu') return name
  return `${/^[aeiou]/.test(name) ? 'an' : 'a'} ${name}`
}

function isSilentE({ letters, sounds }: OfferedWord['graphemes'][number]): boolean {
  return letters === 'e' && sounds.length === 0
}
