/** Where a printable has its place in a week, and into whose hands it goes: each layout says it of itself. */

/** In the order of the week: a lesson, then practice, centres, the check; what goes home, what holds the sets together. */
export const weekDays = ['lesson', 'practice', 'centres', 'check', 'home', 'storing'] as const
export type WeekDay = (typeof weekDays)[number]

/** `screen`: nothing is printed. `once`: a set serves all, as it is printed. */
export type GivenTo = 'screen' | 'you' | 'each child' | 'each pair' | 'once'

export interface WeekPlace {
  readonly day: WeekDay
  readonly given: GivenTo
  /** What its page of a list is called, where children get the set and the list is yours. */
  readonly yourList?: string
}
