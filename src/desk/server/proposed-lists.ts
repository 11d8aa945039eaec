/** Lists for groups that show one pattern, proposed to be taken over or left. */
import { type FileAccess, plainName, proposeLists } from '../../oaktag.js'
import type { ProposedLists } from '../messages.js'
import { withPlanText } from './folder-files.js'
import { besidePlan, plainPlan } from './plan-view.js'
import { inASentence } from './word-view.js'

export async function proposedLists(
  plan: string,
  files: FileAccess,
  query: URLSearchParams,
): Promise<ProposedLists> {
  const number = (name: string, usual: number, [least, most]: readonly [number, number]) => {
    const given = Number(query.get(name) ?? usual)
    return Number.isInteger(given) ? Math.min(most, Math.max(least, given)) : usual
  }
  const wish = {
    plan,
    pattern: query.get('pattern') ?? '',
    lists: number('lists', 3, [2, 6]),
    words: number('words', 8, [3, 40]),
  }
  const own = await proposeLists({ ...wish, files })
  // A plan that has no words yet still has lists proposed.
  const found = own.ok ? own : await proposeLists({ ...wish, files: withPlanText(files, plan, plainPlan) })
  const [problem] = found.problems
  return {
    lists: found.ok ? found.value : [],
    ...(problem === undefined
      ? {}
      : {
          why: besidePlan(inASentence(problem.message), plan).replaceAll(
            wish.pattern,
            plainName(wish.pattern),
          ),
        }),
  }
}
