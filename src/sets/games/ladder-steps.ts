/** What changes from one word of a ladder to the next. */
import type { HeardPiece, LadderWord } from './ladder-words.js'

export interface LadderStep {
  /** Which of the pieces that are heard, from 0. */
  readonly at: number
  /** The pieces of the new word. */
  readonly pieces: readonly HeardPiece[]
}

/** A word of a ladder; the first has no step that leads to it. */
export interface LadderRung extends LadderWord {
  readonly step?: LadderStep
}

export function rungsOf(path: readonly LadderWord[]): readonly LadderRung[] {
  return path.map((word, index) => {
    if (index === 0) return word
    const before = path[index - 1]!
    const at = word.pieces.findIndex(({ sounds }, place) => sounds !== before.pieces[place]!.sounds)
    return { ...word, step: { at, pieces: word.pieces } }
  })
}

const places = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth'] as const

/** `the vowel` where the word has one alone, else `the first sound`, `the last sound`. */
export function placeInWords({ at, pieces }: LadderStep): string {
  const vowels = pieces.filter(({ isVowel }) => isVowel).length
  if (pieces[at]!.isVowel && vowels === 1) return 'the vowel'
  if (at === pieces.length - 1) return 'the last sound'
  return `the ${places[at] ?? `${at + 1}th`} sound`
}

/** `Change the first sound to s.` */
export function changeInWords(step: LadderStep): string {
  return `Change ${placeInWords(step)} to ${step.pieces[step.at]!.letters}.`
}

/** `r to s`; `add e`; `ai to a, add e`; `ew to oo t`, the letters between those that stay at both ends. */
export function letterChange(from: LadderWord, to: LadderWord): string {
  const lettersOf = ({ word }: LadderWord) => word.graphemes.map(({ letters }) => letters.toLowerCase())
  const [before, after] = [lettersOf(from), lettersOf(to)]
  if (before.length === after.length) return changedPlaces(before, after)
  const [shorter, longer] = before.length < after.length ? [before, after] : [after, before]
  const hasFinalE = longer.length === shorter.length + 1 && longer.at(-1) === 'e'
  if (!hasFinalE) return betweenEnds(before, after)
  const e = longer === after ? 'add e' : 'take e away'
  const changed = changedPlaces(before.slice(0, shorter.length), after.slice(0, shorter.length))
  return changed === '' ? e : `${changed}, ${e}`
}

function changedPlaces(before: readonly string[], after: readonly string[]): string {
  return before
    .flatMap((letters, index) => (letters === after[index] ? [] : [`${letters} to ${after[index]}`]))
    .join(', ')
}

function betweenEnds(before: readonly string[], after: readonly string[]): string {
  const most = Math.min(before.length, after.length)
  let same = 0
  while (same < most && before[same] === after[same]) same++
  let end = 0
  while (end < most - same && before.at(-1 - end) === after.at(-1 - end)) end++
  const changed = (letters: readonly string[]) => letters.slice(same, letters.length - end).join(' ')
  const [gone, come] = [changed(before), changed(after)]
  if (gone === '') return `add ${come}`
  return come === '' ? `take ${gone} away` : `${gone} to ${come}`
}
