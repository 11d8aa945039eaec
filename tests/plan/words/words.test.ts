import { describe, expect, it } from 'vitest'
import { adviceFor, planOf, problemsOf, weekOf } from '../reading.js'

const wordsOf = (words: readonly string[]) => planOf(weekOf(words)).words.map(word => word.text)

describe('a word', () => {
  it.each([
    ['a', 'a'],
    ['Marsh', 'Marsh'],
    ['HERON', 'HERON'],
    ["don't", "don't"],
    ['don’t', "don't"],
    ['don‘t', "don't"],
    ['well-known', 'well-known'],
    ['well‑known', 'well-known'],
    ['will-o’-the-wisp', null],
    ["ne'er-do-well", "ne'er-do-well"],
    ['café', 'café'],
    ['cafe\u0301', 'café'],
    ['ﬂag', 'flag'],
    ['sun\u00ADflower', 'sunflower'],
    ['zorple', 'zorple'],
    ['a'.repeat(30), 'a'.repeat(30)],
  ])('%j is read as %j', (typed, text) => {
    if (text === null) expect(problemsOf(weekOf([typed]))).toHaveLength(1)
    else expect(wordsOf([typed])).toEqual([text])
  })

  it.each([
    ['salt marsh', '"salt marsh" has a space in it'],
    ['reed marsh pond', '"reed marsh pond" has a space in it'],
    ['"reed, marsh"', '"reed, marsh" is a list of words in one place'],
    ['reed/marsh', '"reed/marsh" is a list of words in one place'],
    ['2', '"2" has a digit in it'],
    ['r2d2', '"r2d2" has a digit in it'],
    ['reed²', '"reed²" has a digit in it'],
    ['reed!', '"reed!" has the sign "!" in it'],
    ['reed🐸', '"reed🐸" has the sign "🐸" in it'],
    ['"re\\u202Eed"', '"reU+202Eed" has U+202E, which cannot be seen, in it'],
    ['reеd', '"reеd" has the letter "е" in it'],
    ['a'.repeat(31), `"${'a'.repeat(31)}" has 31 characters`],
    ['a'.repeat(40), `"${'a'.repeat(40)}" has 40 characters`],
    ['a'.repeat(900), `"${'a'.repeat(30)}…" has 900 characters`],
    ["herons'", '"herons\'" ends in an apostrophe'],
    ['herons’', '"herons\'" ends in an apostrophe'],
    ['"-ing"', '"-ing" has an apostrophe or a hyphen that is not between letters'],
    ['sh-', '"sh-" has an apostrophe or a hyphen that is not between letters'],
    ['well--known', '"well--known" has an apostrophe or a hyphen that is not between letters'],
    ['"\u200B"', 'a word is missing'],
    ['~', '"~" has the sign "~" in it'],
  ])('%j is refused', (typed, message) => {
    expect(problemsOf(weekOf([typed]))).toEqual([`week.yaml:2:5: error: ${message}`])
  })

  it('that is nothing at all is told at the last sign of its line', () => {
    expect(problemsOf(weekOf(['']))).toEqual(['week.yaml:2:4: error: a place in the list is empty'])
  })

  it('is advised kindly', () => {
    expect(adviceFor(weekOf(["herons'"]))).toEqual([
      'An apostrophe stands inside a word: write herons instead.',
    ])
    expect(adviceFor(weekOf(['marsh: wet']))[0]).toContain('write "- word: marsh"')
    expect(adviceFor(weekOf(['marsh - wet land']))[0]).toContain('"clue:" with what it means')
  })

  it('stands once, whatever its capitals and apostrophes', () => {
    expect(problemsOf(weekOf(['March', 'reed', 'march', "don't", 'don’t']))).toEqual([
      'week.yaml:4:5: error: "march" stands twice, on line 2 and on line 4, as "March" and "march"',
      'week.yaml:6:5: error: "don\'t" stands twice, on line 5 and on line 6',
    ])
  })
})
