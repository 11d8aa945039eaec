/** Prefixes and suffixes that primary grades teach. */
import { soundsOf } from '../alignment/arpabet.js'
import { byLetter } from '../by-letter.js'
import type { Finding } from '../word.js'
import { isFamiliar, spellingsBehind } from './base-words.js'
import { oncePerWord } from './once-per-word.js'
import type { Pattern, StudiedLetters } from './pattern.js'
import { findingAt, spelledSounds } from './spelled-sounds.js'
import { isInWordGroup } from './words-apart.js'

const prefixMeanings: Readonly<Record<string, string>> = {
  un: 'not, or the opposite',
  re: 'again, or back',
  dis: 'not, or the opposite',
  mis: 'wrongly',
  pre: 'before',
  in: 'not, or in',
  im: 'not, or in',
  il: 'not',
  ir: 'not',
  non: 'not',
  over: 'too much, or above',
  under: 'too little, or below',
  sub: 'under',
  fore: 'before',
  en: 'make, or put into',
  em: 'make, or put into',
  inter: 'between',
  mid: 'in the middle of',
  super: 'above, or very',
  semi: 'half',
  anti: 'against',
  trans: 'across',
  tri: 'three',
  bi: 'two',
}

/** Longest first, so that under- is tried before un-. */
const prefixes = Object.keys(prefixMeanings).sort((a, b) => b.length - a.length || (a < b ? -1 : 1))

const prefixesByFirst = byLetter(prefixes, letters => letters[0]!)

function findPrefix(word: StudiedLetters): readonly Finding[] {
  const { evidence } = word
  const text = word.text.toLowerCase()
  if (evidence === undefined) return []
  const prefix = prefixesByFirst.get(text[0]!)?.find(letters => {
    if (!text.startsWith(letters)) return false
    if (text.length < letters.length + 3 && text !== `${letters}do`) return false
    if (!dividesAt(word, letters.length) || isInWordGroup(text, 'no prefix')) return false
    const base = text.slice(letters.length)
    if (!isFamiliar(base, evidence)) return false
    const sounds = soundsOf(word.pronunciation).join(' ')
    return evidence.pronunciationsOf(base).some(said => sounds.endsWith(` ${soundsOf(said).join(' ')}`))
  })
  if (prefix === undefined) return []
  const why = `${prefix}- (${prefixMeanings[prefix]}) before ${text.slice(prefix.length)}`
  return [findingAt(word, { pattern: 'prefix', start: 0, end: prefix.length, why })]
}

/** A grapheme and a syllable begin at this letter. */
export function dividesAt(word: StudiedLetters, letter: number): boolean {
  return divisions(word).includes(letter)
}

/** The letters at which a grapheme and a syllable begin, from left to right; not the first. */
export const divisions = oncePerWord((word: StudiedLetters): readonly number[] => {
  const all = spelledSounds(word)
  const found: number[] = []
  for (let next = 1; next < all.length; next++) {
    if (all[next]!.syllable > all[next - 1]!.lastSyllable) found.push(all[next]!.start)
  }
  return found
})

export const prefix: Pattern = {
  name: 'prefix',
  scope: 'letters',
  definition: 'a part with a meaning before a base word: un- re- dis- mis- pre- over- …',
  condition: `${prefixes.join(' ')} before a known word of three letters or more (or do) that keeps its sounds; a list names look-alikes; de- is left out, for what follows it is rarely a word that a child knows (delay)`,
  example: { word: 'unlock', letters: 'un' },
  counterExample: { word: 'uncle', why: 'there is no word cle' },
  source: 'the commonest prefixes after White, Sowell and Yanagihara 1989; from memory',
  find: findPrefix,
}

