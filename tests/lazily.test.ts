import { expect, test } from 'vitest'
import { lazily } from '../src/lazily.js'

test('what is made lazily is made once, when asked for', () => {
  let times = 0
  const made = lazily(() => {
    times += 1
    return undefined
  })
  expect(times).toBe(0)
  made()
  made()
  expect(times).toBe(1)
})
