import { expect, it } from 'vitest'
import { pageFonts } from '../../fonts/page-fonts.js'
import { manifestOf } from '../../src/files/manifest.js'
import { proofPage } from '../../src/files/proof/proof-page.js'
import { proofParts } from '../../src/files/proof/proof-parts.js'
import { demoWeeks, drawDemoWeek } from './demo-sheets.js'

export function keepProofPagesSmall(): void {
  it.each(demoWeeks)('the proof page of a demo week stays under 3 MB: %s', async week => {
    const items = (await drawDemoWeek(week)).map(({ printed }) => printed)
    const entries = items.map(item => manifestOf(item, { formats: ['svg'], dpi: 300 }))
    const manifest = { oaktag: '0.1.0', title: week, class: '', seed: 1, items: entries }
    const page = proofPage({ manifest, parts: proofParts(items), warnings: [], pageFonts: pageFonts() })
    expect(items.flatMap(({ sheets }) => sheets).length).toBeGreaterThan(30)
    expect(Buffer.byteLength(page)).toBeLessThan(3_000_000)
  })
}
