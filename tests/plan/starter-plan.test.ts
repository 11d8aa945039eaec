import { describe, expect, it } from 'vitest'
import { starterPlan } from '../../src/plan/starter-plan.js'
import { planOf, problemsOf } from './reading.js'

describe('the starter plan', () => {
  it('is accepted as it stands', () => {
    expect(problemsOf(starterPlan)).toEqual([])
    expect(planOf(starterPlan).print.map(item => item.name)).toEqual(['word-cards', 'bingo', 'key'])
  })

  it('is accepted with everything switched on that needs no other file', () => {
    const switchedOn = starterPlan.replaceAll(
      /^( *)# (?=sounds:|color:|groups:| +(?:- name|words|size):)/gm,
      '$1',
    )
    expect(problemsOf(switchedOn)).toEqual([])
    const plan = planOf(switchedOn)
    expect(plan.words[1]?.overrides.sounds).toEqual(['m', 'ar', 'sh'])
    expect(plan.marks.at(-1)?.color).toBe('#00618a')
    expect(plan.groups.map(group => group.words.length)).toEqual([3])
  })
})
