/** `spread:`, lists for groups that show one pattern: proposed to the teacher, and nothing is made of them. */
import { andThen, present, succeed } from '../../outcomes.js'
import { errorAt, type Outcome } from '../../problems.js'
import { key, reading, type ValueReader } from '../keys/key.js'
import type { SpreadWish } from '../plan.js'
import { nameReader } from '../values/names.js'
import { wholeNumberReader } from '../values/numbers.js'
import { otherNames } from '../values/other-names.js'
import type { Vocabulary } from '../vocabulary.js'
import { whereArePatterns } from '../words/pattern-override.js'
import { readKeys, valueAt } from '../yaml/keys.js'

const usual = { lists: 3, words: 8 } as const

function spreadKeys(vocabulary: Vocabulary) {
  return {
    pattern: key('the pattern that all its words show', patternNamed(vocabulary), { example: 'vowel-team' }),
    lists: key('how many lists', wholeNumberReader('a number of lists', 2, 6), {
      usual: String(usual.lists),
    }),
    words: key('how many words a list has', wholeNumberReader('a number of words', 3, 40), {
      example: '8',
      usual: String(usual.words),
    }),
  }
}

function patternNamed(vocabulary: Vocabulary): ValueReader<string> {
  return nameReader({
    what: 'a pattern',
    known: vocabulary.patterns,
    where: whereArePatterns,
    list: 'patterns',
    others: otherNames('pattern', vocabulary),
  })
}

/** The pattern alone, or with how many lists of how many words. */
export function spreadReader(vocabulary: Vocabulary): ValueReader<SpreadWish> {
  const pattern = patternNamed(vocabulary)
  const what = 'a spread'
  const keys = () => spreadKeys(vocabulary)
  const taken = { kind: 'keys', what, keys, needed: ['pattern'], beside: 'pattern: vowel-team' } as const
  return reading({ kind: 'any of', ways: [pattern.takes, taken] }, (entry): Outcome<SpreadWish> => {
    const { place } = entry
    if (entry.kind !== 'map')
      return andThen(pattern(entry), name => succeed({ place, pattern: name, ...usual }))
    const rules = valueAt(entry, 'pattern')
      ? []
      : [
          errorAt(
            place,
            'a spread has no "pattern"',
            'Write pattern: and its name. "oaktag list patterns" shows all.',
          ),
        ]
    return andThen(readKeys(entry, { what, readers: keys(), rules }), ({ values }) =>
      succeed({ place, ...usual, pattern: values.pattern!, ...present(values) }),
    )
  })
}
