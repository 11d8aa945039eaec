import { droppedInTypefaces } from '../../fonts/dropped-in.js'
import { loadTypeface } from '../../fonts/load-typeface.js'
import { letterShapesOf } from '../pieces/typeface/letter-shapes.js'
import { type NamedThing, namesWith, type PlanNames, xHeightNote } from './names-with-fonts.js'

/** Everything that may be named in a plan, fonts of the teacher's own among it. */
export function planNames(): PlanNames {
  return namesWith(droppedInTypefaces().map(describeDropped))
}

function describeDropped(name: string): NamedThing {
  const typeface = loadTypeface({ name, place: { file: name } })
  if (!typeface.ok) return { name, summary: 'a font of your own in fonts/, which cannot be read' }
  const { a, g } = letterShapesOf(typeface.value)
  const height = xHeightNote(typeface.value.metrics.xHeight)
  return { name, summary: `a font of your own in fonts/ (${height}a ${a}, g ${g}, told from its outlines)` }
}
