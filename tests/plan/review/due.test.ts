import { expect, it } from 'vitest'
import { isDue } from '../../../src/plan/review/due.js'

it('a list comes back after gaps of 1, 2 and 4 weeks, and then every 4 weeks', () => {
  const weeks = Array.from({ length: 20 }, (_, week) => week).filter(isDue)
  expect(weeks).toEqual([1, 3, 7, 11, 15, 19])
})
