/**
 * What makes one word like another for a word study, the nearest first:
 * 0. the vowel is spelled and said alike, and the frame is the same: as many sounds, the same kinds of letters at the
 *    beginning and at the end (reed: need, feel; bridge: fridge)
 * 1. it rhymes and is spelled like it from the vowel on (reed: greed)
 * 2. the same vowel spelling, as many sounds, and one end of the frame is the same (reed: sheep; bridge: trick)
 * 3. the same vowel spelling and as many sounds (reed: tree)
 * 4. the same vowel spelling (reed: street)
 * 5. another spelling of the same kind in the same frame (reed: boat)
 * All have as many syllables. The vowel is the last one with stress. Common practice, no source.
 */
import { plainName } from '../patterns/plain-name.js'
import type { OfferedWord } from './offered-word.js'
import { shapeOf, type WordShape } from './word-shape.js'

export interface Likeness {
  /** 0 is nearest. */
  readonly rank: 0 | 1 | 2 | 3 | 4 | 5
  readonly why: string
}

/** @returns undefined for a word that is not like the model in any of these ways */
export function likenessTo(model: OfferedWord): (word: OfferedWord) => Likeness | undefined {
  const own = shapeOf(model)
  if (own === undefined) return () => undefined
  const { letters } = own.vowel
  return word => {
    if (word.syllableCount !== model.syllableCount) return undefined
    // Without the letters of the vowel only another spelling in the same frame is left: most words need no closer look.
    const asMany = word.soundCount === model.soundCount
    if (!asMany && !letters.split('_').every(part => word.text.includes(part))) return undefined
    const other = shapeOf(word)
    if (other === undefined) return undefined
    const [begins, ends] = [other.opening === own.opening, other.close === own.close]
    const sameVowel = sameSpelling(own, other)
    const frame = asMany && begins && ends
    const rhymes = own.rime === other.rime
    if (sameVowel && frame)
      return {
        rank: 0,
        why: `${letters} in the same frame${rhymes ? `, and rhymes with ${model.text}` : ''}`,
      }
    if (rhymes) return { rank: 1, why: `rhymes with ${model.text} and is spelled like it` }
    if (sameVowel && asMany && begins)
      return { rank: 2, why: `${letters}, as many sounds, and begins with ${own.opening} too` }
    if (sameVowel && asMany && ends)
      return { rank: 2, why: `${letters}, as many sounds, and ends with ${own.close} too` }
    if (sameVowel && asMany) return { rank: 3, why: `${letters}, and as many sounds` }
    if (sameVowel) return { rank: 4, why: `${letters}, with more or fewer sounds` }
    const { pattern } = own.vowel
    if (!frame || pattern === undefined || other.vowel.pattern !== pattern) return undefined
    return { rank: 5, why: `${other.vowel.letters}, another ${plainName(pattern)}, in the same frame` }
  }
}

function sameSpelling(own: WordShape, other: WordShape): boolean {
  return own.vowel.letters === other.vowel.letters && own.vowel.sounds === other.vowel.sounds
}
