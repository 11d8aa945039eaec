import { describe, expect, it } from 'vitest'
import { withoutSteering } from '../../src/commands/plain-text.js'

describe('what is printed', () => {
  it('steers no terminal and turns no writing round', () => {
    expect(withoutSteering('a\u001b[31mb\u202ec\u2066d\u0007')).toBe(
      String.raw`a\u001b[31mb\u202ec\u2066d\u0007`,
    )
  })

  it('keeps its lines, its tabs and every letter', () => {
    const text = 'reed\tmarsh\n  “Åse” · ə 🐸\n'
    expect(withoutSteering(text)).toBe(text)
  })

  it('means the same as JSON', () => {
    const value = { title: 'a\u202eb', line: 'c\u0085d' }
    expect(JSON.parse(withoutSteering(JSON.stringify(value)))).toEqual(value)
  })
})
