import type { LayoutRequest } from '../../../layouts/layout.js'
import type { StyledMark } from '../../pieces/marks/styled-mark.js'
import type { Place } from '../../problems.js'
import { byIdentity } from '../kept-store.js'
import type { PreparedItem } from './prepare-item.js'

/** All that the cards of an item, their faces and their sizes depend on: what `LayoutRequest` holds, and its paper. */
export function piecesMadeFrom({ request, grid, layout }: PreparedItem): readonly unknown[] {
  return [
    layout.name,
    { ...withoutColours(request), words: null, sides: null, typeface: null },
    grid,
    byIdentity(request.typeface),
    ...request.words.map(byIdentity),
    ...request.sides.flatMap(({ name, words }) => [name, ...words.map(byIdentity)]),
    ...request.words.map(word => request.pictureOf(word)).map(picture => picture && byIdentity(picture)),
  ]
}

/** Where the item's problems may be told. */
export function placesOf({ job }: PreparedItem): readonly (Place | undefined)[] {
  return [
    job.item.place,
    job.group?.place,
    ...[job, ...(job.sides ?? [])].flatMap(({ words }) => words.map(word => word.place)),
  ]
}

/** What is laid out, dealt and fitted does not depend on the colours of marks; they come in when pieces are drawn. */
export function withoutColours(request: LayoutRequest): LayoutRequest {
  return { ...request, marks: request.marks.map(colourless) }
}

function colourless({ color: _, mark, ...styled }: StyledMark): StyledMark {
  const { color: _own, ...plain } = mark
  return { ...styled, mark: plain }
}
