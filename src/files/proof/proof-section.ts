import type { Sheet, SheetKind } from '../../sheets/sheet.js'
import type { ManifestItem } from '../manifest.js'
import { toDecimal } from '../page/decimal.js'
import { svgSize } from '../page/svg.js'
import { type ArtIds, artDefinitions, type OutlineIds, sharedArtIds, sheetBody } from '../page/svg-body.js'
import { escapeXml } from '../page/xml.js'
import type { PrintedItem } from '../printed-plan.js'
import { sheetsOfStock } from './sheet-counts.js'

/** What gives the game away: printed for the teacher, folded on the proof page. */
const forTheTeacher: readonly SheetKind[] = ['key', 'answers', 'caller']

interface NumberedSheet {
  readonly sheet: Sheet
  readonly page: number
}

/** The item's part of the proof page: what it is, for whom, its sheets drawn in place, what is to be known of it. */
export function proofSection(item: PrintedItem, outlines: OutlineIds): string {
  const ids = sharedArtIds(item.sheets, `${anchor(item.name)}-art-`)
  const numbered = item.sheets.map((sheet, index) => ({ sheet, page: index + 1 }))
  // Where nothing is left in sight, as with a key alone, nothing is folded either.
  const some = numbered.some(({ sheet }) => !forTheTeacher.includes(sheet.kind))
  const isFolded = ({ sheet }: NumberedSheet) => some && forTheTeacher.includes(sheet.kind)
  const drawing = { item, ids, outlines }
  return [
    sectionStart(item.name, numbered.filter(sheet => !isFolded(sheet)).length > 1),
    heading(item),
    `<svg class="defs" width="0" height="0" aria-hidden="true">${artDefinitions(ids, outlines)}</svg>`,
    row(
      drawing,
      numbered.filter(sheet => !isFolded(sheet)),
    ),
    ...noteList(item.notes.filter(note => !item.fittingNotes.includes(note))),
    ...fold('answers', 'Key and answers', drawing, numbered.filter(isFolded)),
    ...fittingFold(item.fittingNotes),
    sectionEnd,
  ].join('\n')
}

export const sectionEnd = '</section><!-- end of item -->'

/** A section with several sheets in sight takes the whole width. */
export function sectionStart(name: string, several: boolean): string {
  const id = itemAnchor(name)
  return `<section class="item${several ? ' several' : ''}" id="${id}" aria-labelledby="${id}-title">`
}

/** For an item whose pictures are gone: its name and its files. */
export function sectionOfLinks(item: ManifestItem): string {
  const paths = item.pages.flatMap(({ svg, png }) => svg ?? png ?? [])
  const links = [item.pdf ?? [], paths].flat().map(path => `<li>${fileLink(path, path)}</li>`)
  return [
    sectionStart(item.name, false),
    `<h2 id="${itemAnchor(item.name)}-title">${escapeXml(item.name)}</h2>`,
    `<ul>${links.join('')}</ul>`,
    sectionEnd,
  ].join('\n')
}

/** The id of an item's part. */
export function itemAnchor(name: string): string {
  return `item-${anchor(name)}`
}

/** A link to a file beside the proof page. */
export function fileLink(path: string, words: string): string {
  const href = path.split('/').map(encodeURIComponent).join('/')
  return `<a href="${href}">${escapeXml(words)}</a>`
}

function heading({ name, title, group, paper, sheets }: PrintedItem): string {
  const id = itemAnchor(name)
  const told = `${sheetsOfStock(sheets)}, size ${escapeXml(paper.name)}`
  return [
    '<div class="head">',
    `<h2 id="${id}-title"><a href="#${id}">${escapeXml(title)}</a> <span class="for">${escapeXml(group ?? 'whole class')}</span></h2>`,
    `<p class="count">${told}</p>`,
    printButton(id, 'Print this set'),
    '</div>',
  ].join('\n')
}

/** It needs the page's script, and shows only where that runs. */
function printButton(id: string, words: string): string {
  return `<button type="button" data-print="${id}" aria-describedby="${id}-title" hidden>${words}</button>`
}

interface Drawing {
  readonly item: PrintedItem
  readonly ids: ArtIds
  readonly outlines: OutlineIds
}

function row(drawing: Drawing, sheets: readonly NumberedSheet[]): string {
  return `<ol class="sheets">\n${sheets.map(sheet => sheetFigure(drawing, sheet)).join('\n')}\n</ol>`
}

function sheetFigure({ item, ids, outlines }: Drawing, { sheet, page }: NumberedSheet): string {
  const id = `sheet-${anchor(item.name)}-${page}`
  const [width, height] = [toDecimal(sheet.widthMm), toDecimal(sheet.heightMm)]
  const side = sheet.side === 'back' ? ', back' : ''
  return [
    `<li class="sheet" id="${id}" data-paper="${width}x${height}">`,
    `<a class="small" href="#${id}" aria-label="${escapeXml(`${sheet.title}, page ${page}${side}: show in true size`)}">`,
    `<svg ${svgSize(sheet)} role="img">`,
    `<title>${escapeXml(sheet.title)}</title>`,
    sheetBody(sheet, ids, outlines),
    '</svg></a>',
    `<p class="page">${item.sheets.length === 1 ? '' : `${page}${side} `}<a class="back" href="#${itemAnchor(item.name)}">make small again</a></p>`,
    '</li>',
  ].join('\n')
}

function noteList(notes: readonly string[]): readonly string[] {
  if (notes.length === 0) return []
  return [`<ul class="notes">${notes.map(note => `<li>${escapeXml(note)}</li>`).join('')}</ul>`]
}

function fold(
  kind: string,
  summary: string,
  drawing: Drawing,
  sheets: readonly NumberedSheet[],
): readonly string[] {
  if (sheets.length === 0) return []
  const id = `${kind}-${anchor(drawing.item.name)}`
  const count = sheets.length === 1 ? '1 page' : `${sheets.length} pages`
  return [
    `<details id="${id}" class="answers"><summary>${summary}: ${count}</summary>`,
    `<p class="folded-print">${printButton(id, 'Print these pages').replace(`${id}-title`, `${itemAnchor(drawing.item.name)}-title`)}</p>`,
    row(drawing, sheets),
    '</details>',
  ]
}

function fittingFold(notes: readonly string[]): readonly string[] {
  if (notes.length === 0) return []
  return [
    '<details class="fitting"><summary>How large the words came out</summary>',
    ...noteList(notes),
    '</details>',
  ]
}

/** A name as an id that a link can point to: letters, digits and hyphens stay, the rest becomes `_` and a code. */
function anchor(name: string): string {
  return name.replace(/[^A-Za-z0-9-]/gu, sign => `_${sign.codePointAt(0)!.toString(16)}_`)
}
