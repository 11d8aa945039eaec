import { describe, expect, it } from 'vitest'
import { aHundredOfAKind, errorAt, formatProblem, type Problem } from '../src/problems.js'

const place = { file: 'week.yaml', line: 3, column: 5 }

describe('a problem as it is shown', () => {
  it('is a line that says where and what, and an indented one that says what to do', () => {
    expect(formatProblem(errorAt(place, '"marhs" is unknown', 'Did you mean "marsh"?'))).toBe(
      'week.yaml:3:5: error: "marhs" is unknown\n  Did you mean "marsh"?',
    )
  })

  it('keeps to its two lines and leaves the terminal alone, whatever it quotes', () => {
    const shown = formatProblem(errorAt(place, '"one\ntwo\u001b[31m" is no name', 'Write one.'))
    expect(shown).toBe('week.yaml:3:5: error: "one two [31m" is no name\n  Write one.')
  })

  it('writes out the signs that turn the direction of writing', () => {
    const shown = formatProblem(errorAt(place, '"a\u202eb\u2066c" is no name', 'Write one.'))
    expect(shown).toContain('"aU+202EbU+2066c" is no name')
  })

  it('quotes the beginning of what is very long', () => {
    const shown = formatProblem(errorAt(place, `"${'marsh'.repeat(60)}" is no name`, 'Write one.'))
    expect(shown).toContain(`"${'marsh'.repeat(20)}…" is no name`)
  })
})

describe('many problems', () => {
  const wrong = (count: number, message: (line: number) => string): readonly Problem[] =>
    Array.from({ length: count }, (_, index) =>
      errorAt({ file: 'words.txt', line: index + 1 }, message(index + 1), 'Take it out.'),
    )
  const digits = wrong(60_000, line => `"w${line}" has a digit in it`)

  it('of one kind are told a hundred times, then by their count, in no time', () => {
    const told = aHundredOfAKind(digits)
    expect(told).toHaveLength(101)
    expect(told[99]).toBe(digits[99])
    expect(told[100]).toMatchObject({
      place: { line: 101 },
      message: 'and 59,900 more of this kind from here on',
    })
  })

  it('are told whole where there are no more than that', () => {
    expect(aHundredOfAKind(digits.slice(0, 100))).toEqual(digits.slice(0, 100))
    expect(aHundredOfAKind(digits.slice(0, 101))).toEqual(digits.slice(0, 101))
  })

  it('of several kinds are each told, in their order', () => {
    const spaces = wrong(3, () => '"a b" has a space in it')
    const told = aHundredOfAKind([...digits, ...spaces])
    expect(told.slice(101)).toEqual(spaces)
  })
})
