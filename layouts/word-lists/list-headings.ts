/** The headings of the marked list and the blank one: of one height, so that the two stand line for line. */
import { type Heading, headingHeight } from '../../src/pieces/faces/flow-page.js'
import type { LayoutRequest } from '../layout.js'

/** The teacher's: what it is, for whom, of which plan. */
export function markedListHeading(request: LayoutRequest, widthMm: number): Heading {
  return asHighAs(marked(request), blank(request), widthMm)
}

/** The children's: the plan's title, and a line for a name. */
export function blankListHeading(request: LayoutRequest, widthMm: number): Heading {
  return asHighAs(blank(request), marked(request), widthMm)
}

function marked({ itemTitle, subtitle, type, measure }: LayoutRequest): Heading {
  return { title: itemTitle, subtitle, textMm: type.adultTextMm, measure }
}

function blank({ plan, type, measure }: LayoutRequest): Heading {
  // In large print a row for the name alone would take the room of a word.
  const lineAfterSubtitle = type.large ? 'beside the title' : 'below the title'
  return { title: plan.title, subtitle: 'Name', textMm: type.listTextMm, measure, lineAfterSubtitle }
}

function asHighAs(heading: Heading, other: Heading, widthMm: number): Heading {
  return { ...heading, leastHeightMm: headingHeight(other, widthMm) }
}
