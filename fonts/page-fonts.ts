import { readFileSync } from 'node:fs'
import type { PageFonts } from '../src/files/proof/page-fonts.js'
import { bundledTypefaces, defaultTypeface } from './index.js'
import { packageFile } from './package-file.js'

let read: PageFonts | undefined

/** The default typeface for pages that a browser shows: its Latin subset in two weights, packed. */
export function pageFonts(): PageFonts {
  read ??= readFonts()
  return read
}

function readFonts(): PageFonts {
  const { family } = bundledTypefaces.find(({ name }) => name === defaultTypeface)!
  const faces = [400, 700].map(weight => ({
    weight,
    woff2: readFileSync(
      packageFile(`@fontsource/${defaultTypeface}`, `files/${defaultTypeface}-latin-${weight}-normal.woff2`),
    ),
  }))
  return { family, faces }
}
