import type { WordSlot } from '../src/pieces/faces/face.js'
import type { PrintItem } from '../src/plan/plan.js'
import { choice } from '../src/plan/values/options.js'

/** What a layout may show with its words beside the marks of the plan. */
export const wordOptions = {
  sounds: choice(['none', 'dots'], 'none'),
  syllables: choice(['none', 'breaks'], 'none'),
}

/** The same for a word's slot; layouts that do not offer it show neither. */
export function shownWithWords({ options }: PrintItem): Pick<WordSlot, 'soundMarks' | 'syllableBreaks'> {
  return { soundMarks: options.sounds === 'dots', syllableBreaks: options.syllables === 'breaks' }
}
