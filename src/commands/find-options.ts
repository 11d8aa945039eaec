import type { FindWishes } from '../door/find.js'

/** As they are typed. */
export interface FindOptions extends Omit<FindWishes, 'patterns'> {
  readonly pattern?: readonly string[] | undefined
  readonly json: boolean
}
