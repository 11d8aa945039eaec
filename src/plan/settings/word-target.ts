/** What a mark says of whole words: `part of speech: noun`, `plural: add es`, `sounds: 4`, `syllables: 2`. */
import { andThen, succeed } from '../../outcomes.js'
import { type Key, key, reading, type ValueReader } from '../keys/key.js'
import type { WordFeature } from '../plan.js'
import { nameReader } from '../values/names.js'
import { wholeNumberReader } from '../values/numbers.js'
import { partsOfSpeech } from '../words/parts-of-speech.js'
import { longestWord } from '../words/word-text.js'

/** In the order in which messages name them. */
export const wordFeatures: readonly WordFeature[] = ['part of speech', 'plural', 'sounds', 'syllables']

/** The values of each as text, as the teacher would write them. */
export function wordFeatureKeys(plurals: readonly string[]) {
  return {
    'part of speech': key(
      'marks whole words of this part of speech',
      nameReader({
        what: 'a part of speech',
        known: partsOfSpeech,
        where: 'It can be noun, verb, adjective, adverb or another of the ten.',
      }),
      { beside: '' },
    ),
    plural: key(
      'marks whole words whose plural follows this rule',
      nameReader({
        what: 'a rule for plurals',
        known: plurals,
        where:
          '`oaktag study` names the rule of each word; "add s", "add es", "y to i" and "f to v" are the usual ones.',
      }),
      { example: 'add es', beside: '' },
    ),
    sounds: key('marks whole words of this many sounds', countReader('a number of sounds'), {
      example: '4',
      beside: '',
    }),
    syllables: key('marks whole words of this many syllables', countReader('a number of syllables'), {
      example: '2',
      beside: '',
    }),
  } satisfies Record<WordFeature, Key<string>>
}

function countReader(what: string): ValueReader<string> {
  const read = wholeNumberReader(what, 1, longestWord)
  return reading(read.takes, entry => andThen(read(entry), count => succeed(String(count))))
}
