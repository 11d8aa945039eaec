import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type PathCommand, pathBox, readPath } from '../../../src/files/page/path-data.js'

const counts = { M: 2, L: 2, Q: 4, C: 6, Z: 0 } as const
const number = fc.integer({ min: -500_000, max: 500_000 }).map(thousandths => thousandths / 1000)
const step = fc
  .constantFrom<PathCommand>('L', 'Q', 'C', 'Z', 'M')
  .chain(command =>
    fc
      .array(number, { minLength: counts[command], maxLength: counts[command] })
      .map(numbers => ({ command, numbers })),
  )

describe('path data', () => {
  it('is read as it was written, with spaces or commas between', () => {
    fc.assert(
      fc.property(fc.array(step), fc.constantFrom(' ', ',', ', '), (steps, gap) => {
        const d = steps.map(({ command, numbers }) => command + numbers.join(gap)).join('')
        expect(readPath(d)).toEqual({
          commands: steps.map(({ command }) => command).join(''),
          numbers: steps.flatMap(({ numbers }) => numbers),
        })
      }),
    )
  })

  it('may leave out commands, gaps before a minus, and noughts before a point', () => {
    expect(readPath('M1-2 3 4L.5.25-1-2Z')).toEqual({
      commands: 'MLLLZ',
      numbers: [1, -2, 3, 4, 0.5, 0.25, -1, -2],
    })
  })

  it.each(['m1 2', 'M1 2H3', 'M1', 'M1 2L3', '1 2', 'M1 2Z3 4', 'M1 x'])('%s is refused', d => {
    expect(() => readPath(d)).toThrow()
  })

  it('lies in a box with its control points', () => {
    expect(pathBox('M1 2Q5 -3 4 4L2 6Z')).toEqual({ xMm: 1, yMm: -3, widthMm: 4, heightMm: 9 })
    expect(pathBox('')).toBeUndefined()
  })
})
