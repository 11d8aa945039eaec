/** What a word is: letters, with apostrophes and hyphens inside, up to thirty characters. */

import { fail, succeed } from '../../outcomes.js'
import { errorAt, type Outcome, type Place, type Problem } from '../../problems.js'

export const longestWord = 30

/** Every word fits it; what fits it may still be none. */
export const wordPattern = String.raw`^\s*[^\s\d]+\s*$`

const letter = String.raw`(?=[\p{Lu}\p{Ll}\p{Lt}])\p{Script=Latin}\p{M}*`
/** Most words are plain, and to go through the tables of all scripts takes longer than to study one. */
const plainWord = /^[A-Za-z]+(?:['-][A-Za-z]+)*$/
const wholeWord = () => new RegExp(`^(?:${letter})+(?:['-](?:${letter})+)*$`, 'u')
const oneLetter = () => new RegExp(`^${letter}$`, 'u')

/**
 * As it will be printed: Unicode NFC, apostrophes and hyphens in their plain forms, without the invisible
 * characters and joined letters that copying from a document brings along.
 */
export function straightened(text: string): string {
  if (/^[A-Za-z]+$/.test(text)) return text
  return text
    .normalize('NFC')
    .replaceAll(/[\u00AD\u200B-\u200D\u2060\uFEFF]/g, '')
    .replaceAll(/[\u2018\u2019\u02BC\u02B9\u2032\uFF07`\u00B4]/g, "'")
    .replaceAll(/[\u2010-\u2013\u2212]/g, '-')
    .replaceAll(/[\uFB00-\uFB06]/g, joined => joined.normalize('NFKC'))
    .trim()
}

/** The form in which two spellings are one word: `March` and `march`. */
export function sameWord(text: string): string {
  return straightened(text).toLowerCase()
}

/** Only its letters, lower case: what sounds and syllables must add up to. */
export function lettersOf(text: string): string {
  return sameWord(text).replaceAll(/['-]/g, '')
}

export function isWord(text: string): boolean {
  return (plainWord.test(text) || wholeWord().test(text)) && [...text].length <= longestWord
}

/** A word from whatever was typed, straightened; or what keeps it from being one. */
export function wordText(typed: string, place: Place): Outcome<string> {
  const text = straightened(typed)
  return isWord(text) ? succeed(text) : fail(notAWord(text, place))
}

function notAWord(text: string, place: Place): Problem {
  const characters = [...text]
  const shown = characters.length > longestWord + 10 ? `${characters.slice(0, longestWord).join('')}…` : text
  const say = (message: string, advice: string) => errorAt(place, message, advice)
  if (text === '') return say('a word is missing', 'Write the word, or take the place out.')
  if (/^[^\s]+(?:\s*[,;/]\s*\S+)+$/.test(text)) {
    return say(`"${shown}" is a list of words in one place`, 'Give each word a line of its own.')
  }
  if (/\s-\s/.test(text)) {
    return say(
      `"${shown}" has a dash in it`,
      'Write the word alone, or "word:" with the word and, on the line below it, "clue:" with what it means.',
    )
  }
  if (/\s/.test(text)) {
    return say(
      `"${shown}" has a space in it`,
      'Give each word a line of its own, or join the parts with a hyphen where they are one word.',
    )
  }
  if (/\p{N}/u.test(text)) {
    return say(`"${shown}" has a digit in it`, 'Take the digit out, or write the number as a word: two.')
  }
  const strange = characters.find(character => !/['\p{M}-]/u.test(character) && !oneLetter().test(character))
  if (strange) return say(...foreignSign(shown, strange))
  if (characters.length > longestWord) {
    const advice = `A word may have up to ${longestWord} characters; check that no two words run together.`
    return say(`"${shown}" has ${characters.length} characters`, advice)
  }
  if (text.endsWith("'")) {
    const bare = text.replace(/'+$/, '')
    return say(
      `"${shown}" ends in an apostrophe`,
      `An apostrophe stands inside a word: write ${bare} instead.`,
    )
  }
  return say(
    `"${shown}" has an apostrophe or a hyphen that is not between letters`,
    'Keep apostrophes and hyphens between two letters, one at a time.',
  )
}

function foreignSign(word: string, sign: string): readonly [message: string, advice: string] {
  if (/\p{L}/u.test(sign)) {
    const advice =
      'Words are written in Latin letters, accents included; look for a letter pasted from elsewhere.'
    return [`"${word}" has the letter "${sign}" in it`, advice]
  }
  const visible = /[\p{C}\p{Z}]/u.test(sign)
    ? `U+${codePoint(sign)}, which cannot be seen,`
    : `the sign "${sign}"`
  return [
    `"${word}" has ${visible} in it`,
    'Take it out: a word is letters, with apostrophes or hyphens inside.',
  ]
}

function codePoint(sign: string): string {
  return sign.codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0')
}

/** The first of words that are the same but for capitals. */
export function eachWordOnce<T extends { readonly text: string }>(words: readonly T[]): readonly T[] {
  const first = new Map<string, T>()
  for (const word of words) if (!first.has(sameWord(word.text))) first.set(sameWord(word.text), word)
  return [...first.values()]
}
