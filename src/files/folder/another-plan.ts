import { type Problem, warningAt } from '../../problems.js'
import type { Manifest } from '../manifest.js'
import type { PrintedPlan, PrintedSheet } from '../printed-plan.js'

/**
 * A plan's folder is named after its file alone, so a plan of the same name from elsewhere fills the same one. Where a
 * plan lies is written nowhere: the same plan gives the same bytes wherever it stands. What the last set says of itself
 * tells the two apart: another title or class, or not one word in common.
 */
export function anotherPlanWarning(
  last: Manifest,
  printed: PrintedPlan<PrintedSheet>,
  { folder, whole }: { readonly folder: string; readonly whole: boolean },
): readonly Problem[] {
  const isOther =
    last.title !== printed.title || last.class !== printed.className || sharesNoWord(last, printed)
  if (!isOther) return []
  const name = `“${last.title}”${last.title === printed.title ? ', with other words,' : ''}`
  return [
    warningAt(
      { file: folder },
      whole
        ? `the set ${name} that stood here was replaced`
        : `what --only left as it was is of the set ${name} that stood here`,
      `If that was another plan, give one of the two plan files another name, or choose another folder with --out; then make ${whole ? 'that plan' : 'both'} again.`,
    ),
  ]
}

/** What the last set had and the new one has not. */
export interface GoneFromSet {
  readonly items: readonly string[]
  /** Words of its pieces. */
  readonly words: readonly string[]
}

/**
 * A plan of the same name, title and class from another folder cannot be told from this week's change of one plan: so
 * what went with the last set is told each time, and a mistake is seen at once.
 */
export function goneFromSet(last: Manifest, now: Manifest): GoneFromSet {
  const itemsNow = new Set(now.items.map(({ name }) => name))
  const wordsNow = new Set(wordsOf(now))
  return {
    items: last.items.map(({ name }) => name).filter(name => !itemsNow.has(name)),
    words: [...new Set(wordsOf(last))].filter(word => !wordsNow.has(word)),
  }
}

function wordsOf({ items }: Manifest): readonly string[] {
  return items.flatMap(({ pages }) => pages.flatMap(({ pieces }) => pieces.flatMap(({ text }) => text)))
}

function sharesNoWord(last: Manifest, printed: PrintedPlan<PrintedSheet>): boolean {
  const before = wordsOf(last)
  const now = printed.items.flatMap(item =>
    item.sheets.flatMap(sheet => sheet.pieces.flatMap(({ piece }) => piece.text)),
  )
  const known = new Set(before)
  return before.length > 0 && now.length > 0 && !now.some(word => known.has(word))
}
