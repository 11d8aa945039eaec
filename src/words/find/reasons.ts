import { findPattern } from '../patterns/find-patterns.js'
import { patternNamed } from '../patterns/index.js'
import { digraphsInBlends } from '../patterns/inside-blends.js'
import type { Finding, Word } from '../word.js'
import { findingsFor } from './spelled.js'
import type { Wishes } from './wishes.js'

/** What in a word met the wishes: a finding for each pattern, else for each of the plan's marks that it shows. */
export function reasonsFor(
  word: Word,
  { patterns = [], letters, place, goesWith }: Wishes,
): readonly Finding[] {
  const where = { ...(letters === undefined ? {} : { letters }), ...(place === undefined ? {} : { place }) }
  const own = patterns.flatMap(name => findingsFor(findingsIn(word, name), name, where).slice(0, 1))
  if (own.length > 0) return own
  return (goesWith?.marks ?? []).flatMap(target => {
    if (target.kind !== 'pattern') return []
    const { pattern, insideBlends, place: marked } = target
    const there = marked === undefined ? {} : { place: marked }
    const findings = [
      ...findingsIn(word, pattern).findings,
      ...(insideBlends === true ? digraphsInBlends(word) : []),
    ]
    return findingsFor({ findings }, pattern, there).slice(0, 1)
  })
}

/** Kinds of syllable are no part of a word's own findings. */
function findingsIn(word: Word, name: string): { readonly findings: readonly Finding[] } {
  if (patternNamed(name)?.scope !== 'syllable') return { findings: word.patterns }
  return { findings: findPattern(name, { ...word, pronunciation: word.pronunciations[0] ?? '' }) }
}
