/**
 * The dictionary writes some sounds now one way, now another: fire as one syllable or two; arrest with ER where erase
 * has a vowel and R. Here each gets one way, so that a count of sounds does not hang on who typed the entry. Which way:
 * Merriam-Webster's, from memory; weak-vowels.ts has the vowels without stress. What changes neither stays as the
 * dictionary has it: near with IH, hear with IY.
 */
import { lazily } from '../../lazily.js'
import { withoutStress } from '../alignment/arpabet.js'
import { alignWord } from '../alignment/graphemes.js'
import { wordsOf } from '../tables/installed-tables.js'
import type { Grapheme } from '../word.js'
import type { Spoken } from './spoken.js'
import { weakVowelIn } from './weak-vowels.js'

export interface Writing {
  readonly name: string
  /** A word that it changes. */
  readonly example: string
  /** The sounds of the grapheme at `index` in the one way, or undefined where nothing is to be changed. */
  readonly write: (all: readonly Spoken[], index: number) => readonly string[] | undefined
}

export const writings: readonly Writing[] = [
  {
    name: 'tire, choir and sour in one syllable, as fire and hour',
    example: 'tire as T AY R',
    write: (all, index) => {
      const { letters, said } = all[index]!
      const glide = all[index - 1]?.said.at(-1) ?? ''
      const next = all[index + 1]?.said ?? []
      const alone = letters === 'r' && said[0] === 'ER0' && /^A[YW]\d$/.test(glide)
      return alone && !next.some(isVowel) ? ['R'] : undefined
    },
  },
  {
    name: 'a weak vowel and an r that opens the stressed syllable are two sounds: a·round, ter·rif·ic, dec·o·ra·tion',
    example: 'around as AH R AW N D',
    write: (all, index) => {
      const { letters, said } = all[index]!
      const next = all.slice(index + 1).flatMap(spoken => spoken.said)[0] ?? ''
      const isFirst = !all.slice(0, index).some(spoken => spoken.said.some(isVowel))
      // op·er·a·tion and in·ter·rupt keep their er, for·ev·er its first word.
      const keepsItsR = letters.startsWith('e') && !isFirst
      const opens = /^[aeiou]r+$/.test(letters) && said.join(' ') === 'ER0' && /1$/.test(next)
      return opens && !keepsItsR ? ['AH0', 'R'] : undefined
    },
  },
  {
    name: 'au, aw, and a before ll, ld, lk, lt have AO, as law, fall and salt',
    example: 'astronaut, raw, falling with AO',
    write: (all, index) => {
      const { letters, said } = all[index]!
      if (said.length !== 1 || !said[0]!.startsWith('AA')) return undefined
      const rest = all.slice(index + 1).map(spoken => spoken.letters)
      const before = all[index - 1]?.letters ?? ''
      // swallow, wallet and quality have the a that follows w; wall and squall have not.
      const afterW = /(?:w|qu|wh)$/.test(before) && !/^ll(?:s|ed|ing|er)?$/.test(rest.join(''))
      const beforeL = letters === 'a' && /^l(?:l|[dkt])/.test(rest.join('')) && !afterW
      const isTeam = /^(?:au|aw|augh)$/.test(letters)
      return isTeam || beforeL ? [said[0]!.replace('AA', 'AO')] : undefined
    },
  },
  {
    name: 'an l between a consonant and a vowel is no syllable of its own: wob·bly, tick·lish',
    example: 'wobbly as W AA B L IY',
    write: (all, index) => {
      const { letters, said } = all[index]!
      const next = all[index + 1]?.said ?? []
      return letters === 'l' && said.join(' ') === 'AH0 L' && next.some(isVowel) ? ['L'] : undefined
    },
  },
  {
    name: 'u before another vowel is UW, not AH W, nor W after the sound of ch or zh',
    example: 'usually as usual, visually as visual',
    write: (all, index) => {
      const { letters, said } = all[index]!
      if (letters !== 'u' || said.at(-1) !== 'W') return undefined
      if (said.at(-2) === 'AH0') return [...said.slice(0, -2), 'UW0']
      return /^(?:[CSZ]H|JH)$/.test(all[index - 1]?.said.at(-1) ?? '') ? ['UW0'] : undefined
    },
  },
  {
    name: 'a before rr has its short sound: spar·row, par·rot and mar·ry as ar·row, car·rot and car·ry',
    example: 'sparrow with AE',
    write: (all, index) => {
      const { letters, said } = all[index]!
      const isShort = letters === 'a' && all[index + 1]?.letters === 'rr' && /^EH\d$/.test(said.join(' '))
      return isShort ? [said[0]!.replace('EH', 'AE')] : undefined
    },
  },
  {
    name: 'a weak er at the end or before a vowel has no stress of its own: catch·er, lib·er·al',
    example: 'catcher with ER0',
    write: (all, index) => {
      const { letters, said } = all[index]!
      const isEr = /^[aeiou]r$/.test(letters) && /^(?:ER2|AH0 R)$/.test(said.join(' '))
      const followsStress = all.slice(0, index).some(spoken => spoken.said.some(sound => sound.endsWith('1')))
      const after = all.slice(index + 1)
      const isOpen =
        after.every(spoken => /^[es]$/.test(spoken.letters)) ||
        isVowel(after.flatMap(spoken => spoken.said)[0] ?? '')
      return isEr && isOpen && followsStress ? ['ER0'] : undefined
    },
  },
]

/** Words whose parts say otherwise. */
const apart = lazily(() => new Set(wordsOf('pronunciation/own-writing')))

/** The pronunciation with every wavering sound in its one writing. */
export function inOneWriting(word: string, pronunciation: string): string {
  return withWeakVowels(word, withoutWavering(word, pronunciation))
}

/** All but the weak vowels, which tell the preferences which variant was written with care. */
export function withoutWavering(word: string, pronunciation: string): string {
  if (!/ER[02]|AA\d|AH0 [WLR]|EH\d R|[SZJC]H W/.test(pronunciation)) return pronunciation
  return rewritten(word, pronunciation, (all, index) =>
    writings.reduce<readonly string[]>((sounds, { write }) => write(all, index) ?? sounds, all[index]!.said),
  )
}

export function withWeakVowels(word: string, pronunciation: string): string {
  if (!/[AIE]H0/.test(pronunciation)) return pronunciation
  return rewritten(word, pronunciation, (all, index) => weakVowelIn(all, index) ?? all[index]!.said)
}

function rewritten(
  word: string,
  pronunciation: string,
  write: (all: readonly Spoken[], index: number) => readonly string[],
): string {
  if (apart().has(word)) return pronunciation
  const { graphemes } = alignWord(word, pronunciation)
  const spoken = spokenGraphemes(graphemes, pronunciation.split(' '))
  return spoken === undefined ? pronunciation : spoken.flatMap((_, index) => write(spoken, index)).join(' ')
}

function spokenGraphemes(
  graphemes: readonly Grapheme[],
  sounds: readonly string[],
): readonly Spoken[] | undefined {
  let next = 0
  const spoken = graphemes.map(grapheme => {
    const said = sounds.slice(next, next + grapheme.sounds.length)
    next += said.length
    return { letters: grapheme.letters, said }
  })
  return next === sounds.length ? spoken : undefined
}

function isVowel(sound: string): boolean {
  return sound !== withoutStress(sound)
}
