import { describe, expect, it } from 'vitest'
import { type ManifestItem, manifestOf } from '../../../src/files/manifest.js'
import type { WeekUse } from '../../../src/files/printed-plan.js'
import { proofParts } from '../../../src/files/proof/proof-parts.js'
import { weekOverview } from '../../../src/files/proof/week-overview.js'
import { item } from '../marsh-sheets.js'

const use = (title: string, day: WeekUse['day'], print: string): WeekUse => ({ title, day, print })
const cards = item({ week: use('Word cards', 'centres', 'once') })
const notes = item({ name: 'lesson-notes', week: use('Lesson notes', 'lesson', 'one for you') })
const list = item({
  name: 'blank-list',
  week: use('Blank list, <Otters>', 'lesson', '9, one for each child'),
})

function rowsOf(items: readonly ManifestItem[]): readonly string[] {
  const rows = weekOverview(items).join('\n').split('<tr>').slice(2)
  return rows.map(row => [...row.matchAll(/>([^<\n]+)</g)].map(([, text]) => text).join(' | '))
}

describe('the head of the proof page of a week', () => {
  const entries = [cards, notes, list].map(made => manifestOf(made, { formats: ['svg'], dpi: 300 }))

  it('has its days in their order, each set with its sheets and what to print', () => {
    expect(rowsOf(entries)).toEqual([
      expect.stringMatching(/^Lesson \| Lesson notes \| .*sheet.* \| one for you$/),
      expect.stringMatching(/^Blank list, &lt;Otters&gt; \| .*sheet.* \| 9, one for each child$/),
      expect.stringMatching(/^Centres \| Word cards \| .*sheet.* \| once$/),
    ])
  })

  it('leads to the sets', () => {
    expect(weekOverview(entries).join('')).toContain('<a href="#item-lesson-notes">Lesson notes</a>')
  })

  it('is left out where no set is of a week', () => {
    expect(weekOverview([manifestOf(item(), { formats: ['svg'], dpi: 300 })])).toEqual([])
  })
})

describe('a set of a week on the proof page', () => {
  it('has its day and what to print under its title', () => {
    const [section] = [...proofParts([list]).sections.values()]
    expect(section!.map(text => text.read()).join('')).toContain(
      '<br>Lesson: print 9, one for each child</p>',
    )
  })
})
