/** What a teacher may choose of a path board, and what holds where she does not. */
import { choice, option, wholeNumber } from '../../src/plan/values/options.js'
import { sheetsOf, sheetsOption } from '../joined-sheets/joined-sheets.js'
import type { RequestWith } from '../layout.js'

/** How many words stand on a track where the teacher does not say. */
const SPACES = { normal: 26, large: 13 } as const

export const LEAST_SPACES = 4
export const MOST_SPACES = 160
/** More are too small to read. */
export const MOST_ON_A_SHEET = 80
/** Of several sheets; a longer game tires children. */
const MOST_USUAL_SPACES = 80

export const pathOptions = {
  spaces: option('how many words stand on a track', wholeNumber(LEAST_SPACES, MOST_SPACES, undefined), {
    example: '20',
    usual: `${SPACES.normal} a sheet, and ${SPACES.large} in large print; ${MOST_USUAL_SPACES} at most`,
  }),
  boards: option('how many boards, their words in other orders', wholeNumber(1, 40, 1)),
  ...sheetsOption,
  minutes: option(
    'how long a game should last; spaces that send on or back are chosen for it',
    wholeNumber(2, 90, undefined),
    { example: '15', usual: 'as long as the track takes' },
  ),
  jumps: option('how many spaces send a counter on or back', wholeNumber(0, 20, undefined), {
    example: '4',
    usual: 'none, or as many as "minutes" needs',
  }),
  players: option('for how many children "minutes" is reckoned', wholeNumber(1, 6, 3)),
  finish: option(
    'whether a throw past the finish ends there, or the counter waits for the exact throw',
    choice(['over', 'exact'], undefined),
    { example: 'exact', usual: 'over, and exact where "minutes" needs it' },
  ),
  faces: option('how many numbers the die or the disc has', wholeNumber(3, 10, 6)),
}

export type PathRequest = RequestWith<typeof pathOptions>

export function spacesOf({ options, type }: PathRequest): number {
  const usual = SPACES[type.large ? 'large' : 'normal'] * sheetsOf(options)
  return options.spaces ?? Math.min(usual, MOST_USUAL_SPACES)
}
