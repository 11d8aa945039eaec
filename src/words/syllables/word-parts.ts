/** A word's parts and the evidence for them: another word that is spelled and sounds alike. */
import { soundsOf } from '../alignment/arpabet.js'
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
export const familiarEnough = 20

/** A stretch of the word that is a word, or has lost a letter to what follows it. */
export interface Part {
  readonly text: string
  /** Index of its first letter in the whole word. */
  readonly start: number
  readonly sounds: readonly string[]
}

export interface Evidence {
  readonly units: readonly Unit[]
  readonly others: OtherWords
  /** Where another word divides. */
  readonly divisionsIn: (word: string, pronunciation: string) => readonly Seam[]
}

export function isSaid(word: string, sounds: readonly string[], others: OtherWords): boolean {
  return saidAs(word, sounds, others) !== undefined
}

/** The pronunciation of the word that has these sounds. */
export function saidAs(word: string, sounds: readonly string[], others: OtherWords): string | undefined {
  return others
    .pronunciationsOf(word)
    .find(said => alike(soundsOf(said), sounds) || alikeWithR(soundsOf(said), sounds))
}

/** whisper ends in ER; in whisperer the dictionary writes AH R for it. */
function alikeWithR(first: readonly string[], second: readonly string[]): boolean {
  if (Math.abs(first.length - second.length) !== 1) return false
  const inOne = (sounds: readonly string[]) => sounds.join(' ').replaceAll('AH R', 'ER').split(' ')
  return alike(inOne(first), inOne(second))
}

export function startsWith(sounds: readonly string[], opening: readonly string[]): boolean {
  return sounds.length > opening.length && alikeFrom(sounds, 0, opening)
}

export function endsWith(sounds: readonly string[], ending: readonly string[]): boolean {
  return sounds.length > ending.length && alikeFrom(sounds, sounds.length - ending.length, ending)
}

/** Sounds between which the dictionary wavers count as the same. */
const wavering = new Set(['AA AO', 'AO AA', 'IH AH', 'AH IH', 'TH DH', 'DH TH', 'IY IH', 'IH IY', 'S Z'])

export function alike(first: readonly string[], second: readonly string[]): boolean {
  return first.length === second.length && alikeFrom(first, 0, second)
}

function alikeFrom(sounds: readonly string[], from: number, part: readonly string[]): boolean {
  for (let index = 0; index < part.length; index++) {
    const sound = sounds[from + index]
    if (sound === part[index] || wavering.has(`${sound} ${part[index]}`)) continue
    if (index > 0 || !opensWeakly(part[0]!) || !opensWeakly(sound!)) return false
  }
  return true
}

/** The e of engage and excite, now IH, now EH. */
function opensWeakly(sound: string): boolean {
  return sound === 'IH' || sound === 'EH'
}
