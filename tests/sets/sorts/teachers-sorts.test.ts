import { describe, expect, it } from 'vitest'
import { rankSorts } from '../../../src/sets/sorts/rank-sorts.js'
import { listOf, pilesOf, type TeachersSort, teachersSorts } from './teachers-sorts.js'
import { wordsOfAWeek } from './words-of-a-week.js'

/** Where the teacher's sort stands, from 1; undefined where it is not offered. */
function standingOf(week: TeachersSort): number | undefined {
  const wanted = pilesOf(Object.values(week.sort).map(words => words.split(', ')))
  const offered = rankSorts(wordsOfAWeek(listOf(week))).map(({ columns }) =>
    pilesOf(columns.map(({ words }) => words)),
  )
  const at = offered.findIndex(piles => piles.join(' / ') === wanted.join(' / '))
  return at < 0 ? undefined : at + 1
}

describe.each(['teachers-sorts.yaml', 'more-teachers-sorts.yaml'])('of the weeks in %s', file => {
  const standings = teachersSorts(file).map(week => ({ week: week.week, at: standingOf(week) }))

  it('all but two at most have the teacher’s sort first', () => {
    const others = standings.filter(({ at }) => at !== 1)
    expect(standings.length).toBeGreaterThanOrEqual(20)
    expect(others.slice(2)).toEqual([])
  })

  it('all have it among the first three', () => {
    expect(standings.filter(({ at }) => at === undefined || at > 3)).toEqual([])
  })
})
