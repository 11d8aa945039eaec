/** Which patterns a list is to teach: those that the plan marks, in its order; else those that most of the words show. */
import type { PlanMark } from '../../plan/plan.js'
import { patternNamed, patternNames } from '../../words/patterns/index.js'
import type { Word } from '../../words/word.js'

/** As many as a lesson holds: common practice, no source. */
const mostUnmarked = 3
const fewestWords = 3

/** Short vowels stand in most lists and are seldom what these teach. */
export const ordinaryPatterns: ReadonlySet<string> = new Set([
  'short-vowel',
  'long-vowel',
  'hard-c',
  'hard-g',
  'homophone',
  'schwa',
])

export function lessonPatterns(
  words: readonly Word[],
  marks: readonly Pick<PlanMark, 'target'>[],
): readonly string[] {
  const marked = marks.flatMap(({ target }) => {
    if (target.kind === 'pattern') return [target.pattern]
    return target.kind === 'letters' ? patternsOn(target.letters, words) : []
  })
  return marked.length > 0
    ? [...new Set(marked)]
    : mostShown(words, { most: mostUnmarked, fewest: fewestWords })
}

/** As many as a child keeps apart, none on fewer words than two, nor fewer than one in eight: our own judgement, no source. */
export function patternsToMark(words: readonly Word[]): readonly string[] {
  return mostShown(words, { most: 4, fewest: Math.max(2, Math.ceil(words.length / 8)) })
}

/** What stands on these letters in the words of the list. */
function patternsOn(letters: string, words: readonly Word[]): readonly string[] {
  const found = words.flatMap(({ patterns }) =>
    patterns.filter(finding => finding.letters.toLowerCase() === letters),
  )
  return found.map(({ pattern }) => pattern)
}

function mostShown(
  words: readonly Word[],
  { most, fewest }: { readonly most: number; readonly fewest: number },
): readonly string[] {
  const counts = patternNames
    .filter(name => patternNamed(name)?.scope !== 'syllable')
    .map(name => ({
      name,
      count: words.filter(word => word.patterns.some(({ pattern }) => pattern === name)).length,
    }))
    .filter(({ count }) => count >= Math.max(1, Math.min(fewest, words.length)))
    .toSorted((a, b) => b.count - a.count)
  const telling = counts.filter(({ name }) => !ordinaryPatterns.has(name))
  return (telling.length > 0 ? telling.slice(0, most) : counts.slice(0, 1)).map(({ name }) => name)
}
