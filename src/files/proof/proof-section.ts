import type { Sheet, SheetKind } from '../../sheets/sheet.js'
import type { ManifestItem } from '../manifest.js'
import { toDecimal } from '../page/decimal.js'
import { sharedArts } from '../page/shared-arts.js'
import { svgSize } from '../page/svg.js'
import { type ArtMarkup, artDefinition, sheetBody } from '../page/svg-body.js'
import { escapeXml } from '../page/xml.js'
import type { PrintedItem, PrintedSheet } from '../printed-plan.js'
import { anchor, itemAnchor } from './item-anchor.js'
import { sheetsOfStock } from './sheet-counts.js'
import { asSpooled, type SpooledText, type TextSpool } from './text-spool.js'
import { howToPrint } from './week-overview.js'

/** What gives the game away: printed for the teacher, folded on the proof page. */
const forTheTeacher: readonly SheetKind[] = ['key', 'answers', 'notes', 'caller']

/** An item's part of the proof page, in pieces of text that follow one another. */
export type SectionText = readonly SpooledText[]

export interface ProofSection {
  /** Takes the item's sheets one after another; they need not be held. */
  readonly add: (sheet: Sheet) => void
  /** After the last sheet: what the item is, for whom, its sheets drawn in place, what is to be known of it. */
  readonly text: () => SectionText
}

/** The item's part of the proof page. */
export function proofSection(
  item: PrintedItem<PrintedSheet>,
  markupOf: ArtMarkup,
  spool: TextSpool,
): ProofSection {
  const artsOf = sharedArts(`${anchor(item.name)}-art-`)
  // Where nothing is left in sight, as with a key alone, nothing is folded either.
  const some = item.sheets.some(({ kind }) => !forTheTeacher.includes(kind))
  const definitions: SpooledText[] = []
  const inSight: SpooledText[] = []
  const folded: SpooledText[] = []
  let page = 0
  return {
    add: sheet => {
      page += 1
      const { ids, first } = artsOf(sheet)
      for (const art of first) definitions.push(spool(artDefinition(art, markupOf)))
      const figures = some && forTheTeacher.includes(sheet.kind) ? folded : inSight
      const figure = sheetFigure({ item, sheet, page, body: sheetBody(sheet, ids, markupOf) })
      figures.push(spool(`${figure}\n`))
    },
    text: () => [
      asSpooled(`${sectionStart(item.name, sectionKind(item, inSight.length))}\n${heading(item)}\n`),
      asSpooled('<svg class="defs" width="0" height="0" aria-hidden="true"><defs>'),
      ...definitions,
      asSpooled('</defs></svg>\n'),
      ...row(inSight),
      asSpooled(noteList(item.notes.filter(note => !item.fittingNotes.includes(note)))),
      ...fold('answers', 'Key and answers', item, folded),
      asSpooled(`${fittingFold(item.fittingNotes)}${sectionEnd}`),
    ],
  }
}

export const sectionEnd = '</section><!-- end of item -->'

function sectionKind({ paper }: PrintedItem<PrintedSheet>, inSight: number): SectionKind {
  return paper.screen === true ? 'for the screen' : inSight > 1 ? 'several' : 'one'
}

export const sectionKinds = ['one', 'several', 'for the screen'] as const
type SectionKind = (typeof sectionKinds)[number]

/** A section with several sheets in sight takes the whole width; one for the screen is not printed with the others. */
const sectionClasses: Readonly<Record<SectionKind, string>> = {
  one: '',
  several: ' several',
  'for the screen': ' several screen',
}

export function sectionStart(name: string, kind: SectionKind): string {
  const id = itemAnchor(name)
  return `<section class="item${sectionClasses[kind]}" id="${id}" aria-labelledby="${id}-title">`
}

