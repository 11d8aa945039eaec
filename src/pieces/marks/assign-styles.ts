import type { PlanMark } from '../../plan/plan.js'
import type { Problem } from '../../problems.js'
import { markProblems } from './mark-problems.js'
import type { StyledMark } from './styled-mark.js'
import { lineNames, outlineNames } from './styles.js'

export type { StyledMark } from './styled-mark.js'

/** The looks of a mark, its colour apart. */
interface Looks {
  readonly line?: string
  readonly outline?: string
}

/**
 * Black styles in the order in which marks without one take them: under and around in turn, each as unlike the ones
 * before as may be. The first six hold for most weeks; pairs of a line and an outline come when all else is taken.
 */
const order: readonly Looks[] = [
  { line: 'single' },
  { outline: 'rounded' },
  { line: 'wavy' },
  { line: 'thick' },
  { line: 'dotted' },
  { outline: 'hexagon' },
  { line: 'double' },
  { outline: 'box' },
  { line: 'dashed' },
  { outline: 'oval' },
  { line: 'bracket' },
  { line: 'arc' },
  ...outlineNames.flatMap(outline => lineNames.map(line => ({ line, outline }))),
]

/** Every mark with its looks: the teacher's own, else the next black style that no mark of the plan has. */
export function assignStyles(
  marks: readonly PlanMark[],
  paper = '#ffffff',
): { readonly marks: readonly StyledMark[]; readonly problems: readonly Problem[] } {
  const taken = new Set(marks.map(nameOf))
  const styled = marks.map((mark, index): StyledMark => {
    const given = mark.line !== undefined || mark.outline !== undefined
    const looks: Looks = given ? mark : nextUnused(taken)
    taken.add(nameOf(looks))
    return {
      mark,
      index,
      ...(looks.line === undefined ? {} : { line: looks.line }),
      ...(looks.outline === undefined ? {} : { outline: looks.outline }),
      ...(mark.color === undefined ? {} : { color: mark.color }),
      ...(mark.tag === undefined ? {} : { tag: mark.tag }),
      descenders: mark.descenders ?? 'clear',
      assigned: !given,
    }
  })
  return { marks: styled, problems: markProblems(styled, paper) }
}

function nextUnused(taken: ReadonlySet<string>): Looks {
  // Past the last of them two marks look the same, which `markProblems` reports.
  return order.find(looks => !taken.has(nameOf(looks))) ?? order[0]!
}

function nameOf({ line, outline }: Looks): string {
  return `${line ?? ''}+${outline ?? ''}`
}
