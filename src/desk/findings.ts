/** Findings that a plan takes away from a word (`not:`) or adds (`also:`). */
import type { Change, Data, Path } from './messages.js'
import { entriesOf, keyIn, listChange, textOf, valueAt } from './plan-values.js'

/** What the plan says of a finding: `silent-letters kn`. */
export function findingsUnder(entry: Data, key: string): readonly string[] {
  return entriesOf(valueAt(entry, key)).map(findingText)
}

export function withFinding(entry: Data, at: Path, key: 'not' | 'also', finding: string): readonly Change[] {
  const values = [...entriesOf(valueAt(entry, key)), finding]
  return listChange(entry, [...at, keyIn(entry, key)], values, 'word')
}

export function withoutFinding(
  entry: Data,
  at: Path,
  key: 'not' | 'also',
  finding: string,
): readonly Change[] {
  const values = entriesOf(valueAt(entry, key)).filter(each => findingText(each) !== finding)
  return listChange(entry, [...at, keyIn(entry, key)], values, 'word')
}

/** In a word, or by its keys: `{ pattern: silent-letters, letters: kn }`. */
function findingText(finding: Data): string {
  if (typeof finding === 'string') return finding
  return ['pattern', 'letters']
    .map(key => textOf(finding, key))
    .join(' ')
    .trim()
}
