import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { soundChange } from '../../../src/words/alignment/sound-change.js'

const heard = (sounds: string) => (sounds === '' ? [] : sounds.split(' '))

describe('a change of one sound', () => {
  it.each([
    ['M AA R SH', 'HH AA R SH', { kind: 'changed', at: 0 }],
    ['K AE T', 'K IH T', { kind: 'changed', at: 1 }],
    ['K AE T', 'K AE P', { kind: 'changed', at: 2 }],
    ['K IH P', 'S K IH P', { kind: 'added', at: 0 }],
    ['B EH D', 'B EH N D', { kind: 'added', at: 2 }],
    ['P L EY T', 'P L EY', { kind: 'taken away', at: 3 }],
    ['AY', 'P AY', { kind: 'added', at: 0 }],
  ])('%s → %s', (from, to, change) => {
    expect(soundChange(heard(from), heard(to))).toEqual(change)
  })

  it.each([
    ['K AE T', 'K AE T'],
    ['K AE T', 'T AE K'],
    ['K AE T', 'D AA G'],
    ['K AE T', 'S K AE T S'],
  ])('is none between %s and %s', (from, to) => {
    expect(soundChange(heard(from), heard(to))).toBeUndefined()
  })

  it('is there just where the edit distance (Levenshtein 1966) is one', () => {
    const sounds = fc.array(fc.constantFrom('K', 'AE', 'T'), { maxLength: 5 })
    const distance = (a: readonly string[], b: readonly string[]): number => {
      if (a.length === 0 || b.length === 0) return a.length + b.length
      const [restA, restB] = [a.slice(1), b.slice(1)]
      if (a[0] === b[0]) return distance(restA, restB)
      return 1 + Math.min(distance(restA, restB), distance(restA, b), distance(a, restB))
    }
    fc.assert(
      fc.property(sounds, sounds, (a, b) => {
        expect(soundChange(a, b) !== undefined).toBe(distance(a, b) === 1)
      }),
    )
  })
})
