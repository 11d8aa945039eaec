/** Every pattern, in teaching order: the order of `oaktag list patterns`, and of findings that start together. */
import { beginningBlend, digraphBlend, endingBlend, threeLetterBlend } from './blends.js'
import { compound } from './compound.js'
import { consonantDigraph, doubleConsonant, trigraph } from './consonant-teams.js'
import { endings } from './endings.js'
import { hardC, hardG, qu, softC, softG, x } from './hard-and-soft.js'
import type { Pattern } from './pattern.js'
import { prefix } from './prefix.js'
import { consonantLe, rControlled } from './r-controlled.js'
import { schwa } from './schwa.js'
import { silentE } from './silent-e.js'
import { silentLetters } from './silent-letters.js'
import { suffix } from './suffix.js'
import { syllableTypes } from './syllable-types.js'
import { diphthong, longVowel, shortVowel, vowelTeam, yAsVowel } from './vowels.js'
import { contraction, homophone } from './whole-words.js'

export const patterns: readonly Pattern[] = [
  shortVowel,
  doubleConsonant,
  consonantDigraph,
  beginningBlend,
  endingBlend,
  threeLetterBlend,
  digraphBlend,
  trigraph,
  qu,
  x,
  silentE,
  longVowel,
  vowelTeam,
  diphthong,
  rControlled,
  yAsVowel,
  hardC,
  softC,
  hardG,
  softG,
  silentLetters,
  ...endings,
  compound,
  contraction,
  homophone,
  ...syllableTypes,
  consonantLe,
  schwa,
  prefix,
  suffix,
]

const byName = new Map(patterns.map(pattern => [pattern.name, pattern]))

export function patternNamed(name: string): Pattern | undefined {
  return byName.get(name)
}

export const patternNames: readonly string[] = patterns.map(pattern => pattern.name)
