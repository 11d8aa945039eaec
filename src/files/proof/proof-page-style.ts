/**
 * The proof page's style. Each paper size gets a named page (CSS Paged Media Module Level 3, §4) without
 * margins, so that a browser prints every sheet at its true size. Outlines go, since a browser prints the one
 * that shows the keyboard's place. `sizes` are `215.9x279.4`, in mm.
 */
export function proofPageStyle(sizes: readonly string[]): string {
  return screenStyle + printStyle + sizes.map(pageRule).join('')
}

function pageRule(size: string): string {
  const [width, height] = size.split('x')
  const name = `paper-${size.replaceAll('.', '_')}`
  return (
    `@page ${name} { size: ${width}mm ${height}mm; margin: 0 }\n` +
    `.sheet[data-paper="${size}"] { page: ${name} }\n`
  )
}

const screenStyle = `body { margin: 1.5rem; font: 1rem/1.5 system-ui, sans-serif; color: #1a1a1a; background: #f4f4f1 }
h1, h2 { line-height: 1.2; margin: 1.5rem 0 0.5rem }
header ul { padding-left: 1.2rem; max-width: 46rem }
table { border-collapse: collapse; margin: 1rem 0 }
caption { text-align: left; font-weight: bold }
th, td:nth-child(2), td:nth-child(4) { white-space: nowrap }
td:nth-child(3) { min-width: 9rem }
td ul { margin: 0; padding-left: 1.1rem }
th, td { border-bottom: 1px solid #999; padding: 0.3rem 1rem 0.3rem 0; text-align: left; vertical-align: top }
a { color: #0b4a6f }
a:focus-visible, summary:focus-visible { outline: 3px solid #0b4a6f; outline-offset: 2px }
summary { cursor: pointer; padding: 0.5rem 0 }
.defs { position: absolute }
.sheets { display: grid; grid-template-columns: repeat(auto-fill, minmax(11rem, 1fr)); gap: 1rem; align-items: end }
.sheet { margin: 0 }
.sheet svg { display: block; width: 100%; height: auto; background: #fff; box-shadow: 0 0 0 1px #999 }
.sheet .back { display: none }
.sheet:target { grid-column: 1 / -1; overflow-x: auto }
.sheet:target svg { width: var(--width); height: var(--height) }
.sheet:target .back { display: inline }
`

const printStyle = `@media print {
  body { margin: 0; background: none }
  header, footer, h2, summary, figcaption { display: none }
  .sheets { display: block }
  .sheet, .sheet:target { break-before: page; break-inside: avoid; overflow: hidden; width: var(--width); height: var(--height) }
  .sheet svg, .sheet:target svg { width: var(--width); height: var(--height); box-shadow: none }
  * { outline: none !important }
  details:not([open]) { display: none }
  body:has(.item:target) .item:not(:target) { display: none }
  body:has(.sheet:target) :is(.item, details, .sheets):not(:has(:target)) { display: none }
  body:has(.sheet:target) .sheet:not(:target) { display: none }
}
`
