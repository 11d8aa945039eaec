import type { Manifest, ManifestPrint } from '../manifest.js'
import { escapeXml } from '../page/xml.js'
import type { PageFonts } from './page-fonts.js'
import { pagePolicy } from './page-policy.js'
import { needsOf, type ProofParts } from './proof-parts.js'
import { proofScript } from './proof-script.js'
import { fileLink } from './proof-section.js'
import { proofPageStyle } from './proof-style.js'
import { sheetsOfStock } from './sheet-counts.js'
import { weekOverview } from './week-overview.js'

export interface ProofPageRequest {
  readonly manifest: Manifest
  readonly parts: ProofParts
  /** What is to be looked at twice, in plain sentences. */
  readonly warnings: readonly string[]
  readonly pageFonts?: PageFonts | undefined
}

/** index.html: the whole set to look over and to print, in one file that needs no network and no other file. */
export function proofPage(request: ProofPageRequest): string {
  return [...proofPageText(request)].join('')
}

/** The same a piece after the other: for a set of thousands of cards it is more than should be held at once. */
export function* proofPageText({
  manifest,
  parts,
  warnings,
  pageFonts,
}: ProofPageRequest): Generator<string, void> {
  const sections = manifest.items.map(item => parts.sections.get(item.name) ?? [])
  const { definitions, paperSizes, placed } = needsOf(sections, parts.definitions)
  const title = escapeXml(manifest.title)
  const style = `\n${proofPageStyle({ sizes: paperSizes, pageFonts })}`
  yield lines(
    '<!doctype html>',
    '<html lang="en-US">',
    '<head>',
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${pagePolicy({ script: proofScript, style })}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${title}</title>`,
    `<style>${style}</style>`,
    '</head>',
    '<body>',
    '<a class="skip" href="#sheets">Skip to the sheets</a>',
    header(manifest, warnings),
  )
  if (definitions.length > 0) {
    yield '<svg class="defs" width="0" height="0" aria-hidden="true"><defs>\n'
    for (const definition of definitions) yield lines(definition())
    yield lines('</defs></svg>')
  }
  yield lines('<main id="sheets" tabindex="-1">')
  for (const section of sections) {
    for (const text of section) yield placed(text)
    yield '\n'
  }
  yield lines('</main>', advice(manifest, warnings), `<script>${proofScript}</script>`, '</body>', '</html>')
}

function lines(...texts: readonly string[]): string {
  return texts.map(text => `${text}\n`).join('')
}

function header({ title, class: className, items }: Manifest, warnings: readonly string[]): string {
  const sets = items.length === 1 ? '1 set' : `${items.length} sets`
  const all = sheetsOfStock(items.flatMap(({ pages }) => pages))
  const twice =
    warnings.length === 1 ? '1 thing to look at twice' : `${warnings.length} things to look at twice`
  return [
    '<header>',
    className === '' ? '' : `<p class="class">${escapeXml(className)}</p>`,
    `<h1>${escapeXml(title)}</h1>`,
    `<p class="all">${sets}: ${all}. <a href="#how">How to print</a></p>`,
    warnings.length === 0 ? '' : `<p class="twice"><a href="#twice">${twice}</a></p>`,
    ...weekOverview(items),
    '</header>',
  ]
    .filter(line => line !== '')
    .join('\n')
}

function advice(manifest: Manifest, warnings: readonly string[]): string {
  const { oaktag, seed, pdf, prints = [] } = manifest
  return [
    '<footer>',
    ...(warnings.length === 0
      ? []
      : ['<h2 id="twice">Look at these twice</h2>', list(warnings.map(escapeXml))]),
    '<h2 id="how">How to print</h2>',
    list([...howToPrint, ...prints.map(printLine), ...(pdf === undefined ? [] : [wholeLine(pdf, manifest)])]),
    '<h2>Take care</h2>',
    list(cautions),
    `<p class="made">Made by oaktag ${escapeXml(oaktag)} with seed ${seed}.</p>`,
    '</footer>',
  ].join('\n')
}

/** Which PDF goes through the printer how. */
function printLine({ pdf, name, pages, notes }: ManifestPrint): string {
  const many = pages === 1 ? '1 page' : `${pages} pages`
  return `${fileLink(pdf, `All on ${name}`)}, ${many}. ${notes.map(escapeXml).join(' ')}`
}

/** Blank pages in a file surprise whoever looks it through. */
function wholeLine(pdf: string, { items }: Manifest): string {
  const hasBacks = items.some(({ pages }) => pages.some(({ side }) => side === 'back'))
  const blanks = 'A page in it that is left blank lets the set after it begin on the front of a sheet.'
  return `${fileLink(pdf, 'The whole set as one PDF')}.${hasBacks ? ` ${blanks}` : ''}`
}

function list(lines: readonly string[]): string {
  return `<ul>\n${lines.map(line => `<li>${line}</li>`).join('\n')}\n</ul>`
}

const howToPrint = [
  'Print at 100 % (“actual size”), without margins or headers: every sheet has a page of its own size.',
  'Print each sheet once: the copies that the plan asks for are among them.',
  'Choose a sheet to see it in true size and to print it alone; Escape makes it small again.',
  'Pages for the screen are not printed with the rest: “Show on the screen” fills it with one after another. Arrow keys turn them, Escape ends it.',
  'Keys and answers are folded away, and print only when their fold is open.',
]

/** The first of what every cover says. */
const cautions = [
  'Your school’s own rules and the child’s own plan come first.',
  'A grown-up works the trimmer, and latches the blade after each use.',
  'A grown-up works the laminator, and rounds laminated corners.',
  'Small pieces are not for children under three.',
]
