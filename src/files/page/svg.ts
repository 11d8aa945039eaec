import type { Sheet } from '../../sheets/sheet.js'
import { toDecimal } from './decimal.js'
import { artDefinitions, sharedArtIds, sheetTexts } from './svg-body.js'
import { escapeXml } from './xml.js'

/**
 * The sheet as an SVG file in true size: one user unit is one millimetre. The title comes first and the role is
 * `img`, so that it is announced as one picture with its name (SVG Accessibility API Mappings, W3C).
 * An art that stands several times is written once and referred to. The `@page` rule (CSS Paged Media Module Level 3,
 * §4) lets a browser that opens the file print it in true size; without it the browser shrinks it to its own margins.
 */
export function sheetToSvg(sheet: Sheet): string {
  return svgTexts(sheet).join('')
}

/** The same in texts that follow one another: a page is written faster than it is put together. */
export function svgTexts(sheet: Sheet): readonly string[] {
  const ids = sharedArtIds([sheet], 'art-')
  const head = [
    `<svg xmlns="http://www.w3.org/2000/svg" ${svgSize(sheet)} role="img">`,
    `<title>${escapeXml(sheet.title)}</title>`,
    `<style>@page { size: ${toDecimal(sheet.widthMm)}mm ${toDecimal(sheet.heightMm)}mm; margin: 0 }</style>`,
    artDefinitions(ids),
  ]
  const body = sheetTexts(sheet, ids)
  return [
    `${head.filter(line => line !== '').join('\n')}\n`,
    ...body,
    body.length === 0 ? '</svg>\n' : '\n</svg>\n',
  ]
}

/** `width` and `height` in mm, and the `viewBox` that makes a user unit a millimetre. */
export function svgSize(sheet: Sheet): string {
  const width = toDecimal(sheet.widthMm)
  const height = toDecimal(sheet.heightMm)
  return `width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}"`
}