/** For an item whose pictures are gone: its name and its files. */
export function sectionOfLinks(item: ManifestItem): string {
  const paths = item.pages.flatMap(({ svg, png }) => svg ?? png ?? [])
  const links = [item.pdf ?? [], paths].flat().map(path => `<li>${fileLink(path, path)}</li>`)
  return [
    sectionStart(item.name, 'one'),
    `<h2 id="${itemAnchor(item.name)}-title">${escapeXml(item.name)}</h2>`,
    `<ul>${links.join('')}</ul>`,
    sectionEnd,
  ].join('\n')
}

/** A link to a file beside the proof page. */
export function fileLink(path: string, words: string): string {
  const href = path.split('/').map(encodeURIComponent).join('/')
  return `<a href="${href}">${escapeXml(words)}</a>`
}

function heading({ name, title, group, paper, sheets, week }: PrintedItem<PrintedSheet>): string {
  const id = itemAnchor(name)
  const told = `${sheetsOfStock(sheets)}, size ${escapeXml(paper.name)}`
  return [
    '<div class="head">',
    `<h2 id="${id}-title"><a href="#${id}">${escapeXml(title)}</a> <span class="for">${escapeXml(group ?? 'whole class')}</span></h2>`,
    `<p class="count">${told}${week === undefined ? '' : `<br>${escapeXml(howToPrint(week))}`}</p>`,
    ...(paper.screen === true ? [showButton(id)] : []),
    printButton(id, 'Print this set'),
    '</div>',
  ].join('\n')
}

/** It needs the page's script, and shows only where that runs. */
function printButton(id: string, words: string): string {
  return `<button type="button" data-print="${id}" aria-describedby="${id}-title" hidden>${words}</button>`
}

/** It fills the screen with one page after another, and shows only where the page's script runs. */
function showButton(id: string): string {
  return `<button type="button" data-show="${id}" aria-describedby="${id}-title" hidden>Show on the screen</button>`
}

function row(figures: readonly SpooledText[]): SectionText {
  return [asSpooled('<ol class="sheets">\n'), ...figures, asSpooled('</ol>\n')]
}

interface Figure {
  readonly item: PrintedItem<PrintedSheet>
  readonly sheet: Sheet
  readonly page: number
  readonly body: string
}

function sheetFigure({ item, sheet, page, body }: Figure): string {
  const id = `sheet-${anchor(item.name)}-${page}`
  const [width, height] = [toDecimal(sheet.widthMm), toDecimal(sheet.heightMm)]
  const side = sheet.side === 'back' ? ', back' : ''
  return [
    `<li class="sheet" id="${id}" data-paper="${width}x${height}">`,
    `<a class="small" href="#${id}" aria-label="${escapeXml(`${sheet.title}, page ${page}${side}: show in true size`)}">`,
    `<svg ${svgSize(sheet)} role="img">`,
    `<title>${escapeXml(sheet.title)}</title>`,
    body,
    '</svg></a>',
    `<p class="page">${item.sheets.length === 1 ? '' : `${page}${side} `}<a class="back" href="#${itemAnchor(item.name)}">make small again</a></p>`,
    '</li>',
  ].join('\n')
}

function noteList(notes: readonly string[]): string {
  if (notes.length === 0) return ''
  return `<ul class="notes">${notes.map(note => `<li>${escapeXml(note)}</li>`).join('')}</ul>\n`
}

function fold(
  kind: string,
  summary: string,
  { name }: PrintedItem<PrintedSheet>,
  figures: readonly SpooledText[],
): SectionText {
  if (figures.length === 0) return []
  const id = `${kind}-${anchor(name)}`
  const count = figures.length === 1 ? '1 page' : `${figures.length} pages`
  const button = printButton(id, 'Print these pages').replace(`${id}-title`, `${itemAnchor(name)}-title`)
  return [
    asSpooled(
      `<details id="${id}" class="answers"><summary>${summary}: ${count}</summary>\n<p class="folded-print">${button}</p>\n`,
    ),
    ...row(figures),
    asSpooled('</details>\n'),
  ]
}

function fittingFold(notes: readonly string[]): string {
  if (notes.length === 0) return ''
  return `<details class="fitting"><summary>How large the words came out</summary>\n${noteList(notes)}</details>\n`
}
