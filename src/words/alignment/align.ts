/**
 * Letters put against sounds by dynamic programming: of all ways to cut the word into graphemes of the table
 * the one whose pairings are likeliest together (Galescu and Allen 2001; Jiampojamarn and Kondrak 2010).
 */
import type { Context } from './conditions.js'
import { type GraphemeTable, type LetterNode, nodeBehind, placeCost } from './grapheme-table.js'

export interface AlignedStretch {
  readonly start: number
  readonly end: number
  /** Indices of its sounds. */
  readonly from: number
  readonly to: number
  /** The table does not know these letters for these sounds. */
  readonly irregular: boolean
}

export interface Alignment {
  readonly stretches: readonly AlignedStretch[]
  readonly cost: number
}

export interface AlignmentTask {
  /** Lower case, accents folded, signs removed. */
  readonly letters: string
  /** Letter indices at which a grapheme must begin (after an apostrophe or a hyphen). */
  readonly breaks: ReadonlySet<number>
  readonly sounds: readonly string[]
  /** Letters that are to say nothing, each alone, whatever the table has for them. */
  readonly unheard?: ReadonlySet<number>
}

/** A lone silent letter where the table knows no team for it (the s of island). */
const silentLetterCost = 14
/** A letter with a sound that the table does not know for it, and each further sound. */
const irregularCost = 24
const mostIrregularSounds = 60

export function align(table: GraphemeTable, task: AlignmentTask): Alignment {
  const regular = search(table, task, false) ?? search(table, task, true)
  if (regular === undefined) throw new Error(`No alignment for "${task.letters}"`)
  return regular
}

/** @returns undefined when the table alone cannot explain the word and `lenient` is false */
function search(table: GraphemeTable, task: AlignmentTask, lenient: boolean): Alignment | undefined {
  const { letters, sounds, breaks, unheard } = task
  const width = sounds.length + 1
  const costs = new Float64Array((letters.length + 1) * width).fill(Number.POSITIVE_INFINITY)
  /** For each place the place that the best step to it comes from; negative, less one, when the step is irregular. */
  const steps = new Int32Array(costs.length)
  costs[0] = 0

  const offer = (start: number, end: number, from: number, to: number, cost: number, irregular: boolean) => {
    const at = end * width + to
    if (cost < costs[at]!) {
      costs[at] = cost
      const before = start * width + from
      steps[at] = irregular ? -before - 1 : before
    }
  }

  for (let start = 0; start < letters.length; start++) {
    for (let from = 0; from < width; from++) {
      const cost = costs[start * width + from]!
      if (cost === Number.POSITIVE_INFINITY) continue
      if (unheard?.has(start)) {
        offer(start, start + 1, from, from, cost, false)
        continue
      }
      let node: LetterNode | undefined = table.root
      for (let end = start + 1; end <= letters.length; end++) {
        node = nodeBehind(node, letters, end - 1)
        if (node === undefined) break
        for (const pairing of node.pairings) {
          const to = from + pairing.sounds.length
          if (to >= width || !spells(pairing.sounds, sounds, from)) continue
          if (pairing.mayStand !== undefined) {
            const context: Context = { letters, start, end, sounds, from, to }
            if (!pairing.mayStand(context)) continue
          }
          offer(start, end, from, to, cost + pairing.cost + placeCost(pairing, letters, end), false)
        }
        if (breaks.has(end)) break
      }
      if (lenient) {
        offer(start, start + 1, from, from, cost + silentLetterCost, true)
        for (let count = 1; count <= mostIrregularSounds && from + count < width; count++) {
          offer(start, start + 1, from, from + count, cost + irregularCost * count, true)
        }
      }
    }
  }
  return traceBack(letters.length, sounds.length, costs, steps)
}

function spells(spelt: readonly string[], sounds: readonly string[], from: number): boolean {
  for (let index = 0; index < spelt.length; index++) if (spelt[index] !== sounds[from + index]) return false
  return true
}

function traceBack(
  letterCount: number,
  soundCount: number,
  costs: Float64Array,
  steps: Int32Array,
): Alignment | undefined {
  const width = soundCount + 1
  const cost = costs[letterCount * width + soundCount]!
  if (cost === Number.POSITIVE_INFINITY) return undefined
  const stretches: AlignedStretch[] = []
  let end = letterCount
  let to = soundCount
  while (end > 0) {
    const step = steps[end * width + to]!
    const irregular = step < 0
    const before = irregular ? -step - 1 : step
    const start = Math.floor(before / width)
    const from = before % width
    stretches.push({ start, end, from, to, irregular })
    end = start
    to = from
  }
  return { stretches: stretches.reverse(), cost }
}
