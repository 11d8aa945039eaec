import type { MarkPlace, MarkTarget } from '../../plan/plan.js'
import { digraphsInBlends } from '../../words/patterns/inside-blends.js'
import type { Finding, Word } from '../../words/word.js'
import { silentWithin } from './silent-within.js'
import type { LetterRange, MarkSpan, StyledMark } from './styled-mark.js'
import { lineStyle } from './styles.js'
import { showsFeature } from './word-features.js'

/** Where each mark stands on the word, in the order of the marks, then left to right. */
export function targetsOf(word: Word, marks: readonly StyledMark[]): readonly MarkSpan[] {
  return marks.flatMap(mark => {
    const { target } = mark.mark
    if (target.kind === 'word') return showsFeature(word, target) ? [wholeWord(word, mark)] : []
    const found =
      target.kind === 'pattern'
        ? findingsOf(word, target).map(rangesOfFinding)
        : rangesOfLetters(word.text, target.letters)
    return found
      .filter(ranges => standsAt(ranges, word.text.length, target.place))
      .flatMap(ranges => spansOf(word, mark, ranges))
  })
}

function wholeWord({ text }: Word, mark: StyledMark): MarkSpan {
  return { mark, ranges: [{ start: 0, end: text.length }] }
}

/** A line through letters crosses those alone that say nothing: without an outline, the mark stands on these. */
function spansOf(word: Word, mark: StyledMark, ranges: Ranges): readonly MarkSpan[] {
  if (mark.line === undefined || lineStyle(mark.line).stands === 'under') return [{ mark, ranges }]
  const struck = silentWithin(word, ranges)
  if (mark.outline !== undefined) return [{ mark, ranges, struck }]
  return struck.map(range => ({ mark, ranges: [range], struck: [range], team: ranges }))
}

type PatternTarget = Extract<MarkTarget, { readonly kind: 'pattern' }>

function findingsOf(word: Word, { pattern, insideBlends }: PatternTarget): readonly Finding[] {
  const own = word.patterns.filter(finding => finding.pattern === pattern)
  if (insideBlends !== true) return own
  return [...own, ...digraphsInBlends(word)].toSorted((a, b) => a.start - b.start)
}

type Ranges = MarkSpan['ranges']

/** A split pattern shows its gap: `a_e` is its first and its last letters, not those between. */
function rangesOfFinding({ letters, start, end }: Finding): Ranges {
  const gap = letters.indexOf('_')
  if (gap <= 0 || gap === letters.length - 1) return [{ start, end }]
  return [
    { start, end: start + gap },
    { start: end - (letters.length - gap - 1), end },
  ]
}

/**
 * Every occurrence of exact letters, capitals and small letters alike. An underscore stands for the consonant letters
 * between the two parts of a split pattern: `a_e` is found in *lake* and in *paste*, not in *idea*.
 */
function rangesOfLetters(text: string, letters: string): readonly Ranges[] {
  const [before = '', after] = letters.toLowerCase().split('_')
  const lower = text.toLowerCase()
  if (before === '' || after === '' || lower.length !== text.length) return []
  const found: Ranges[] = []
  for (let start = lower.indexOf(before); start >= 0; start = lower.indexOf(before, start + 1)) {
    const last = found.at(-1)?.at(-1)
    if (last !== undefined && start < last.end) continue
    const end = start + before.length
    if (after === undefined) {
      found.push([{ start, end }])
      continue
    }
    const between = gapBefore(lower.slice(end), after)
    if (between !== null)
      found.push([
        { start, end },
        { start: end + between, end: end + between + after.length },
      ])
  }
  return found
}

/** How many consonant letters stand before `after`; null where others do, or none. */
function gapBefore(rest: string, after: string): number | null {
  for (let length = 1; length <= rest.length - after.length; length++) {
    if (!/^[^aeiou'’-]+$/.test(rest.slice(0, length))) return null
    if (rest.startsWith(after, length)) return length
  }
  return null
}

/** A target that is the whole word stands at its beginning and at its end. */
function standsAt(ranges: readonly LetterRange[], wordLength: number, place: MarkPlace | undefined): boolean {
  const atBeginning = ranges[0]!.start === 0
  const atEnd = ranges.at(-1)!.end === wordLength
  switch (place) {
    case undefined:
      return true
    case 'beginning':
      return atBeginning
    case 'end':
      return atEnd
    case 'middle':
      return !atBeginning && !atEnd
  }
}
