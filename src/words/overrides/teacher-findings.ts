/** Findings as the teacher would have them: those she takes away, and those she adds. */
import type { WordOverrides } from '../../plan/plan.js'
import { placeOf } from '../patterns/spelled-sounds.js'
import type { Finding } from '../word.js'

export function withTeachersFindings(
  text: string,
  findings: readonly Finding[],
  { notPatterns = [], alsoPatterns = [] }: WordOverrides,
): readonly Finding[] {
  const kept = findings.filter(
    finding =>
      !notPatterns.some(
        ({ pattern, letters }) =>
          pattern === finding.pattern && (letters === undefined || letters === finding.letters.toLowerCase()),
      ),
  )
  const added = alsoPatterns.flatMap(({ pattern, letters }) => {
    const stretch = stretchOf(letters, text.toLowerCase())
    const isThere = kept.some(one => one.pattern === pattern && one.letters.toLowerCase() === letters)
    if (stretch === undefined || isThere) return []
    const [start, end] = stretch
    const why = 'the teacher says so'
    return [
      { pattern, letters, start, end, place: placeOf(text, start, end), why, source: 'teacher' as const },
    ]
  })
  return [...kept, ...added].sort((a, b) => a.start - b.start)
}

/** Where the letters first stand; a low line stands for the letters between, as few as can be. */
export function stretchOf(letters: string, text: string): readonly [start: number, end: number] | undefined {
  const [head = '', tail] = letters.split('_')
  const start = text.indexOf(head)
  if (start < 0) return undefined
  if (tail === undefined) return [start, start + head.length]
  const rest = text.indexOf(tail, start + head.length + 1)
  return rest < 0 ? undefined : [start, rest + tail.length]
}
