/** `not: digraph-blend`, `also: silent-letters st`: findings that the teacher takes away from a word, or adds. */

import { andThen, fail, record, succeed, together } from '../../outcomes.js'
import { errorAt, type Outcome } from '../../problems.js'
import { key, reading, type ValueReader } from '../keys/key.js'
import type { Takes } from '../keys/takes.js'
import type { PatternOverride } from '../plan.js'
import { nameReader } from '../values/names.js'
import { type Entry, misfit, oneOrMore } from '../yaml/entry.js'
import { readKeys, valueAt } from '../yaml/keys.js'
import { lettersOf, sameWord } from './word-text.js'

export const whereArePatterns = '`oaktag list patterns` shows all of them.'

export interface OverridePatterns {
  readonly patterns: readonly string[]
  readonly word: string
}

export function readNotPatterns(entry: Entry, about: OverridePatterns): Outcome<readonly PatternOverride[]> {
  return together(oneOrMore(entry).map(item => readOverride(item, about)))
}

export function readAlsoPatterns(
  entry: Entry,
  about: OverridePatterns,
): Outcome<readonly (PatternOverride & { readonly letters: string })[]> {
  const withLetters = (item: Entry) =>
    andThen(readOverride(item, about), ({ pattern, letters }) => {
      if (letters !== undefined) return succeed({ pattern, letters })
      const advice = `Write the letters behind the pattern: also: ${pattern} ${about.word.slice(0, 2)}.`
      return fail<PatternOverride & { letters: string }>(
        errorAt(item.place, `it is not said which letters of "${about.word}" show ${pattern}`, advice),
      )
    })
  return together(oneOrMore(entry).map(withLetters))
}

const lettersTaken: Takes = {
  kind: 'form',
  what: 'letters of the word',
  samples: ['sh', 'a_e'],
  pattern: String.raw`^\D+$`,
}

function patternReader(patterns: readonly string[]): ValueReader<string> {
  return nameReader({ what: 'a pattern', known: patterns, where: whereArePatterns, list: 'patterns' })
}

function findingKeys(pattern: ValueReader<string>, letters: ValueReader<string>) {
  return {
    pattern: key('the pattern that is found or is not', pattern, { example: 'consonant-digraph' }),
    letters: key('the letters that show it', letters, { usual: 'all that show the pattern' }),
  }
}

/** What `not:` and `also:` take. */
export function findingsTaken(patterns: readonly string[], lettersNeeded: boolean): Takes {
  const named: Takes = {
    kind: 'form',
    what: lettersNeeded
      ? 'a pattern and the letters that show it'
      : "a pattern's name, and letters behind it",
    samples: lettersNeeded ? ['silent-letters kn'] : ['digraph-blend', 'silent-letters kn'],
    pattern: String.raw`^\D+$`,
  }
  const keys = () =>
    findingKeys(
      patternReader(patterns),
      reading(lettersTaken, () => succeed('')),
    )
  const mapped: Takes = {
    kind: 'keys',
    what: 'a pattern finding',
    keys,
    needed: lettersNeeded ? ['pattern', 'letters'] : ['pattern'],
  }
  return { kind: 'list', of: { kind: 'any of', ways: [named, mapped] }, alone: true, empty: true }
}

/** A pattern's name, or a name and letters, or a map of `pattern` and `letters`. */
function readOverride(entry: Entry, { patterns, word }: OverridePatterns): Outcome<PatternOverride> {
  const pattern = patternReader(patterns)
  const letters = lettersInWord(word)
  if (entry.kind === 'map') {
    const missing = errorAt(entry.place, 'a pattern finding has no "pattern"', 'Write pattern: and its name.')
    const rules = valueAt(entry, 'pattern') ? [] : [missing]
    const keys = readKeys(entry, { what: 'a pattern finding', readers: findingKeys(pattern, letters), rules })
    return andThen(keys, ({ values }) => succeed({ ...values, pattern: values.pattern! }))
  }
  const spaced = entry.kind === 'text' ? /^(\S+)\s+(\S+)$/.exec(entry.text) : null
  const name = spaced ? pattern({ ...entry, kind: 'text', text: spaced[1]! }) : null
  if (entry.kind === 'text' && spaced && name?.ok) {
    return record({ pattern: name, letters: letters({ ...entry, text: spaced[2]! }) })
  }
  return andThen(pattern(entry), found => succeed({ pattern: found }))
}

/** Letters that stand in the word, one low line for letters between: `a_e` in lake. */
function lettersInWord(word: string): ValueReader<string> {
  return reading(lettersTaken, entry => {
    const advice = `Write letters that stand side by side in "${word}", or with a low line between: a_e.`
    if (entry.kind !== 'text') return misfit(entry, 'letters', advice)
    const letters = sameWord(entry.text)
    const [head = '', tail] = letters.split('_')
    const from = lettersOf(word).indexOf(lettersOf(head))
    const stands =
      head !== '' &&
      from >= 0 &&
      (tail === undefined || (tail !== '' && lettersOf(word).indexOf(tail, from + head.length + 1) >= 0))
    return stands
      ? succeed(letters)
      : fail(errorAt(entry.place, `the letters "${entry.text}" do not stand in "${word}"`, advice))
  })
}
