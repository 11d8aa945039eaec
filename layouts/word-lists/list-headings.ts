/** What stands above the words of the marked list and the blank one: of one height, so that the two stand line for line. */
import { type Heading, headingHeight } from '../../src/pieces/faces/flow-page.js'
import type { LayoutRequest } from '../layout.js'
import { factHeadsHeight, topRowHeight } from './childs-task.js'

/** More white above the teacher's words than this would be wasted: our own judgement, no source. */
const MOST_WHITE_MM = 30

interface AboveWords {
  readonly heading: Heading
  /** Of the heads over what is told of the words. */
  readonly topRowMm: number
}

/**
 * The teacher's: what it is, for whom, of which plan. In very large print what stands above the children's words takes
 * half a page, and then the two do not stand line for line.
 */
export function aboveMarkedWords(request: LayoutRequest, widthMm: number): AboveWords {
  const [own, childs] = [marked(request), blank(request)]
  const [ownRowMm, childsRowMm] = [factHeadsHeight(request), topRowHeight(request, widthMm)]
  const whiteMm = headingHeight(childs, widthMm) + childsRowMm - headingHeight(own, widthMm) - ownRowMm
  return whiteMm > MOST_WHITE_MM
    ? { heading: own, topRowMm: ownRowMm }
    : { heading: asHighAs(own, childs, widthMm), topRowMm: childsRowMm }
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
