import type { Manifest, ManifestItem } from '../manifest.js'
import { escapeXml } from '../page/xml.js'
import { proofPageStyle } from './proof-page-style.js'
import { fileLink, itemAnchor } from './proof-section.js'

/**
 * index.html: the whole set to look over and to print, in one file that needs no network and no other file.
 * `sections` holds each item's part, by the item's name.
 */
export function proofPage(manifest: Manifest, sections: ReadonlyMap<string, string>): string {
  const parts = manifest.items.map(item => sections.get(item.name) ?? '')
  const title = escapeXml(manifest.title)
  return `${[
    '<!doctype html>',
    '<html lang="en-US">',
    '<head>',
    '<meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${title}</title>`,
    `<style>\n${proofPageStyle(paperSizes(parts))}</style>`,
    '</head>',
    '<body>',
    '<header>',
    `<h1>${title}</h1>`,
    manifest.class === '' ? '' : `<p>${escapeXml(manifest.class)}</p>`,
    howToPrint,
    manifest.pdf === undefined ? '' : `<p>${fileLink(manifest.pdf, 'The whole set as one PDF')}</p>`,
    contents(manifest.items),
    '</header>',
    '<main>',
    ...parts,
    '</main>',
    `<footer><p>Made by oaktag ${escapeXml(manifest.oaktag)} with seed ${manifest.seed}.</p></footer>`,
    '</body>',
    '</html>',
  ]
    .filter(line => line !== '')
    .join('\n')}\n`
}

const howToPrint = `<ul>
<li>Print at 100 % (“actual size”), without the browser’s margins or headers. Every sheet comes out on a page of its own size.</li>
<li>Print each sheet once: the copies that the plan asks for are among them.</li>
<li>Choose an item to print that item alone; choose a sheet to see it in true size and to print it alone.</li>
<li>Keys and answers are folded away. They print only when their fold is open.</li>
<li>A grown-up works the trimmer, and latches the blade after each use. A grown-up works the laminator. Small pieces are not for children under three.</li>
</ul>`

function contents(items: readonly ManifestItem[]): string {
  const rows = items.map(
    item =>
      `<tr><th scope="row"><a href="#${itemAnchor(item.name)}">${escapeXml(item.name)}</a></th>` +
      `<td>${escapeXml(item.group ?? 'whole class')}</td><td>${sheetsOfPaper(item)}</td>` +
      `<td>${escapeXml(item.paper.name)}</td>` +
      `<td>${notesOf(item)}</td></tr>`,
  )
  return [
    '<table>',
    '<caption>What to print</caption>',
    '<thead><tr><th scope="col">Item</th><th scope="col">For</th><th scope="col">Sheets</th>' +
      '<th scope="col">Paper</th><th scope="col">How</th></tr></thead>',
    `<tbody>\n${rows.join('\n')}\n</tbody>`,
    '</table>',
  ].join('\n')
}

function notesOf({ notes }: ManifestItem): string {
  if (notes.length < 2) return notes.map(escapeXml).join('')
  return `<ul>${notes.map(note => `<li>${escapeXml(note)}</li>`).join('')}</ul>`
}

/** Sheets with pieces to cut out go on card stock, the rest on paper. A back is printed on its front's sheet. */
function sheetsOfPaper({ pages }: ManifestItem): string {
  const fronts = pages.filter(page => page.side === 'front')
  const stock = fronts.filter(page => page.kind === 'pieces' || page.kind === 'labels').length
  const plain = fronts.length - stock
  const backs = pages.length - fronts.length
  return [
    stock > 0 ? `${stock} on card stock` : [],
    backs > 0 ? (backs === stock ? 'both sides' : `${backs} of them on both sides`) : [],
    plain > 0 ? `${plain} on paper` : [],
  ]
    .flat()
    .join(', ')
}

/** `215.9x279.4` for every size of paper that stands in the sections. */
function paperSizes(sections: readonly string[]): readonly string[] {
  const found = sections.flatMap(section => [...section.matchAll(/ data-paper="([\d.]+x[\d.]+)"/g)])
  return [...new Set(found.map(match => match[1]!))]
}
