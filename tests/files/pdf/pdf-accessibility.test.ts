/**
 * What a machine can check of PDF/UA-1 (ISO 14289-1:2014) in a plan of many layouts, clause by clause as veraPDF's
 * published profile numbers them. Clauses on forms, links, media, notes and embedded files have nothing to hold here:
 * our files have none, which is checked too.
 */
import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { draw, formatProblem, readPlan, settle } from 'oaktag'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { sheetsToPdf } from '../../../src/files/pdf/pdf.js'
import { marshWithClues } from '../../layouts/print-item.js'
import { hasProgram } from '../system-program.js'
import { dictionaryOf, everyTag, type PdfFile, readPdf, type Tag, tagTree } from './pdf-objects.js'

const items = [
  '{layout: word-cards, back: answer, key: strip}',
  '{layout: bingo, boards: 2, grid: 3x3}',
  '{layout: closed-sort, sort: how the plural is made}',
  '{layout: marked-list}',
  '{layout: blank-list}',
  '{layout: word-strips}',
  '{layout: key}',
  '{layout: checklist}',
  '{layout: bag-labels}',
]

/** Standard structure types of ISO 32000-1, §14.8.4, that we use. */
const types = new Set(['Document', 'Sect', 'H1', 'P', 'Figure', 'Table', 'TR', 'TH', 'TD'])

describe.runIf(hasProgram('qpdf'))('a plan as PDF/UA', () => {
  let folder: string
  let pdf: PdfFile
  let tags: readonly Tag[]
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'oaktag-accessible-'))
    const plan = readPlan(`${marshWithClues}${items.map(item => `  - ${item}\n`).join('')}`)
    const settled = plan.ok ? await settle(plan.value) : plan
    const printed = settled.ok ? await draw(settled.value) : settled
    if (!printed.ok) throw new Error(printed.problems.map(formatProblem).join('\n'))
    const file = join(folder, 'marsh.pdf')
    const parts = printed.value.items.map(({ name, sheets }) => ({ title: name, sheets }))
    await writeFile(file, await sheetsToPdf({ title: 'Along the marsh', parts }))
    pdf = readPdf(file)
    tags = everyTag(tagTree(pdf))
  })
  afterAll(() => rm(folder, { recursive: true }))
  const ofType = (type: string) => tags.filter(tag => tag.type === type)

  it('says that it is one (5-1, 5-2)', () => {
    expect(pdf.metadata).toMatch(/<pdfuaid:part>1<\/pdfuaid:part>/)
  })

  it('has all that it draws tagged or marked as decoration, never one inside the other (7.1-1 to 7.1-3)', () => {
    expect(
      pdf.pages.flatMap(({ content }, index) => wrongContent(content).map(wrong => [index, wrong])),
    ).toEqual([])
  })

  it('is marked as tagged, and nothing in it is suspect (7.1-4, 7.1-11)', () => {
    expect(pdf.resolve(pdf.catalog['/MarkInfo'])).toEqual({ '/Marked': true })
    expect(tags[0]!.type).toBe('Document')
  })

  it('uses standard types alone (7.1-5 to 7.1-7)', () => {
    expect(tags.filter(({ type }) => !types.has(type))).toEqual([])
    expect(dictionaryOf(pdf.resolve(pdf.catalog['/StructTreeRoot']))['/RoleMap']).toBeUndefined()
  })

  it('has a title in its metadata and shows it (7.1-8 to 7.1-10)', () => {
    expect(pdf.metadata).toMatch(/<dc:title>[\s\S]*Along the marsh[\s\S]*<\/dc:title>/)
    expect(dictionaryOf(pdf.resolve(pdf.catalog['/ViewerPreferences']))['/DisplayDocTitle']).toBe(true)
  })

  it('says its language (7.2-29, 7.2-34)', () => {
    expect(pdf.catalog['/Lang']).toBe('u:en-US')
  })

  it('has tables of rows of cells, every row as long as the others (7.2-3 to 7.2-15)', () => {
    expect(ofType('Table').length).toBeGreaterThan(3)
    for (const table of ofType('Table')) {
      expect(table.tags.map(({ type }) => type)).toEqual(table.tags.map(() => 'TR'))
      expect(new Set(table.tags.map(row => row.tags.length)).size).toBe(1)
    }
    for (const row of ofType('TR')) expect(row.tags.every(({ type }) => /^T[HD]$/.test(type))).toBe(true)
  })

  it('says what each figure shows, and where it is (7.3-1)', () => {
    expect(ofType('Figure').length).toBeGreaterThan(20)
    for (const { dictionary } of ofType('Figure')) {
      expect(dictionary['/Alt']).toMatch(/^u:./)
      expect(dictionaryOf(pdf.resolve(dictionary['/A']))['/BBox']).toHaveLength(4)
    }
  })

  it('has a heading on each page of rows, and none of a lower level (7.4.2-1)', () => {
    expect(ofType('H1').length).toBeGreaterThan(3)
    expect(tags.filter(({ type }) => /^H[2-6]?$/.test(type))).toEqual([])
  })

  it('says what each heading of a table is over (7.5-1)', () => {
    expect(ofType('TH').length).toBeGreaterThan(10)
    for (const { dictionary } of ofType('TH'))
      expect(dictionaryOf(pdf.resolve(dictionary['/A']))['/Scope']).toMatch(/^\/(?:Column|Row)$/)
  })

  it('goes through each page in the order of its tags, and has nothing to fill in (7.18.3-1, 7.18.4)', () => {
    for (const { dictionary } of pdf.pages) {
      expect(dictionary['/Tabs']).toBe('/S')
      expect(dictionary['/Annots']).toBeUndefined()
    }
    expect(pdf.catalog['/AcroForm']).toBeUndefined()
  })

  it('says what each letter of its fonts means (7.21.7-1), and needs no font from elsewhere (7.21.4.1-1)', () => {
    expect(pdf.fonts.length).toBeGreaterThan(0)
    for (const font of pdf.fonts) {
      expect(font['/Subtype']).toBe('/Type3')
      expect(font['/ToUnicode']).toBeDefined()
    }
  })
})

/** Painting outside of all marks, marks inside marks, marks left open. */
function wrongContent(content: string): readonly string[] {
  const wrong: string[] = []
  let depth = 0
  for (const line of content.split('\n').map(each => each.trim())) {
    if (/\bBDC$|\bBMC$/.test(line)) {
      if (depth > 0) wrong.push(`marked inside a mark: ${line}`)
      depth += 1
    } else if (line === 'EMC') depth -= 1
    else if (depth === 0 && /(?:^|\s)(?:f|S|B|Do|Tj|TJ)$/.test(line)) wrong.push(`unmarked: ${line}`)
  }
  return depth === 0 ? wrong : [...wrong, 'a mark is left open']
}
