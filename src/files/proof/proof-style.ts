import { fontFaceRules, type PageFonts } from './page-fonts.js'

export interface StyleRequest {
  /** Papers of the sheets, `215.9x279.4`, in mm. */
  readonly sizes: readonly string[]
  readonly pageFonts?: PageFonts | undefined
}

/**
 * The proof page's style. Each paper size gets a named page (CSS Paged Media Module Level 3, §4) without
 * margins, so that a browser prints every sheet at its true size. Outlines go, since a browser prints the one
 * that shows the keyboard's place.
 */
export function proofPageStyle({ sizes, pageFonts }: StyleRequest): string {
  const family = pageFonts === undefined ? '' : `"${pageFonts.family}", `
  return [
    pageFonts === undefined ? '' : fontFaceRules(pageFonts),
    screenStyle.replace('FAMILY', `${family}system-ui, sans-serif`),
    sizes.map(paperRules).join(''),
    printStyle,
    sizes.map(pageRule).join(''),
  ].join('')
}

/** Sheets of wide paper are a little wider in the row, so that all have about one area. */
function paperRules(size: string): string {
  const [width, height] = size.split('x').map(Number) as [number, number]
  const rem = Math.min(13, 9 * Math.sqrt(width / height / 0.7727))
  return (
    `.sheet[data-paper="${size}"] { width: ${rem.toFixed(2)}rem }\n` +
    `.sheet[data-paper="${size}"]:target { width: 100% }\n` +
    `.sheet[data-paper="${size}"]:target svg { width: ${width}mm; height: ${height}mm }\n`
  )
}

function pageRule(size: string): string {
  const [width, height] = size.split('x')
  const name = `paper-${size.replaceAll('.', '_')}`
  const here = `.sheet[data-paper="${size}"]`
  return (
    `@page ${name} { size: ${width}mm ${height}mm; margin: 0 }\n` +
    `@media print { ${here}, ${here}:target { page: ${name}; width: ${width}mm; height: ${height}mm }\n` +
    `${here} svg, ${here}:target svg { width: ${width}mm; height: ${height}mm } }\n`
  )
}

