/** A pronunciation for letters that no dictionary holds, from the same table as the alignment. */

import { isVowelSound } from '../alignment/arpabet.js'
import type { LetterNode, Pairing } from '../alignment/grapheme-table.js'
import { learnedTable } from '../alignment/graphemes.js'
import type { Spelling } from '../alignment/spelling.js'

/** @returns ARPABET with stress; always something, whatever the letters */
export function guessPronunciation({ letters, breaks }: Pick<Spelling, 'letters' | 'breaks'>): string {
  const costs: number[] = [0]
  const chosen: (Pairing | undefined)[] = []
  const from: number[] = []
  for (let start = 0; start < letters.length; start++) {
    const soFar = costs[start]
    if (soFar === undefined) continue
    // A letter from outside the English alphabet stays without a sound.
    if (costs[start + 1] === undefined) {
      costs[start + 1] = soFar + 99
      from[start + 1] = start
    }
    let node: LetterNode | undefined = learnedTable().root
    for (let end = start + 1; end <= letters.length; end++) {
      node = node.next.get(letters.charCodeAt(end - 1))
      if (node === undefined) break
      for (const pairing of node.pairings) {
        const cost = soFar + pairing.cost
        if (cost >= (costs[end] ?? Number.POSITIVE_INFINITY)) continue
        costs[end] = cost
        chosen[end] = pairing
        from[end] = start
      }
      if (breaks.has(end)) break
    }
  }
  const sounds: string[] = []
  for (let end = letters.length; end > 0; end = from[end]!) sounds.unshift(...(chosen[end]?.sounds ?? []))
  let stressed = false
  return sounds
    .map(sound => {
      if (!isVowelSound(sound)) return sound
      const stress = stressed ? 0 : 1
      stressed = true
      return `${sound}${stress}`
    })
    .join(' ')
}
