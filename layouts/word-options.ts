import type { SoundShape } from '../src/pieces/marks/sound-marks.js'
import { choice, type OptionsOf, option } from '../src/plan/values/options.js'
import type { ShownWithWords } from './layout.js'

/** What a layout may show with its words beside the marks of the plan. */
export const wordOptions = {
  sounds: option(
    'signs under the word, one for each sound',
    choice(['none', 'bars', 'dots', 'boxes'], 'none', { yes: 'bars', no: 'none' }),
  ),
  syllables: option('whether the word is divided into its syllables', choice(['none', 'breaks'], 'none')),
}

/** Where the teacher's picture of a word stands on its card. */
export const pictureOption = {
  picture: option('where your picture of the word stands', choice(['none', 'above', 'beside'], 'none')),
}

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
