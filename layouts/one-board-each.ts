import { option, wholeNumber } from '../src/plan/values/options.js'
import type { LayoutRequest } from './layout.js'

/** A class of children, where the plan does not say how many: common practice, no source. */
const USUAL_BOARDS = 24

/** How many boards a game has. */
export function boardsOption(does: string, most: number) {
  return {
    boards: option(does, wholeNumber(1, most, undefined), {
      example: '30',
      usual: `one for each child, where the plan says how many there are, and else ${USUAL_BOARDS}`,
    }),
  }
}

export function boardsOf({
  options,
  children = USUAL_BOARDS,
}: Pick<LayoutRequest, 'children'> & {
  readonly options: { readonly boards: number | undefined }
}): number {
  return options.boards ?? children
}
