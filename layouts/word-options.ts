import type { SoundShape } from '../src/pieces/marks/sound-marks.js'
import { choice, type OptionsOf } from '../src/plan/values/options.js'
import type { ShownWithWords } from './layout.js'

/** What a layout may show with its words beside the marks of the plan. */
export const wordOptions = {
  sounds: choice(['none', 'bars', 'dots', 'boxes'], 'none', { yes: 'bars', no: 'none' }),
  syllables: choice(['none', 'breaks'], 'none'),
}

/** Where the teacher's picture of a word stands on its card. */
export const pictureOption = { picture: choice(['none', 'above', 'beside'], 'none') }

const shapes: Readonly<Record<Exclude<OptionsOf<typeof wordOptions>['sounds'], 'none'>, SoundShape>> = {
  bars: 'bar',
  dots: 'dot',
  boxes: 'box',
}

/** The same for the slots of its words. */
export function shownWithWords({ sounds, syllables }: OptionsOf<typeof wordOptions>): ShownWithWords {
  return {
    ...(sounds === 'none' ? {} : { soundMarks: shapes[sounds] }),
    syllableBreaks: syllables === 'breaks',
  }
}
