/**
 * Which of a word's uses a child meets first, and which are left out.
 *
 * A use's score is the sum of what speaks for it; the odds of one use against another are the exponential of the
 * difference. The weights are those that make the first parts of speech of some 2,400 words with several uses, tagged
 * by hand, likeliest (a conditional logit with a little shrinking, rounded). Between noun and verb they say: of two
 * uses met equally often the noun is first where it is a thing (stump, sling), the verb where the noun is what one
 * does (leap, twitch).
 */
import type { Use } from './uses.js'
import type { OpenClass } from './wordnet.js'

const scoreOfPart: Readonly<Record<OpenClass, number>> = { noun: 0.75, verb: 0, adjective: 0.4, adverb: 0.05 }
const scoreOf = { count: 1.1, senses: 0.9, thing: 2.5, deed: -0.5, shown: 0.45, apart: 0.65 }

/** A use rarer than this share of the word's uses is left out; of nouns with a rare verb (to chain) there are many. */
const rarest: Readonly<Record<OpenClass, number>> = {
  noun: 0.012,
  verb: 0.02,
  adjective: 0.012,
  adverb: 0.012,
}
/** Kept all the same is a verb whose past is so common beside its base form. */
const verbAllTheSame = 0.03
/** What a listed use counts for that the tagged texts never met. */
const unmet = 0.3
/** A verb stands mostly in another form than its base. */
const verbInBaseForm = 0.5

export function partsByWeight(uses: readonly Use[]): readonly OpenClass[] {
  const amounts = sumsByPart(uses, amountOf)
  const odds = sumsByPart(uses, oddsOf)
  const total = [...amounts.values()].reduce((sum, amount) => sum + amount, 0)
  const isMet = (part: OpenClass) =>
    amounts.get(part)! >= rarest[part] * total ||
    uses.some(use => use.part === part && use.past >= verbAllTheSame)
  return [...odds.keys()].filter(isMet).sort((first, second) => odds.get(second)! - odds.get(first)!)
}

function amountOf({ part, share, count }: Use): number {
  return share * (count + unmet) * (part === 'verb' ? verbInBaseForm : 1)
}

function oddsOf(use: Use): number {
  return Math.exp(
    scoreOfPart[use.part] +
      scoreOf.count * Math.log(use.share * use.count + 0.5) +
      scoreOf.senses * Math.log(use.senses) +
      scoreOf.thing * use.thing +
      scoreOf.deed * use.deed +
      scoreOf.shown * use.shown +
      scoreOf.apart * use.apart,
  )
}

function sumsByPart(uses: readonly Use[], of: (use: Use) => number): ReadonlyMap<OpenClass, number> {
  const sums = new Map<OpenClass, number>()
  for (const use of uses) sums.set(use.part, (sums.get(use.part) ?? 0) + of(use))
  return sums
}
