import { fail, succeed } from '../../src/outcomes.js'
import { choice, option } from '../../src/plan/values/options.js'
import { contentsOf, wordsDealt } from '../../src/sets/set-contents.js'
import { copyLetter } from '../../src/sets/set-mark.js'
import { divideSheet } from '../../src/sheets/grid.js'
import { nothingToList } from '../checklist/checklist.js'
import { defineLayout, type PlanSet } from '../layout.js'
import { BAG_LABEL, ENVELOPE_LABEL, type StorageLabel, storageLabelSheets } from './storage-labels.js'

/** A label for each bag or envelope that holds a set: what it is, for whom, how many pieces, which words. */
export const bagLabels = defineLayout({
  kind: 'sheets',
  name: 'bag-labels',
  summary:
    'a label for each bag or envelope that holds a set: what it is, for whom, how many pieces, which words',
  inWeek: { day: 'storing', given: 'once' },
  options: {
    for: option('what the labels are stuck on', choice(['bag', 'envelope'], 'bag')),
  },
  marks: 'none',
  sheets: (request, { lettering, sets: labelled }) => {
    const { item, options, plan } = request
    if (labelled.length === 0) return fail(nothingToList(request))
    const size = options.for === 'bag' ? BAG_LABEL : ENVELOPE_LABEL
    const { paper, orientation, marginMm, gapMm, place, division } = item
    const grid = divideSheet({
      paper,
      orientation,
      marginMm,
      gapMm,
      division: division.kind === 'layout' ? { kind: 'card', size } : division,
      preferred: { columns: 2, rows: 4 },
      place,
    })
    if (!grid.ok) return grid
    const from = [plan.title, plan.className].filter(part => part !== '').join(' · ')
    const labels = labelled.flatMap(set => labelsOf(set, from))
    const title = `${plan.title}: ${request.itemTitle}`
    const sheets = storageLabelSheets({ title, labels, grid: grid.value, lettering })
    return succeed(sheets, grid.problems)
  },
})

/** One for each copy of the set, which has a bag of its own. `from` says which plan and class it is of. */
function labelsOf(
  { title, group, shortSetTitle, copies, words, set }: PlanSet,
  from: string,
): readonly StorageLabel[] {
  const inSet = wordsDealt(set, words).map(word => word.text)
  return Array.from({ length: copies }, (_, index) => {
    const [bag, letter] =
      copies === 1 ? ['', []] : [`, bag ${index + 1} of ${copies}`, [copyLetter(index + 1)]]
    return {
      what: title,
      forWhom: `${group ?? 'whole class'}${bag}`,
      from,
      lines: [contentsOf(set), `set mark: ${[shortSetTitle, ...letter].join(' · ')}`, inSet.join(' · ')],
    }
  })
}
