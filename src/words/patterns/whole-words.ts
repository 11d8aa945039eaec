/** What can be said of a whole word: contraction, homophone; compound.ts has compounds. */
import { homophonesOf } from '../homophones/homophones.js'
import type { Finding } from '../word.js'
import type { Pattern, StudiedLetters } from './pattern.js'
import { commonPractice } from './pattern.js'
import { findingAt } from './spelled-sounds.js'

function wholeWord(word: StudiedLetters, pattern: string, why: string): Finding {
  return findingAt(word, { pattern, start: 0, end: word.text.length, why })
}

const contractedEndings: readonly {
  readonly letters: string
  readonly stands: string
  readonly after?: RegExp
}[] = [
  { letters: "n't", stands: 'not' },
  { letters: "'re", stands: 'are' },
  { letters: "'ve", stands: 'have' },
  { letters: "'ll", stands: 'will' },
  { letters: "'d", stands: 'had or would' },
  { letters: "'m", stands: 'am', after: /^i$/ },
  { letters: "'s", stands: 'us', after: /^let$/ },
  {
    letters: "'s",
    stands: 'is or has',
    after:
      /^(he|she|it|that|this|what|who|where|when|how|why|there|here|one|everyone|someone|everything|something|nothing)$/,
  },
]

/** What loses a letter, or more, before n't. */
const shortenedBeforeNot: Readonly<Record<string, string>> = { ca: 'can', wo: 'will', sha: 'shall' }

function wordBefore(written: string, letters: string): string {
  return letters === "n't" ? (shortenedBeforeNot[written] ?? written) : written
}

function findContraction(word: StudiedLetters): readonly Finding[] {
  const text = word.text.toLowerCase().replace('\u2019', "'")
  const found = contractedEndings.find(
    ({ letters, after }) =>
      text.endsWith(letters) &&
      text.length > letters.length &&
      (after?.test(text.slice(0, -letters.length)) ?? true),
  )
  if (found === undefined) return []
  const start = text.length - found.letters.length
  const why = `the apostrophe stands for letters left out: ${found.letters} is short for ${found.stands}`
  return [
    {
      ...findingAt(word, { pattern: 'contraction', start, end: text.length, why }),
      madeOf: [wordBefore(text.slice(0, start), found.letters), found.stands],
    },
  ]
}

export const contraction: Pattern = {
  name: 'contraction',
  scope: 'word',
  definition: "two words made shorter with an apostrophe: can't, we'll, it's",
  condition:
    "n't 're 've 'll 'd, 'm after I, 's after it, he, that, let and the like; the 's of an owner is no contraction",
  example: { word: "can't", letters: "n't" },
  counterExample: { word: "heron's", why: "its 's tells whose it is" },
  source: commonPractice,
  spelledWith: /['\u2019]/,
  find: findContraction,
}

function findHomophone(word: StudiedLetters): readonly Finding[] {
  const others = homophonesOf(word.text.toLowerCase(), word.accent)
  if (others.length === 0) return []
  const why = `sounds the same as ${others.join(' and ')}`
  return [wholeWord(word, 'homophone', why)]
}

export const homophone: Pattern = {
  name: 'homophone',
  scope: 'word',
  definition: 'a word that sounds like another with a different spelling: sea and see, tide and tied',
  condition:
    'another familiar word has the same sounds and stress in the lexicon, or stands beside it in a short list by hand; a plan with an accent adds those that fall together in it and leaves out those that it tells apart',
  example: { word: 'sea', letters: 'sea' },
  counterExample: { word: 'wind', why: 'one spelling said in two ways is a heteronym' },
  source: commonPractice,
  find: findHomophone,
}
