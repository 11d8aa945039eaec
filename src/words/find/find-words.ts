/** Words that fit a teacher's wishes, the most familiar first; words like a word, the likest first. */
import { inTurn } from './like-plan.js'
import { likenessTo } from './likeness.js'
import type { OfferedWord } from './offered-word.js'
import { meets, type Wishes } from './wishes.js'

export interface FindQuery extends Wishes {
  /** The nearest come first (likeness.ts). */
  readonly like?: OfferedWord
  readonly count: number
}

export interface FoundWord {
  readonly word: OfferedWord
  /** How it is like the word asked for; empty where none was. */
  readonly likeness: string
}

/** @param offered the most familiar first */
export function findWords(query: FindQuery, offered: readonly OfferedWord[]): readonly FoundWord[] {
  const { like, count } = query
  const found: OfferedWord[] = []
  const needsAll = like !== undefined || query.goesWith !== undefined
  for (const word of offered) {
    if (!needsAll && found.length >= count) break
    if (isCandidate(word, query) && meets(word, query)) found.push(word)
  }
  const { marks = [] } = query.goesWith ?? {}
  if (like === undefined && marks.length > 1)
    return inTurn(found, marks, count).map(word => ({ word, likeness: '' }))
  if (like === undefined) return found.slice(0, count).map(word => ({ word, likeness: '' }))
  const likeness = likenessTo(like)
  return found
    .flatMap(word => {
      const near = word.text === like.text.toLowerCase() ? undefined : likeness(word)
      return near === undefined ? [] : [{ word, near }]
    })
    .toSorted((a, b) => a.near.rank - b.near.rank)
    .slice(0, count)
    .map(({ word, near }) => ({ word, likeness: near.why }))
}

/** Contractions are no words of a count: who asks for them gets them, nobody else. */
export function isCandidate({ text }: OfferedWord, { patterns = [] }: Wishes): boolean {
  return text.includes("'") === patterns.includes('contraction')
}
