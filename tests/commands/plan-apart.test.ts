import { describe, expect, it } from 'vitest'
import { planApart } from '../../src/commands/plan-apart.js'
import { succeed } from '../../src/outcomes.js'

describe('one plan of several', () => {
  it('that meets a fault of the program’s own ends in a problem of that plan', async () => {
    const outcome = await planApart('week.yaml', () => Promise.reject(new TypeError('x is undefined')), false)
    expect(outcome.problems).toMatchObject([{ severity: 'error', place: { file: 'week.yaml' } }])
    expect(outcome.problems[0]!.message).toContain('x is undefined')
  })

  it('shows where it happened to those who ask', async () => {
    const run = planApart('week.yaml', () => Promise.reject(new TypeError('x is undefined')), true)
    await expect(run).rejects.toThrow(TypeError)
  })

  it('is left alone where all is well', async () => {
    expect(await planApart('week.yaml', async () => succeed(3))).toEqual(succeed(3))
  })
})
