import type { FindWishes } from '../door/find.js'

/** As they are typed. */
export interface FindOptions extends Omit<FindWishes, 'patterns'> {
  readonly pattern?: readonly string[] | undefined
  /** How many lists, from short words to long ones. */
  readonly groups?: number | undefined
  readonly json: boolean
}
