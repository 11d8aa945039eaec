import { describe, expect, it } from 'vitest'
import { errorAt, formatProblem } from '../src/problems.js'

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

  it('quotes the beginning of what is very long', () => {
    const shown = formatProblem(errorAt(place, `"${'marsh'.repeat(60)}" is no name`, 'Write one.'))
    expect(shown).toContain(`"${'marsh'.repeat(20)}…" is no name`)
  })
})
