import { layouts } from '../../../layouts/index.js'
import { inWords } from '../../plan/values/in-words.js'
import { type Problem, warningAt } from '../../problems.js'
import type { ItemJob } from './item-jobs.js'

/** Pages are made once, whatever `copies` says: told in one warning for all items. */
export function ignoredCopies(jobs: readonly ItemJob[]): readonly Problem[] {
  const items = [...new Set(jobs.map(({ item }) => item))].filter(
    ({ copies, layout }) => copies > 1 && layouts.find(each => each.name === layout)?.kind !== 'pieces',
  )
  const [first] = items
  if (first === undefined) return []
  const names = inWords(items.map(({ name }) => `"${name}"`)).replace(/ or (?=[^ ]*$)/, ' and ')
  return [
    warningAt(
      first.place,
      `"copies" does nothing for ${names}: pages are made once`,
      'Print the page as often as you need it, and take "copies" out.',
    ),
  ]
}
