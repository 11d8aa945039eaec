/** Spellings that American schools do not teach, with the endings they take. */
import { rowsOf } from '../tables/installed-tables.js'

const endings = ['s', 'd', 'ed', 'ing', 'r', 'rs', 'er', 'ers', 'ly', 'less', 'ful', 'able']

export function spelledElsewhere(): ReadonlySet<string> {
  const spellings = new Set<string>()
  const american: string[] = []
  for (const [spelling = '', how] of rowsOf('fitness/spelled-elsewhere')) {
    if (how === 'American') american.push(spelling)
    else spellings.add(spelling)
    if (how !== 'with its endings') continue
    for (const ending of endings) {
      spellings.add(spelling + ending)
      spellings.add(spelling.replace(/e$/, '') + ending)
    }
  }
  for (const word of american) spellings.delete(word)
  return spellings
}
