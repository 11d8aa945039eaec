/** What a mark says of whole words: `part of speech: noun`, `plural: add es`, `sounds: 4`, `syllables: 2`. */
import { andThen, succeed } from '../../outcomes.js'
import type { WordFeature } from '../plan.js'
import { nameReader } from '../values/names.js'
import { wholeNumberReader } from '../values/numbers.js'
import { partsOfSpeech } from '../words/parts-of-speech.js'
import { longestWord } from '../words/word-text.js'
import type { Reader } from '../yaml/entry.js'

/** In the order in which messages name them. */
export const wordFeatures: readonly WordFeature[] = ['part of speech', 'plural', 'sounds', 'syllables']

/** The values of each as text, as the teacher would write them. */
export function wordFeatureReaders(plurals: readonly string[]) {
  return {
    'part of speech': nameReader({
      what: 'a part of speech',
      known: partsOfSpeech,
      where: 'It can be noun, verb, adjective, adverb or another of the ten.',
    }),
    plural: nameReader({
      what: 'a rule for plurals',
      known: plurals,
      where:
        '`oaktag study` names the rule of each word; "add s", "add es", "y to i" and "f to v" are the usual ones.',
    }),
    sounds: countReader('a number of sounds'),
    syllables: countReader('a number of syllables'),
  } satisfies Record<WordFeature, Reader<string>>
}

function countReader(what: string): Reader<string> {
  const read = wholeNumberReader(what, 1, longestWord)
  return entry => andThen(read(entry), count => succeed(String(count)))
}
