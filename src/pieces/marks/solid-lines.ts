import { polygon, rectangle } from '../art/path-text.js'
import type { LineStyle } from './line-style.js'

const thickness = 2.5

export const singleLine: LineStyle = {
  name: 'single',
  summary: 'one line',
  stands: 'under',
  heightMm: ink => ink.strokeMm,
  shortestMm: ink => ink.strokeMm,
  draw: ({ left, top, right, bottom }) => [{ commands: rectangle(left, top, right, bottom) }],
}

export const thickLine: LineStyle = {
  name: 'thick',
  summary: 'one heavy line',
  stands: 'under',
  heightMm: ink => thickness * ink.strokeMm,
  shortestMm: ink => ink.strokeMm,
  draw: ({ left, top, right, bottom }) => [{ commands: rectangle(left, top, right, bottom) }],
}

export const doubleLine: LineStyle = {
  name: 'double',
  summary: 'two lines, one under the other',
  stands: 'under',
  heightMm: ink => 2 * ink.strokeMm + ink.gapMm,
  shortestMm: ink => ink.strokeMm,
  draw: ({ left, top, right, bottom }, { strokeMm }) => [
    { commands: rectangle(left, top, right, top + strokeMm) },
    { commands: rectangle(left, bottom - strokeMm, right, bottom) },
  ],
}

/** How far a bracket's ends reach up, in strokes. */
const bracketReach = 3

export const bracketLine: LineStyle = {
  name: 'bracket',
  summary: 'a line whose ends turn up',
  stands: 'under',
  heightMm: ink => (1 + bracketReach) * ink.strokeMm,
  shortestMm: ink => 2 * ink.strokeMm + ink.gapMm,
  draw: ({ left, top, right, bottom }, { strokeMm }) => [
    {
      commands: polygon([
        [left, top],
        [left + strokeMm, top],
        [left + strokeMm, bottom - strokeMm],
        [right - strokeMm, bottom - strokeMm],
        [right - strokeMm, top],
        [right, top],
        [right, bottom],
        [left, bottom],
      ]),
    },
  ],
}