/** Ink on the colours of uncoated card; green for what can be pressed, rust for what is to be looked at twice. */
const screenStyle = `:root { color-scheme: light; --ink: #2a241c; --quiet: #5f5547; --card: #fffdf8; --desk: #f5f0e4; --tag: #eddcb2; --edge: #cfbf9d; --press: #22543d; --twice: #8a3b12 }
* { box-sizing: border-box }
html { -webkit-text-size-adjust: 100%; text-size-adjust: 100% }
body { margin: 0; font: 1rem/1.5 FAMILY; color: var(--ink); background: var(--desk); overflow-wrap: anywhere }
a { color: var(--press) }
a:focus-visible, summary:focus-visible, button:focus-visible, main:focus-visible { outline: 3px solid var(--press); outline-offset: 3px; border-radius: 3px }
h1, h2 { line-height: 1.2; margin: 0; text-wrap: balance }
h1 { font-size: clamp(1.7rem, 1.2rem + 2.4vw, 2.6rem) }
h2 { font-size: 1.3rem }
.skip { position: absolute; left: 1rem; top: -4rem; padding: 0.5rem 1rem; background: var(--card); z-index: 1 }
.skip:focus { top: 0.5rem }
header, main, footer { padding: 0 max(clamp(0.75rem, 3vw, 2rem), (100% - 76rem) / 2) }
header { padding-top: clamp(1.25rem, 3vw, 2rem); padding-bottom: 1rem; background: var(--tag); border-bottom: 1px solid var(--edge) }
header p { margin: 0.35rem 0 0 }
header .class { color: var(--quiet); margin: 0 0 0.25rem }
.twice a { color: var(--twice); font-weight: 700 }
.week { border-collapse: collapse; margin-top: 1rem; background: var(--card); border: 1px solid var(--edge) }
.week caption { text-align: left; font-weight: 700; padding-bottom: 0.35rem }
.week th, .week td { text-align: left; vertical-align: top; padding: 0.25rem 0.75rem }
.week [scope=rowgroup] { white-space: nowrap }
.week thead th { color: var(--quiet); font-weight: 400; border-bottom: 1px solid var(--edge) }
.week tbody + tbody { border-top: 1px solid var(--edge) }
@media (max-width: 40rem) { .week th, .week td { padding: 0.25rem 0.3rem } .week td:nth-last-child(3) { min-width: 5.5rem } .week :is(th, td):nth-last-child(2) { display: none } }
main { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(100%, 20rem), 1fr)); gap: 1rem; margin-top: 1.25rem }
.item { background: var(--card); border: 1px solid var(--edge); border-radius: 0.5rem; padding: 1rem clamp(0.75rem, 2.5vw, 1.5rem); min-width: 0 }
.item.several, .item:has(:target), .item:has([open]) { grid-column: 1 / -1 }
.head { display: grid; grid-template-columns: minmax(0, 1fr) auto; gap: 0.1rem 1rem; align-items: start }
.head button { grid-column: 2; grid-row: 1 / span 2 }
.head button[data-show] { grid-column: 1; grid-row: 3; justify-self: start; margin-top: 0.4rem }
.head h2 a { color: inherit; text-decoration: none }
.head h2 a:hover { text-decoration: underline }
@media (max-width: 30rem) {
  .head { grid-template-columns: minmax(0, 1fr) }
  .head button { grid-area: auto; justify-self: start; margin-top: 0.4rem }
}
.head .for { display: inline-block; font-weight: 400; font-size: 1rem; color: var(--quiet) }
.head .count { margin: 0; color: var(--quiet) }
button { font: inherit; font-weight: 700; color: #ffffff; background: var(--press); border: 0; border-radius: 0.4rem; padding: 0.5rem 1rem; min-height: 2.75rem; cursor: pointer }
button:hover { background: #173b2b }
.sheets { display: flex; flex-wrap: wrap; gap: 1rem; align-items: flex-end; list-style: none; margin: 0.9rem 0 0; padding: 0 }
.sheet { margin: 0; max-width: 100% }
@media (max-width: 30rem) { .sheet:not(:target) { max-width: calc(50% - 0.5rem) } }
.sheet .small { display: block }
.sheet svg { display: block; width: 100%; height: auto; background: #ffffff; box-shadow: 0 0 0 1px var(--edge), 0 1px 3px rgb(42 36 28 / 0.25) }
.sheet .page { margin: 0.3rem 0 0; font-size: 0.875rem; color: var(--quiet) }
.sheet .back { display: none }
.sheet:target { max-width: none; overflow-x: auto; scroll-margin-top: 1rem }
.sheet:target .back { display: inline }
html.showing { overflow: hidden; background: #ffffff }
.showing body > :not(main), .showing .item:not(:has(.now)), .showing .sheet:not(.now), .showing .head, .showing .notes, .showing details, .showing .page { display: none }
.showing .sheet.sheet.now { position: fixed; inset: 0; z-index: 2; width: auto; max-width: none; background: #ffffff }
.showing .sheet.sheet.now a { outline: none }
.showing .sheet.sheet.now svg { width: 100vw; height: 100vh; box-shadow: none }
.notes { margin: 0.9rem 0 0; padding-left: 1.2rem; max-width: 46rem }
details { margin-top: 0.25rem }
summary { cursor: pointer; padding: 0.4rem 0; color: var(--press); width: fit-content }
details .folded-print { margin: 0.25rem 0 0 }
footer { padding-top: 0.5rem; padding-bottom: 3rem }
footer h2 { margin-top: 1.5rem }
footer ul { margin: 0.4rem 0 0; padding-left: 1.2rem; max-width: 46rem }
footer #twice { color: var(--twice) }
.made { margin-top: 1.5rem; color: var(--quiet); font-size: 0.875rem }
.defs { position: absolute; width: 0; height: 0 }
`

const printStyle = `@media print {
  body { background: none }
  header, footer, main { margin: 0; padding: 0 }
  header, footer, .skip, .head, summary, .page, .notes, .fitting, .folded-print { display: none }
  main { display: block }
  .item, details { border: 0; margin: 0; padding: 0; background: none; border-radius: 0 }
  .sheets { display: block; margin: 0 }
  .sheet:not(:target), .sheet:target { max-width: none; break-before: page; break-inside: avoid; overflow: hidden }
  .sheet svg, .sheet:target svg { box-shadow: none }
  * { outline: none !important }
  details:not([open]) { display: none }
  html:not(.choosing) body:has(.item:target) .item:not(:target) { display: none }
  html:not(.choosing) body:has(.sheet:target) :is(.item, details, .sheets):not(:has(:target)) { display: none }
  html:not(.choosing) body:has(.sheet:target) .sheet:not(:target) { display: none }
  html:not(.choosing) .item.screen:not(:has(:target), :target) { display: none }
  .choosing .item:not(.chosen, :has(.chosen)) { display: none }
  .choosing .item:has(.chosen) > .sheets { display: none }
}
`
