import type { Contrast } from '../../plan/plan.js'
import { type Place, type Problem, warningAt } from '../../problems.js'
import { colourDifference, leastColourDifference, type Viewing } from './colour-vision.js'
import { contrastRatio, leastMarkContrast, leastTypeContrast, shownRatio } from './contrast.js'
import type { StyledMark } from './styled-mark.js'
import { featureName } from './word-features.js'

const black = '#000000'
const white = '#ffffff'

/** Warnings: marks too pale to see, and marks that some child or some copy cannot tell apart. */
export function markProblems(marks: readonly StyledMark[], paper: string): readonly Problem[] {
  const pale = marks.flatMap(mark => tooPale(mark, paper))
  const alike = marks.flatMap((mark, index) => marks.slice(0, index).flatMap(other => tooAlike(mark, other)))
  return [...pale, ...alike]
}

/** Warnings where type, or a mark in the type's colour or its own, is too faint on the ground that is printed. */
export function contrastProblems(
  { ink, ground }: Contrast,
  marks: readonly StyledMark[],
  place: Place,
): readonly Problem[] {
  const ratio = contrastRatio(ink, ground)
  const type =
    ratio >= leastTypeContrast
      ? []
      : [
          warningAt(
            place,
            `type in ${ink} on ${ground} has a contrast of ${shownRatio(ratio)} to 1`,
            `Take a darker colour on a paler one: type needs ${leastTypeContrast} to 1 or more (WCAG 2.2).`,
          ),
        ]
  return [...type, ...marks.flatMap(mark => tooPale(mark, ground))]
}

function tooPale(styled: StyledMark, paper: string): readonly Problem[] {
  if (styled.color === undefined) return []
  const ratio = contrastRatio(styled.color, paper)
  if (ratio >= leastMarkContrast) return []
  return [
    warningAt(
      styled.mark.place,
      `the colour ${styled.color} of ${markName(styled)} has a contrast of ${shownRatio(ratio)} to 1 with ${paper === white ? 'the paper' : paper}`,
      `Take a colour further from the paper's: marks need ${leastMarkContrast} to 1 or more (WCAG 2.2).`,
    ),
  ]
}

function tooAlike(styled: StyledMark, other: StyledMark): readonly Problem[] {
  const names = `${markName(other)} and ${markName(styled)}`
  const sameStyle =
    styled.line === other.line && styled.outline === other.outline && cornerTag(styled) === cornerTag(other)
  const sameColor = (styled.color ?? black) === (other.color ?? black)
  const { place } = styled.mark
  if (sameStyle && sameColor)
    return [warningAt(place, `${names} look the same`, 'Give one of them another line, outline or tag.')]
  if (sameStyle)
    return [
      warningAt(
        place,
        `${names} differ by colour alone`,
        `Give one of them another line or outline: ${lossOf(styled, other) ?? 'a copier or a child who sees colours otherwise may not tell them apart'}.`,
      ),
    ]
  if (sameColor || styled.color === undefined || other.color === undefined) return []
  const loss = lossOf(styled, other)
  if (loss === undefined) return []
  return [
    warningAt(
      place,
      `the colours of ${names} fall together: ${loss}`,
      'Their styles still keep them apart; if the colours are to tell, take one much darker than the other.',
    ),
  ]
}

const losses: readonly { readonly viewing: Viewing; readonly means: string }[] = [
  { viewing: 'full colour', means: 'the two colours are hard to tell apart for anybody' },
  { viewing: 'protan', means: 'a child who lacks red vision (protan) sees them as one' },
  { viewing: 'deutan', means: 'a child who lacks green vision (deutan) sees them as one' },
  { viewing: 'grey copy', means: 'a grey copy shows them as one' },
]

/** Who cannot tell the two colours apart, in words; undefined where everybody can. */
function lossOf(styled: StyledMark, other: StyledMark): string | undefined {
  const lost = losses.filter(
    ({ viewing }) =>
      colourDifference(styled.color ?? black, other.color ?? black, viewing) < leastColourDifference,
  )
  return lost.length === 0 ? undefined : lost.map(({ means }) => means).join('; ')
}

/** A tag beside a line goes with it; one in the corner may be all that tells two marks apart. */
function cornerTag({ mark, line, outline, tag }: StyledMark): string | undefined {
  return mark.target.kind === 'word' && line === undefined && outline === undefined ? tag : undefined
}

/** What the teacher calls it: her label, else its pattern or letters. */
export function markName({ mark: { label, target } }: StyledMark): string {
  if (label !== undefined) return `"${label}"`
  switch (target.kind) {
    case 'pattern':
      return target.pattern
    case 'letters':
      return `"${target.letters}"`
    case 'word':
      return featureName(target)
  }
}
