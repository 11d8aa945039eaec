/** Parts of a week that would ask only what another part asks: of a list of nouns, endings are its plurals. */
import type { AnswerData } from '../../sets/answer-data.js'
import type { CardSet } from '../../sets/card-set.js'
import type { PreparedItem } from './prepare-item.js'

interface Asking {
  readonly prepared: PreparedItem
  readonly set: CardSet
}

/** Each such part with the part before it that asks the same. */
export function askedAlready<A extends Asking>(items: readonly A[]): ReadonlyMap<A, A> {
  const asking = items.flatMap(item => {
    const answers = answersOf(item.set.answerData)
    return item.prepared.job.item.ofWeek && answers.length > 0 ? [{ item, answers }] : []
  })
  return new Map(
    asking.flatMap(({ item, answers }, index) => {
      const { layout, group } = jobOf(item)
      const other = asking
        .slice(0, index)
        .find(
          before =>
            jobOf(before.item).layout === layout &&
            jobOf(before.item).group === group &&
            answers.every(answer => before.answers.includes(answer)),
        )
      return other === undefined ? [] : [[item, other.item] as const]
    }),
  )
}

function jobOf({ prepared: { job } }: Asking) {
  return { layout: job.item.layout, group: job.group }
}

/** Of a list of prompts with their answers, the answers; of anything else, none, nor of a word that is only to be copied. */
function answersOf(data: AnswerData | undefined): readonly string[] {
  if (!Array.isArray(data)) return []
  return data.flatMap((each: AnswerData) => {
    if (typeof each !== 'object' || each === null || !('answer' in each)) return []
    const { answer, prompt } = each
    return typeof answer === 'string' && answer !== prompt ? [answer] : []
  })
}
