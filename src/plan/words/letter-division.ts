/** The teacher's own division of a word into sounds or syllables. */

import { andThen, fail, succeed, together } from '../../outcomes.js'
import { errorAt, type Outcome } from '../../problems.js'
import type { Takes } from '../keys/takes.js'
import { type Entry, misfit } from '../yaml/entry.js'
import { bracketsApart, dividedLetters } from './sound-division.js'
import { lettersOf, straightened } from './word-text.js'

/** Between parts: spaces, middle dots and bullets, upright lines, slashes; hyphens where the word has none. */
const dividers = /[\s\u00B7\u2022\u2027|/]+/
const dividersAndHyphens = /[\s\u00B7\u2022\u2027|/-]+/

const kinds = {
  sounds: {
    key: 'sounds',
    example:
      'Divide the letters by spaces, every letter once: sounds: m ar sh; a silent one may stand in brackets: c a k (e).',
  },
  syllables: {
    key: 'syllables',
    example: 'Divide the word by spaces, every letter once: syllables: mar ket.',
  },
} as const

/** What `sounds:` and `syllables:` of a word take. */
export function divisionTaken(part: keyof typeof kinds): Takes {
  const samples = part === 'sounds' ? ['m ar sh', 'c a k (e)'] : ['mar ket']
  const text: Takes = {
    kind: 'form',
    what: 'all letters of the word, divided by spaces',
    samples,
    pattern: String.raw`^\D+$`,
  }
  return { kind: 'list', of: text, alone: true, empty: false }
}

/** The parts of `word`; an error where their letters do not add up to it. */
export function readDivision(
  key: keyof typeof kinds,
  entry: Entry,
  word: string,
): Outcome<readonly string[]> {
  const { example } = kinds[key]
  const typed = partsOf(entry, key, word)
  if (!typed.ok) return typed
  const parts = typed.value.map(straightened).filter(part => part !== '')
  const divided =
    key === 'sounds' ? dividedLetters(parts) : parts.map(letters => ({ letters, silent: false }))
  const spelled = divided?.map(({ letters }) => letters).join('')
  const say = (message: string) => fail<readonly string[]>(errorAt(entry.place, message, example))
  if (spelled === undefined || lettersOf(spelled) !== lettersOf(word)) {
    const found = spelled === undefined ? '' : `, but to "${lettersOf(spelled)}"`
    return say(`the ${key} "${parts.join(' ')}" do not add up to "${word}"${found}`)
  }
  if (divided!.every(({ silent }) => silent)) return say(`all letters of "${word}" are in brackets`)
  return succeed(parts)
}

function partsOf(entry: Entry, key: keyof typeof kinds, word: string): Outcome<readonly string[]> {
  const { example } = kinds[key]
  const spaced = (text: string) => (key === 'sounds' ? bracketsApart(text) : text)
  if (entry.kind === 'text')
    return succeed(spaced(entry.text).split(word.includes('-') ? dividers : dividersAndHyphens))
  if (entry.kind !== 'list') return misfit(entry, 'a division of the word', example)
  const read = entry.items.map(item =>
    item.kind === 'text'
      ? succeed(spaced(item.text).trim().split(/\s+/))
      : misfit<readonly string[]>(item, 'letters', example),
  )
  return andThen(together(read), parts => succeed(parts.flat()))
}
