/** The head of the proof page of a week: its days in their order, what to print for each, how many. */
import { type WeekDay, weekDays } from '../../plan/week/week-place.js'
import type { ManifestItem } from '../manifest.js'
import { escapeXml } from '../page/xml.js'
import type { WeekUse } from '../printed-plan.js'
import { itemAnchor } from './item-anchor.js'
import { sheetsOfStock } from './sheet-counts.js'

const dayNames: Readonly<Record<WeekDay, string>> = {
  lesson: 'Lesson',
  practice: 'Practice',
  centres: 'Centres',
  check: 'Check',
  home: 'Home',
  storing: 'Storing',
}

/** `Practice: print 22, one for each child` */
export function howToPrint({ day, print }: WeekUse): string {
  return `${dayNames[day]}: print ${print}`
}

/** Nothing where no item belongs to a week's set. */
export function weekOverview(items: readonly ManifestItem[]): readonly string[] {
  const days = weekDays.flatMap(day => {
    const ofDay = items.filter(({ week }) => week?.day === day)
    return ofDay.length === 0 ? [] : [{ day, items: ofDay }]
  })
  if (days.length === 0) return []
  return [
    '<table class="week">',
    '<caption>The week, day by day</caption>',
    '<thead><tr><th scope="col">For</th><th scope="col">Set</th><th scope="col">Sheets</th><th scope="col">Print</th></tr></thead>',
    ...days.map(
      ({ day, items: ofDay }) =>
        `<tbody>${ofDay.map((item, index) => `<tr>${index === 0 ? dayCell(day, ofDay.length) : ''}${cells(item)}</tr>`).join('\n')}</tbody>`,
    ),
    '</table>',
  ]
}

function dayCell(day: WeekDay, rows: number): string {
  return `<th scope="rowgroup" rowspan="${rows}">${dayNames[day]}</th>`
}

function cells({ name, pages, week }: ManifestItem): string {
  const link = `<a href="#${itemAnchor(name)}">${escapeXml(week?.title ?? name)}</a>`
  return [link, escapeXml(sheetsOfStock(pages)), escapeXml(week?.print ?? '')]
    .map(cell => `<td>${cell}</td>`)
    .join('')
}
