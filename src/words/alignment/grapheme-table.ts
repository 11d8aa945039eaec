/** The inventory with its learned weights, ready to be walked letter by letter. */
import { rowsOf } from '../tables/installed-tables.js'
import { type Condition, conditions } from './conditions.js'

/** One way to spell a stretch of sounds. */
export interface Pairing {
  readonly letters: string
  readonly sounds: readonly string[]
  /** Negative natural logarithm of its share of all graphemes in running through the familiar words. */
  readonly cost: number
  /** A word that shows it. */
  readonly example: string
  readonly condition: string | undefined
  readonly mayStand: Condition | undefined
}

export interface LetterNode {
  /** By the letter's place in the alphabet. */
  readonly next: (LetterNode | undefined)[]
  readonly pairings: Pairing[]
}

export interface GraphemeTable {
  readonly pairings: readonly Pairing[]
  readonly root: LetterNode
}

/** Name of a pairing in the weights: `ea EH`, `x K S`, `e -`. */
export function pairingKey(letters: string, sounds: readonly string[]): string {
  return `${letters} ${sounds.length === 0 ? '-' : sounds.join(' ')}`
}

/** What a pairing costs that no word of the lessons showed. */
const unseenCost = 16
/** By convention a vowel and its r are one grapheme even where a cut between them would be as likely. */
const rControlledPreference = 6

export function graphemeTable(weights: ReadonlyMap<string, number>): GraphemeTable {
  const pairings: Pairing[] = []
  const root: LetterNode = { next: emptyAlphabet(), pairings: [] }
  for (const [letters = '', written = '', example = '', where = ''] of rowsOf('alignment/inventory')) {
    const sounds = readSounds(written)
    const learned = weights.get(pairingKey(letters, sounds)) ?? unseenCost
    const cost = sounds.length > 1 && sounds.at(-1) === 'R' ? learned - rControlledPreference : learned
    const pairing: Pairing = { letters, sounds, cost, example, ...conditionNamed(where) }
    pairings.push(pairing)
    nodeFor(root, letters).pairings.push(pairing)
  }
  return { pairings, root }
}

function readSounds(written: string): readonly string[] {
  return written === '-' ? [] : written.split(' ')
}

function conditionNamed(where: string): Pick<Pairing, 'condition' | 'mayStand'> {
  if (where === 'anywhere') return { condition: undefined, mayStand: undefined }
  const mayStand = conditions[where]
  if (mayStand === undefined) throw new Error(`No condition "${where}"`)
  return { condition: where, mayStand }
}

function nodeFor(root: LetterNode, letters: string): LetterNode {
  let node = root
  for (let index = 0; index < letters.length; index++) {
    const place = letters.charCodeAt(index) - firstLetter
    let next = node.next[place]
    if (next === undefined) {
      next = { next: emptyAlphabet(), pairings: [] }
      node.next[place] = next
    }
    node = next
  }
  return node
}

const firstLetter = 'a'.charCodeAt(0)
const emptyAlphabet = (): (LetterNode | undefined)[] => Array.from({ length: 26 }, () => undefined)

/** The node behind one more letter; undefined where no grapheme goes on with it. */
export function nodeBehind(node: LetterNode, letters: string, index: number): LetterNode | undefined {
  return node.next[letters.charCodeAt(index) - firstLetter]
}

/** An e is less often silent inside a word (careful) than at its end, and seldom before a vowel (someone). */
export function placeCost({ letters: paired, sounds }: Pairing, letters: string, end: number): number {
  if (sounds.length > 0 || paired !== 'e' || end === letters.length) return 0
  return 'aeiouy'.includes(letters[end]!) ? silentEBeforeVowelCost : innerSilentECost
}

const innerSilentECost = 2
const silentEBeforeVowelCost = 8
