import type { PlanMark } from '../../plan/plan.js'
import type { Problem } from '../../problems.js'
import { markProblems } from './mark-problems.js'
import type { StyledMark } from './styled-mark.js'
import { featureTag } from './word-features.js'

export type { StyledMark } from './styled-mark.js'

/** Any of these under any of those. */
const pairedOutlines = ['box', 'oval', 'hexagon', 'rounded', 'heavy', 'hollow']
const pairedLines = ['double', 'dotted', 'wavy', 'thick', 'dashed', 'single', 'bracket']

/** The looks of a mark, its colour apart. */
export interface Looks {
  readonly line?: string
  readonly outline?: string
}

/**
 * Black styles in the order in which marks without one take them: what a copier keeps apart best comes first. A line and
 * an outline in turn, beginning with the two that differ most as a copier leaves them at the smallest size; then always
 * the line, or the outline, that differs most from all of its kind before it (measured in
 * `styles-on-a-copier.test.ts`). Two lines wait until the end: the bracket, because it joins the ends of split patterns,
 * and the single line, which hand copying and wear make out of every other. Letters painted otherwise, the arc and the
 * slash are hers to choose. Pairs of a line and an outline come when all else is taken.
 */
export const styleOrder: readonly Looks[] = [
  { line: 'double' },
  { outline: 'box' },
  { line: 'dotted' },
  { outline: 'oval' },
  { line: 'wavy' },
  { outline: 'hexagon' },
  { line: 'thick' },
  { outline: 'rounded' },
  { line: 'dashed' },
  { line: 'bracket' },
  { line: 'single' },
  ...pairedOutlines.flatMap(outline => pairedLines.map(line => ({ line, outline }))),
]

/** Every mark with its looks: the teacher's own, else the next black style that no mark of the plan has. */
export function assignStyles(
  marks: readonly PlanMark[],
  paper = '#ffffff',
): { readonly marks: readonly StyledMark[]; readonly problems: readonly Problem[] } {
  const taken = new Set(marks.map(nameOf))
  const styled = marks.map((mark, index): StyledMark => {
    const { target } = mark
    const given = mark.line !== undefined || mark.outline !== undefined
    // A whole word's mark stands in the corner where she gives it no line or outline.
    const looks: Looks = given ? mark : target.kind === 'word' ? {} : nextUnused(taken)
    taken.add(nameOf(looks))
    const tag = mark.tag ?? (given || target.kind !== 'word' ? undefined : featureTag(target))
    return {
      mark,
      index,
      ...(looks.line === undefined ? {} : { line: looks.line }),
      ...(looks.outline === undefined ? {} : { outline: looks.outline }),
      ...(mark.color === undefined ? {} : { color: mark.color }),
      ...(tag === undefined ? {} : { tag }),
      ...(mark.link === undefined ? {} : { link: mark.link }),
      descenders: mark.descenders ?? 'clear',
      assigned: !given,
    }
  })
  return { marks: styled, problems: markProblems(styled, paper) }
}

function nextUnused(taken: ReadonlySet<string>): Looks {
  // Past the last of them two marks look the same, which `markProblems` reports.
  return styleOrder.find(looks => !taken.has(nameOf(looks))) ?? styleOrder[0]!
}

function nameOf({ line, outline }: Looks): string {
  return `${line ?? ''}+${outline ?? ''}`
}
