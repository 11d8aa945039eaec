import type { Sheet } from '../../sheets/sheet.js'
import { toDecimal } from './decimal.js'
import { artDefinitions, sharedArtIds, sheetBody } from './svg-body.js'
import { escapeXml } from './xml.js'

/**
 * The sheet as an SVG file in true size: one user unit is one millimetre. The title comes first and the role is
 * `img`, so that it is announced as one picture with its name (SVG Accessibility API Mappings, W3C).
 * An art that stands several times is written once and referred to. The `@page` rule (CSS Paged Media Module Level 3,
 * §4) lets a browser that opens the file print it in true size; without it the browser shrinks it to its own margins.
 */
export function sheetToSvg(sheet: Sheet): string {
  const ids = sharedArtIds([sheet], 'art-')
  return `${[
    `<svg xmlns="http://www.w3.org/2000/svg" ${svgSize(sheet)} role="img">`,
    `<title>${escapeXml(sheet.title)}</title>`,
    `<style>@page { size: ${toDecimal(sheet.widthMm)}mm ${toDecimal(sheet.heightMm)}mm; margin: 0 }</style>`,
    artDefinitions(ids),
    sheetBody(sheet, ids),
    '</svg>',
  ]
    .filter(line => line !== '')
    .join('\n')}\n`
}

/** `width` and `height` in mm, and the `viewBox` that makes a user unit a millimetre. */
export function svgSize(sheet: Sheet): string {
  const width = toDecimal(sheet.widthMm)
  const height = toDecimal(sheet.heightMm)
  return `width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}"`
}