/** Suffixes with the sounds they have. Where `baseNeeded` is false the letters and sounds are evidence enough. */
const suffixes: readonly {
  readonly letters: string
  readonly sounds: RegExp
  readonly baseNeeded: boolean
}[] = [
  { letters: 'ness', sounds: /N (AH|IH|EH) S$/, baseNeeded: true },
  { letters: 'less', sounds: /L (AH|IH|EH) S$/, baseNeeded: true },
  { letters: 'ment', sounds: /M (AH|IH|EH) N T$/, baseNeeded: true },
  { letters: 'able', sounds: /AH B AH L$/, baseNeeded: true },
  { letters: 'ible', sounds: /AH B AH L$/, baseNeeded: true },
  { letters: 'ship', sounds: /SH IH P$/, baseNeeded: true },
  { letters: 'hood', sounds: /HH UH D$/, baseNeeded: true },
  { letters: 'ward', sounds: /W ER D$/, baseNeeded: true },
  { letters: 'some', sounds: /S AH M$/, baseNeeded: true },
  { letters: 'teen', sounds: /T IY N$/, baseNeeded: true },
  { letters: 'tion', sounds: /(SH|CH) AH N$/, baseNeeded: false },
  { letters: 'sion', sounds: /(SH|ZH) AH N$/, baseNeeded: false },
  { letters: 'ful', sounds: /F (AH|UH) L$/, baseNeeded: true },
  { letters: 'ous', sounds: /AH S$/, baseNeeded: false },
  { letters: 'ish', sounds: /IH SH$/, baseNeeded: true },
  { letters: 'ly', sounds: /L IY$/, baseNeeded: true },
  { letters: 'en', sounds: /AH N$/, baseNeeded: true },
  { letters: 'or', sounds: /ER$/, baseNeeded: true },
  { letters: 'y', sounds: /IY$/, baseNeeded: true },
]

const suffixesByLast = byLetter(suffixes, ({ letters }) => letters.at(-1)!)

/** The dictionary wavers between reduced vowels (different, differently), and between AA and AO. */
function alike(first: string, second: string | undefined): boolean {
  const reduced = /^(?:AH|IH|EH)$/
  if (second === undefined || first === second) return first === second
  return (reduced.test(first) && reduced.test(second)) || (/^A[AO]$/.test(first) && /^A[AO]$/.test(second))
}

/** The base's sounds stand at the beginning; a last /IY/ (happy, happily) or /AH L/ (simple, simply) may change. */
function keepsSounds(base: readonly string[], sounds: readonly string[]): boolean {
  const fixed =
    base.at(-1) === 'IY' ? base.slice(0, -1) : base.slice(-2).join(' ') === 'AH L' ? base.slice(0, -2) : base
  return fixed.length > 0 && fixed.every((sound, index) => alike(sound, sounds[index]))
}

function findSuffix(word: StudiedLetters): readonly Finding[] {
  const { evidence } = word
  const text = word.text.toLowerCase()
  if (evidence === undefined) return []
  const sounds = soundsOf(word.pronunciation)
  for (const { letters, sounds: said, baseNeeded } of suffixesByLast.get(text.at(-1)!) ?? []) {
    if (!text.endsWith(letters) || text.length < letters.length + 2) continue
    const spoken = sounds.join(' ')
    if (!said.test(spoken)) continue
    if (isInWordGroup(text, 'no suffix')) return []
    const start = text.length - letters.length
    if (!baseNeeded) {
      const why = `-${letters}, said /${spoken.match(said)![0]}/`
      return [findingAt(word, { pattern: 'suffix', start, end: text.length, why })]
    }
    const stem = text.slice(0, start)
    const candidates = [
      ...spellingsBehind(stem),
      ...(letters === 'ly' ? [{ base: `${stem}le`, inWords: `${stem}le without its le` }] : []),
    ]
    const base = candidates.find(
      ({ base }) =>
        base.length >= 3 &&
        isFamiliar(base, evidence) &&
        evidence.pronunciationsOf(base).some(pronunciation => keepsSounds(soundsOf(pronunciation), sounds)),
    )
    if (base === undefined) continue
    const why = `-${letters} added to ${base.inWords}`
    return [findingAt(word, { pattern: 'suffix', start, end: text.length, why })]
  }
  return []
}

export const suffix: Pattern = {
  name: 'suffix',
  scope: 'letters',
  definition:
    'a part with a meaning after a base word: -ful -less -ness -ly -ment -y …, and -tion, -sion, -ous',
  condition: `${suffixes.map(({ letters }) => letters).join(' ')} after a known word that keeps its sounds (tion, sion, ous: by letters and sounds); -ed -ing -er -est -s -es are named as endings; a list names look-alikes`,
  example: { word: 'harmless', letters: 'less' },
  counterExample: { word: 'lily', why: 'there is no word li that -ly was added to' },
  source: 'the commonest suffixes after White, Sowell and Yanagihara 1989; from memory',
  find: oncePerWord(findSuffix),
}
