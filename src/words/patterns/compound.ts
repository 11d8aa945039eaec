/** Two words joined into one. */
import { alignWord } from '../alignment/graphemes.js'
import { halvesOf } from '../compounds/halves.js'
import type { Halves } from '../compounds/listed-compounds.js'
import type { Finding } from '../word.js'
import { inflectedFrom } from './endings.js'
import type { Pattern, StudiedLetters } from './pattern.js'
import { commonPractice } from './pattern.js'
import { prefix } from './prefix.js'
import { findingAt, spelledSounds } from './spelled-sounds.js'
import { suffix } from './suffix.js'

/** Prefixes that are words too, and open compounds: overcoat, underground, foreground, superstar, midday. */
const alsoWords = /^(?:over|under|fore|super|mid)$/

/** With an ending, the halves are those of the word before it: picnicking is picnic and -ing, no sort of king. */
function findCompound(word: StudiedLetters): readonly Finding[] {
  const halves = halvesIn(word)
  if (halves === undefined) return []
  const text = word.text.toLowerCase()
  const [first, second] = [text.slice(0, halves.at), text.slice(halves.at)]
  const why = halves.isListed
    ? `made of the words ${first} and ${second}`
    : `${first} and ${second} are both words and keep their sounds`
  return [
    {
      ...findingAt(word, { pattern: 'compound', start: 0, end: text.length, why }),
      madeOf: [halves.first, halves.second],
    },
  ]
}

function halvesIn(word: StudiedLetters): Halves | undefined {
  const { evidence } = word
  const text = word.text.toLowerCase()
  if (evidence === undefined || !/^[a-z]{4,}$/.test(text)) return undefined
  const whole = inflectedFrom(word)
  if (whole !== undefined) {
    const pronunciation = evidence.pronunciationsOf(whole)[0] ?? ''
    const { graphemes } = alignWord(whole, pronunciation)
    return halvesIn({ text: whole, graphemes, syllables: [whole], pronunciation, evidence })
  }
  const halves = halvesOf({ text, letters: spelledSounds(word) }, evidence)
  return halves?.isListed || !hasAffix(word) ? halves : undefined
}

function hasAffix(word: StudiedLetters): boolean {
  return suffix.find(word).length > 0 || prefix.find(word).some(({ letters }) => !alsoWords.test(letters))
}

export const compound: Pattern = {
  name: 'compound',
  scope: 'word',
  definition: 'two words joined into one: sailboat, starfish, cupcake',
  condition: `both halves are familiar words of three letters or more (or up, on, by), keep their sounds, and the second keeps some stress, or a vowel that no weak syllable has, or is four letters long; with an ending (cupcakes), those of the word before it; one list names look-alikes such as carpet, another compounds such as cupboard whose sounds have changed`,
  example: { word: 'pothole', letters: 'pothole' },
  counterExample: { word: 'carpet', why: 'pet is not heard in it, and it has nothing to do with car' },
  source: commonPractice,
  find: findCompound,
}
