import { choice, option } from '../../src/plan/values/options.js'
import type { RequestWith } from '../layout.js'

export const crosswordOptions = {
  help: option('what stands in the grid beforehand', choice(['nothing', 'first letters'], 'nothing'), {
    example: 'first letters',
  }),
}

export type CrosswordRequest = RequestWith<typeof crosswordOptions>

export function givenLetters({ options }: CrosswordRequest): 'none' | 'first' {
  return options.help === 'first letters' ? 'first' : 'none'
}
