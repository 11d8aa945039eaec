/** The formula of weights.ts: how good a sort is, and each factor in words. */
import { type SortKind, tieOf, weights } from './weights.js'

export interface Filled {
  readonly kind: SortKind
  readonly sizes: readonly number[]
  readonly hasWithout: boolean
  readonly oddballs: number
  readonly outsiders: number
  readonly isMarked: boolean
  /** The plan marks whole words by it: parts of speech, a number of sounds. */
  readonly isFeature: boolean
}

export interface Rating {
  /** To three decimals. */
  readonly score: number
  /** Before what fits any words is taken down: whether it is a sort at all. */
  readonly fair: number
  readonly standing: string
}

export function rate(filled: Filled): Rating {
  const { kind, sizes, isMarked, isFeature } = filled
  const { tie, shared, anyWords = false } = tieOf(kind)
  const factors = factorsOf(filled)
  const product = factors.reduce((value, { figure }) => value * figure, tie)
  const marked = isMarked ? product + (1 - product) * weights.marked : product
  const isLow = anyWords && !isFeature
  const score = isLow ? marked * weights.anyWords : marked
  const all = [
    { what: shared, figure: tie },
    ...factors.filter(({ figure }) => shown(figure) !== '1'),
    ...(isLow ? [{ what: 'it would fit any words', figure: weights.anyWords }] : []),
  ]
  const told = all.map(({ what, figure }) => `${shown(figure)} (${what})`).join(' × ')
  const raised = isMarked ? `, raised because the plan marks it: ${shown(score)}` : ''
  return {
    score: rounded(score),
    fair: sizes.length < 2 ? 0 : product,
    standing: `${told} = ${shown(isLow ? product * weights.anyWords : product)}${raised}`,
  }
}

interface Factor {
  readonly what: string
  readonly figure: number
}

function factorsOf({ sizes, hasWithout, oddballs, outsiders }: Filled): readonly Factor[] {
  const placed = sizes.reduce((sum, size) => sum + size, 0)
  const all = placed + oddballs + outsiders
  if (sizes.length < 2) return [{ what: 'no columns', figure: 0 }]
  const together = sizes.reduce((sum, size) => sum + (size / placed) ** 2, 0)
  const full = sizes.filter(size => size >= 3).length / sizes.length
  const told = oddballs === 0 ? '' : ` and ${oddballs} ${oddballs === 1 ? 'oddball' : 'oddballs'}`
  return [
    {
      what: `${placed} of ${all} words placed${told}`,
      figure: (placed + weights.oddball * oddballs) / all,
    },
    { what: 'evenness', figure: (1 - together) / (1 - 1 / sizes.length) },
    { what: 'columns of two words', figure: weights.thin + (1 - weights.thin) * full },
    { what: `${sizes.length} columns`, figure: weights.breadth[sizes.length] ?? 1 },
    { what: 'a column of what lacks it', figure: hasWithout ? weights.without : 1 },
  ]
}

function shown(figure: number): string {
  return String(Math.round(figure * 100) / 100)
}

function rounded(figure: number): number {
  return Math.round(1000 * figure) / 1000
}
