import { describe, expect, it } from 'vitest'
import * as options from '../../../src/plan/values/options.js'

const place = { file: 'week.yaml', line: 1, column: 1 }
const entry = (text: string) => ({ kind: 'text', text, place }) as const
const read = (option: options.OptionReader<unknown>, text: string) => {
  const outcome = option.read(entry(text))
  return outcome.ok ? outcome.value : outcome.problems[0]?.message
}

describe('ready-made options', () => {
  it('read what they expect', () => {
    expect(read(options.wholeNumber(1, 30, 6), '12')).toBe(12)
    expect(read(options.gridSize(2, 10, undefined), '5×4')).toEqual({ columns: 5, rows: 4 })
    expect(read(options.choice(['wall', 'desk'], 'desk'), 'Wall')).toBe('wall')
    expect(read(options.yesNo(false), 'On')).toBe(true)
    expect(read(options.text('x'), 'a  b')).toBe('a b')
    expect(read(options.texts(['x']), 'sh')).toEqual(['sh'])
    expect(read(options.length({ minMm: 1, maxMm: 20 }, 5), '1 cm')).toBe(10)
  })

  it('read several texts from a list', () => {
    const list = { kind: 'list', place, items: [entry('sh'), entry('th')] } as const
    expect(options.texts(undefined).read(list)).toMatchObject({ ok: true, value: ['sh', 'th'] })
  })

  it('refuse what they do not', () => {
    expect(read(options.wholeNumber(1, 30, 6), '31')).toBe('31 is too large')
    expect(read(options.choice(['wall', 'desk'], 'desk'), 'floor')).toBe('unknown choice "floor"')
    expect(read(options.text('x', 3), 'abcd')).toBe('the text is 4 characters long')
    expect(read(options.length({ minMm: 1, maxMm: 20 }, 5), '3 in')).toBe('"3 in" is too large')
  })

  it('say what they expect', () => {
    expect(options.wholeNumber(1, 30, 6).expects).toBe('a whole number from 1 to 30')
    expect(options.choice(['wall', 'desk', 'door'], 'desk').expects).toBe('wall, desk or door')
  })

  it('can be refined by a layout', () => {
    const even = options.refined(options.wholeNumber(1, 30, 6), 6, (count, { place: at }) =>
      count % 2 === 0
        ? { ok: true, value: count, problems: [] }
        : {
            ok: false,
            problems: [{ severity: 'error', place: at, message: `${count} is odd`, advice: 'Add one.' }],
          },
    )
    expect([read(even, '8'), read(even, '7')]).toEqual([8, '7 is odd'])
  })
})
