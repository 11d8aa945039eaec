/** How one chain card leads to the next: what it says, and in which order its words go. */
import { type SoundChange, soundChange } from '../../words/alignment/sound-change.js'
import type { Word } from '../../words/word.js'
import type { PromptKind } from './prompt.js'

/** `last letters`: the next word begins as this one ends. */
export const linkKinds = ['clue', 'plural', 'past form', 'ing form', 'sound change', 'last letters'] as const
export type LinkKind = (typeof linkKinds)[number]

/** Whether what a card says stands for a word whatever the card's own word is, so that any order makes a loop. */
export function isPrompt(kind: LinkKind): kind is Extract<LinkKind, PromptKind> {
  return kind !== 'sound change' && kind !== 'last letters'
}

/**
 * What leads from a word to one that may follow it; undefined where it may not.
 * @param among words of which no other is to answer it
 */
export function linkBetween(
  from: Word,
  to: Word,
  kind: Exclude<LinkKind, PromptKind>,
  among: readonly Word[] = [],
): string | undefined {
  if (kind === 'last letters') {
    const begun = beginningFor(from, to)
    return begun === undefined ? undefined : `begins with ${onlyBeginning(begun, to, among)}`
  }
  const change = soundChange(soundsOf(from), soundsOf(to))
  return change === undefined ? undefined : changeInWords(change, from, to)
}

function soundsOf({ graphemes }: Word): readonly string[] {
  return graphemes.flatMap(({ sounds }) => sounds)
}

/** A team counts as one, since it spells one sound: shell may follow marsh; doubled letters may count as one of them. */
function lastLetters({ text, graphemes }: Word): readonly string[] {
  const last = (graphemes.at(-1)?.letters ?? text.slice(-1)).toLowerCase()
  return /^(.)\1$/.test(last) ? [last, last.slice(1)] : [last]
}

/** A consonant or team must be one in the next word too: thrush does not begin as nest ends. */
function beginningFor(from: Word, to: Word): string | undefined {
  const first = to.graphemes[0]?.letters.toLowerCase()
  return lastLetters(from).find(letters =>
    /^[aeiou]/.test(letters) ? to.text.toLowerCase().startsWith(letters) : first === letters,
  )
}

/** As many more letters of the word as tell it from the others. */
function onlyBeginning(begun: string, to: Word, among: readonly Word[]): string {
  const text = to.text.toLowerCase()
  const others = among.filter(word => word !== to).map(word => word.text.toLowerCase())
  let letters = begun
  while (letters.length < text.length && others.some(other => other.startsWith(letters)))
    letters = text.slice(0, letters.length + 1)
  return letters
}

function changeInWords({ kind, at }: SoundChange, from: Word, to: Word): string {
  const word = kind === 'taken away' ? from : to
  const letters = lettersAt(word, at)
  const last = soundsOf(word).length - 1
  const place = at === 0 ? 'first' : at === last ? 'last' : undefined
  switch (kind) {
    case 'changed':
      return place === undefined
        ? `change ${last === 2 ? 'the middle sound' : 'a sound in the middle'} to ${letters}`
        : `change the ${place} sound to ${letters}`
    case 'added':
      return place === undefined
        ? `add ${letters} in the middle`
        : `add ${letters} ${place === 'first' ? 'at the beginning' : 'at the end'}`
    case 'taken away':
      return place === undefined ? `take ${letters} away` : `take the ${place} sound away`
  }
}

/** The letters that spell the sound. */
function lettersAt({ graphemes }: Word, at: number): string {
  let passed = 0
  for (const { letters, sounds } of graphemes) {
    passed += sounds.length
    if (at < passed) return letters.toLowerCase()
  }
  throw new Error('the sound is none of the word')
}
