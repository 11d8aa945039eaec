/** Nothing may stand in a plan that the page cannot show and change. */
import { expect, it } from 'vitest'
import { shownOfGroup, shownOfMark, shownOfPlan, shownOfWord } from '../../src/desk/shown-keys.js'
import { planVocabulary } from '../../src/pipeline/vocabulary.js'
import { keysOfPlan } from '../../src/plan/plan-keys.js'

const keys = keysOfPlan(planVocabulary())

it.each([
  ['the plan itself', shownOfPlan],
  ['a word', shownOfWord],
  ['a mark', shownOfMark],
  ['a group', shownOfGroup],
])('has a control for each key of %s', (what, shown) => {
  const own = keys.filter(
    ({ place }) => place.what === what || place.what === what.replace('the plan itself', 'a plan'),
  )
  expect(own.length).toBeGreaterThan(5)
  expect(own.filter(({ name }) => !shown.includes(name)).map(({ name }) => name)).toEqual([])
})
