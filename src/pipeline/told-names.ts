import { droppedInTypefaces } from '../../fonts/dropped-in.js'
import { namesWith, type PlanNames } from './names-with-fonts.js'

/** What `planNames` gives; no typeface is opened, nor what opens them loaded, where the teacher has none of her own. */
export async function toldNames(): Promise<PlanNames> {
  if (droppedInTypefaces().length === 0) return namesWith([])
  return (await import('./names.js')).planNames()
}
