import type { PartOfSpeech } from '../word.js'

const codes: Readonly<Record<string, PartOfSpeech>> = {
  n: 'noun',
  v: 'verb',
  a: 'adjective',
  r: 'adverb',
  p: 'pronoun',
  e: 'preposition',
  c: 'conjunction',
  d: 'determiner',
  i: 'interjection',
  m: 'number',
}

/**
 * A table of lines `codes: word word …`, the codes in order of use.
 * @throws Error on a letter that is no code and on a word that stands twice
 */
export function readCodedTable(table: string): ReadonlyMap<string, readonly PartOfSpeech[]> {
  const found = new Map<string, readonly PartOfSpeech[]>()
  for (const line of table.trim().split('\n')) {
    const [letters = '', words = ''] = line.split(': ')
    const parts = [...letters].map(letter => {
      const part = codes[letter]
      if (part === undefined) throw new Error(`"${letter}" is no part of speech in "${line}"`)
      return part
    })
    for (const word of words.trim().split(/\s+/)) {
      if (found.has(word)) throw new Error(`"${word}" stands twice in the table of parts of speech`)
      found.set(word, parts)
    }
  }
  return found
}
