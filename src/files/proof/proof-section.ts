import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import type { Sheet, SheetKind } from '../../sheets/sheet.js'
import { systemCode } from '../folder/file-problem.js'
import type { ManifestItem } from '../manifest.js'
import { toDecimal } from '../page/decimal.js'
import { svgSize } from '../page/svg.js'
import { type ArtIds, artDefinitions, sharedArtIds, sheetBody } from '../page/svg-body.js'
import { escapeXml } from '../page/xml.js'
import type { PrintedItem } from '../printed-plan.js'

/** What gives the game away: printed for the teacher, folded on the proof page. */
const forTheTeacher: readonly SheetKind[] = ['key', 'answers', 'caller']

/** The item's part of the proof page: every sheet as a picture drawn in place, and its arts defined once. */
export function proofSection(item: PrintedItem): string {
  const ids = sharedArtIds(item.sheets, `${anchor(item.name)}-art-`)
  const numbered = item.sheets.map((sheet, index) => ({ sheet, page: index + 1 }))
  const open = numbered.filter(({ sheet }) => !forTheTeacher.includes(sheet.kind))
  const folded = numbered.filter(({ sheet }) => forTheTeacher.includes(sheet.kind))
  const figures = (pages: typeof numbered): string =>
    pages.map(({ sheet, page }) => sheetFigure(item.name, sheet, page, ids)).join('\n')
  return [
    sectionStart(item.name),
    `<h2>${escapeXml(item.name)}</h2>`,
    `<svg class="defs" width="0" height="0" aria-hidden="true">${artDefinitions(ids)}</svg>`,
    open.length > 0 ? `<div class="sheets">\n${figures(open)}\n</div>` : '',
    folded.length > 0
      ? `<details><summary>Key and answers: ${sheetCount(folded.length)}</summary>\n` +
        `<div class="sheets">\n${figures(folded)}\n</div></details>`
      : '',
    sectionEnd,
  ]
    .filter(line => line !== '')
    .join('\n')
}

/** The parts of items that are kept from the last run, taken from its proof page; where one is not found, links to its files. */
export async function keptSections(
  items: readonly ManifestItem[],
  folder: string,
): Promise<ReadonlyMap<string, string>> {
  const page = items.length === 0 ? '' : await readProofPage(folder)
  return new Map(items.map(item => [item.name, sectionIn(page, item.name) ?? sectionOfLinks(item)]))
}

/** The id of an item's part. */
export function itemAnchor(name: string): string {
  return `item-${anchor(name)}`
}

function sheetFigure(name: string, sheet: Sheet, page: number, ids: ArtIds): string {
  const id = `sheet-${anchor(name)}-${page}`
  const [width, height] = [toDecimal(sheet.widthMm), toDecimal(sheet.heightMm)]
  const side = sheet.side === 'back' ? ', back' : ''
  return [
    `<figure class="sheet" id="${id}" data-paper="${width}x${height}" style="--width:${width}mm;--height:${height}mm">`,
    `<a href="#${id}" aria-label="${escapeXml(`${sheet.title}, page ${page}${side}: show in true size`)}">`,
    `<svg ${svgSize(sheet)} role="img">`,
    `<title>${escapeXml(sheet.title)}</title>`,
    sheetBody(sheet, ids),
    '</svg></a>',
    `<figcaption>Page ${page}${side} <a class="back" href="#${itemAnchor(name)}">make small again</a></figcaption>`,
    '</figure>',
  ].join('\n')
}

const sectionEnd = '</section><!-- end of item -->'

function sectionStart(name: string): string {
  return `<section class="item" id="${itemAnchor(name)}">`
}

function sectionIn(page: string, name: string): string | undefined {
  const start = page.indexOf(`\n${sectionStart(name)}\n`) + 1
  const end = page.indexOf(sectionEnd, start)
  return start === 0 || end < 0 ? undefined : page.slice(start, end + sectionEnd.length)
}

function sectionOfLinks(item: ManifestItem): string {
  const paths = item.pages.flatMap(({ svg, png }) => svg ?? png ?? [])
  const links = [item.pdf ?? [], paths].flat().map(path => `<li>${fileLink(path, path)}</li>`)
  return `${sectionStart(item.name)}\n<h2>${escapeXml(item.name)}</h2>\n<ul>${links.join('')}</ul>\n${sectionEnd}`
}

async function readProofPage(folder: string): Promise<string> {
  try {
    return await readFile(join(folder, 'index.html'), 'utf8')
  } catch (error) {
    if (systemCode(error) === 'ENOENT') return ''
    throw error
  }
}

/** A name as an id that a link can point to: letters, digits and hyphens stay, the rest becomes `_` and a code. */
function anchor(name: string): string {
  return name.replace(/[^A-Za-z0-9-]/gu, sign => `_${sign.codePointAt(0)!.toString(16)}_`)
}

function sheetCount(count: number): string {
  return count === 1 ? '1 sheet' : `${count} sheets`
}

/** A link to a file beside the proof page. */
export function fileLink(path: string, words: string): string {
  const href = path.split('/').map(encodeURIComponent).join('/')
  return `<a href="${href}">${escapeXml(words)}</a>`
}
