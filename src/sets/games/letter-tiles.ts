/** Letter tiles: a tile for each grapheme, as many of each as the words need, and no more. */
import { succeed } from '../../outcomes.js'
import { type Outcome, type Place, type Problem, warningAt } from '../../problems.js'
import { isVowelSound } from '../../words/alignment/arpabet.js'
import type { Word } from '../../words/word.js'
import { cardId } from '../card-id.js'
import type { Card, CardSet } from '../card-set.js'

export const tilesFor = ['one word at a time', 'all words at once'] as const
export type TilesFor = (typeof tilesFor)[number]

export interface TilesWanted {
  readonly words: readonly Word[]
  readonly build: TilesFor
  readonly copies: number
  readonly place: Place
}

export interface Tile {
  /** A letter, or a team that spells one sound. */
  readonly letters: string
  readonly isVowel: boolean
  readonly count: number
}

/** The letters of a word as it is built: a team of letters is one tile, a silent letter a tile of its own. */
export function tilesOfWord({ graphemes }: Word): readonly string[] {
  return graphemes.map(({ letters }) => letters)
}

/** In the order of the alphabet, consonants before vowels, so that equal tiles lie together on the sheet. */
export function tilesOf(words: readonly Word[], build: TilesFor): readonly Tile[] {
  const counts = new Map<string, number>()
  const vowels = new Set<string>()
  for (const word of words) {
    const own = new Map<string, number>()
    for (const { letters, sounds } of word.graphemes) {
      own.set(letters, (own.get(letters) ?? 0) + 1)
      if (isVowelTeam(letters, sounds)) vowels.add(letters)
    }
    for (const [letters, count] of own) {
      const before = counts.get(letters) ?? 0
      counts.set(letters, build === 'all words at once' ? before + count : Math.max(before, count))
    }
  }
  return [...counts]
    .map(([letters, count]): Tile => ({ letters, count, isVowel: vowels.has(letters) }))
    .sort((a, b) => Number(a.isVowel) - Number(b.isVowel) || (a.letters < b.letters ? -1 : 1))
}

/** By what it spells; a letter without a sound by what it is (the e of cake is a vowel letter). */
function isVowelTeam(letters: string, sounds: readonly string[]): boolean {
  return sounds.length === 0 ? /^[aeiou]/i.test(letters) : sounds.some(isVowelSound) && !/^l/i.test(letters)
}

/** A card for each tile, its letters as title. */
export function letterTiles(wanted: TilesWanted): Outcome<CardSet> {
  const { words, build, copies, place } = wanted
  const tiles = tilesOf(words, build)
  const each = tiles.flatMap(tile => Array.from({ length: tile.count }, () => tile))
  const set: CardSet = {
    cards: Array.from({ length: copies }, (_, copy) =>
      each.map(
        ({ letters }, index): Card => ({
          id: cardId({ prefix: 'tile', number: index + 1, copy: copy + 1, of: each.length }),
          kind: 'card',
          number: index + 1,
          copy: copy + 1,
          words: [],
          title: letters,
        }),
      ),
    ).flat(),
    answerData: {
      tiles: Object.fromEntries(tiles.map(({ letters, count }) => [letters, count])),
      each: build === 'one word at a time',
    },
    notes: [notesOn(tiles, build)],
  }
  return succeed(
    set,
    words.filter(word => word.source === 'guess').map(word => guessed(word, place)),
  )
}

function notesOn(tiles: readonly Tile[], build: TilesFor): string {
  const count = tiles.reduce((sum, tile) => sum + tile.count, 0)
  const enough = build === 'one word at a time' ? 'each word by itself' : 'all the words side by side'
  return `The ${count} tiles are just enough to build ${enough}.`
}

function guessed(word: Word, place: Place): Problem {
  return warningAt(
    place,
    `the tiles of "${word.text}" are a guess: the word is not in the dictionary`,
    'Look at its tiles; give it its sounds in the words where they are wrong.',
  )
}
