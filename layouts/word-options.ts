import { choice, type OptionsOf } from '../src/plan/values/options.js'
import type { ShownWithWords } from './layout.js'

/** What a layout may show with its words beside the marks of the plan. */
export const wordOptions = {
  sounds: choice(['none', 'dots'], 'none'),
  syllables: choice(['none', 'breaks'], 'none'),
}

/** The same for the slots of its words. */
export function shownWithWords({ sounds, syllables }: OptionsOf<typeof wordOptions>): ShownWithWords {
  return { soundMarks: sounds === 'dots', syllableBreaks: syllables === 'breaks' }
}
