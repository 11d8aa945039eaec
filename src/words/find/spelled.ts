/** Letters and findings where they are wished for in a word. */
import type { PlaceInWord } from '../word.js'
import type { OfferedFinding, OfferedWord } from './offered-word.js'

export type PlaceWished = Exclude<PlaceInWord, 'whole'>

/** The findings of a pattern that stand on the letters and at the place that are wished. */
export function findingsFor<F extends OfferedFinding>(
  { findings }: { readonly findings: readonly F[] },
  pattern: string,
  { letters, place }: { readonly letters?: string; readonly place?: PlaceWished },
): readonly F[] {
  return findings.filter(
    finding =>
      finding.pattern === pattern &&
      (letters === undefined || finding.letters.toLowerCase() === letters) &&
      (place === undefined || finding.place === place || finding.place === 'whole'),
  )
}

export function isSpelled(
  word: Pick<OfferedWord, 'text' | 'graphemes' | 'findings'>,
  letters: string,
  place: PlaceWished | undefined,
): boolean {
  if (letters.includes('_')) return isSplit(word, letters, place)
  const { text } = word
  if (place === 'beginning') return text.startsWith(letters)
  if (place === 'end') return text.endsWith(letters)
  return (place === 'middle' ? text.slice(1, -1) : text).includes(letters)
}

/**
 * A low line stands for one letter or team between: `a_e` is found in *cake* and *bathe*. Before an e the letters are
 * the split team that the pattern silent-e names, so neither *water* nor *have* has an a_e, *paste* has two letters
 * between.
 */
function isSplit(
  { text, graphemes, findings }: Pick<OfferedWord, 'text' | 'graphemes' | 'findings'>,
  letters: string,
  place: PlaceWished | undefined,
): boolean {
  const [before = '', after = ''] = letters.split('_')
  if (![before, after].every(part => text.includes(part))) return false
  const stands = (start: number, end: number) => {
    if (place === 'beginning') return start === 0
    if (place === 'end') return end === text.length
    return place === undefined || (start > 0 && end < text.length)
  }
  const isTeam = (start: number, end: number) =>
    after !== 'e' ||
    findings.some(found => found.pattern === 'silent-e' && found.start === start && found.end === end)
  return graphemes.some(({ letters: between, start: at }) => {
    // care: its a and r are one grapheme, and r is the letter between.
    const gap = between.length > 1 && between.startsWith(before) ? between.slice(before.length) : between
    const gapAt = at + between.length - gap.length
    const [start, end] = [gapAt - before.length, gapAt + gap.length + after.length]
    if (gap === '' || start < 0 || end > text.length) return false
    const fits = text.slice(start, gapAt) === before && text.slice(end - after.length, end) === after
    return fits && stands(start, end) && isTeam(start, end)
  })
}
