/**
 * Expectation maximisation for the table's weights: how often each pairing is expected to be used when a word is
 * cut in every way the table allows, each way counted by its probability (Galescu and Allen 2001; Jiampojamarn and
 * Kondrak 2010).
 */
import type { AlignmentTask } from './align.js'
import { type GraphemeTable, type LetterNode, nodeBehind, type Pairing, placeCost } from './grapheme-table.js'

interface Arc {
  readonly pairing: Pairing
  readonly left: number
  readonly right: number
  readonly probability: number
}

/** Adds the word's expected uses to `uses`. @returns the word's probability under the table, 0 when unexplained */
export function expectUses(table: GraphemeTable, task: AlignmentTask, uses: Map<Pairing, number>): number {
  const arcs = arcsOf(table, task)
  const nodes = (task.letters.length + 1) * (task.sounds.length + 1)
  const forward = new Float64Array(nodes)
  const backward = new Float64Array(nodes)
  forward[0] = 1
  backward[nodes - 1] = 1
  for (const arc of arcs) forward[arc.right]! += forward[arc.left]! * arc.probability
  for (const arc of arcs.toReversed()) backward[arc.left]! += backward[arc.right]! * arc.probability
  const total = forward[nodes - 1]!
  if (total === 0) return 0
  for (const { pairing, left, right, probability } of arcs) {
    const share = (forward[left]! * probability * backward[right]!) / total
    if (share > 0) uses.set(pairing, (uses.get(pairing) ?? 0) + share)
  }
  return total
}

/** Ordered by the letter at which they start, so that one pass forward and one back suffice. */
function arcsOf(table: GraphemeTable, { letters, sounds, breaks }: AlignmentTask): Arc[] {
  const width = sounds.length + 1
  const arcs: Arc[] = []
  for (let start = 0; start < letters.length; start++) {
    for (let from = 0; from < width; from++) {
      let node: LetterNode | undefined = table.root
      for (let end = start + 1; end <= letters.length; end++) {
        node = nodeBehind(node, letters, end - 1)
        if (node === undefined) break
        for (const pairing of node.pairings) {
          const to = from + pairing.sounds.length
          if (to >= width || pairing.sounds.some((sound, index) => sound !== sounds[from + index])) continue
          if (pairing.mayStand?.({ letters, start, end, sounds, from, to }) === false) continue
          const probability = Math.exp(-pairing.cost - placeCost(pairing, letters, end))
          arcs.push({ pairing, left: start * width + from, right: end * width + to, probability })
        }
        if (breaks.has(end)) break
      }
    }
  }
  return arcs
}
