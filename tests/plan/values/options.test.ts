import { describe, expect, it } from 'vitest'
import { takenInWords } from '../../../src/plan/keys/taken-in-words.js'
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
  })

  it('refuse what they do not', () => {
    expect(read(options.wholeNumber(1, 30, 6), '31')).toBe('31 is too large')
    expect(read(options.choice(['wall', 'desk'], 'desk'), 'floor')).toBe('unknown choice "floor"')
    expect(read(options.text('x', 3), 'abcd')).toBe('the text is 4 characters long')
  })

  it('say what they expect', () => {
    expect(takenInWords(options.wholeNumber(1, 30, 6).takes)).toBe('a whole number from 1 to 30')
    expect(takenInWords(options.choice(['wall', 'desk', 'door'], 'desk').takes)).toBe('wall, desk or door')
  })

  it('take one of a few numbers alone', () => {
    const sheets = options.oneOfNumbers([1, 2, 4], 1)
    expect(read(sheets, '4')).toBe(4)
    expect(read(sheets, '3')).toBe('"3" is not 1, 2 or 4')
    expect(read(sheets, 'two')).toBe('"two" is not 1, 2 or 4')
    expect([1, 4, 3, '4'].map(value => sheets.gives(value))).toEqual([true, true, false, false])
  })

  describe('that are two of some names', () => {
    const sides = options.twoOf(['word', 'clue', 'plural'], 'word', { 'same word': ['word', 'word'] }, [
      'word',
      'word',
    ])

    it('take two with “and” between, one alone, and a name for both', () => {
      expect(read(sides, 'Clue and plural')).toEqual(['clue', 'plural'])
      expect(read(sides, 'clue')).toEqual(['word', 'clue'])
      expect(read(sides, 'same-word')).toEqual(['word', 'word'])
    })

    it('refuse a name that is none, and more than two', () => {
      expect(read(sides, 'clue and tune')).toBe('unknown choice "tune"')
      expect(read(sides, 'tune and clue')).toBe('unknown choice "tune"')
      expect(read(sides, 'word and clue and plural')).toBe('"word and clue and plural" names more than two')
    })

    it('know their values from others', () => {
      expect([['word', 'clue'], ['word'], ['word', 'tune'], 'word'].map(value => sides.gives(value))).toEqual(
        [true, false, false, false],
      )
    })
  })

  it('know the values that they give from others, and their fallback', () => {
    const readers = {
      boards: options.option('x', options.wholeNumber(1, 30, 6)),
      grid: options.option('x', options.gridSize(2, 10, undefined)),
      for: options.option('x', options.choice(['wall', 'desk'], 'desk')),
      free: options.option('x', options.yesNo(true)),
      sort: options.option('x', options.text(undefined)),
    }
    const given = { boards: 6, grid: { columns: 3, rows: 4 }, for: 'wall', free: false, sort: 'by sounds' }
    expect(options.areOptions(readers, given)).toBe(true)
    expect(options.areOptions(readers, { ...given, grid: undefined, sort: undefined })).toBe(true)
    for (const wrong of [
      { boards: '6' },
      { grid: '3x4' },
      { for: 'floor' },
      { free: undefined },
      { sort: 6 },
    ])
      expect(options.areOptions(readers, { ...given, ...wrong }), JSON.stringify(wrong)).toBe(false)
    expect(options.areOptions(readers, undefined)).toBe(false)
  })
})
