import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { PageFonts } from '../src/files/proof/page-fonts.js'
import { bundledTypefaces, defaultTypeface } from './index.js'

let read: PageFonts | undefined

/** The default typeface for pages that a browser shows: its Latin subset in two weights, packed. */
export function pageFonts(): PageFonts {
  read ??= readFonts()
  return read
}

function readFonts(): PageFonts {
  const find = createRequire(import.meta.url).resolve
  const { family } = bundledTypefaces.find(({ name }) => name === defaultTypeface)!
  const faces = [400, 700].map(weight => ({
    weight,
    woff2: readFileSync(
      find(`@fontsource/${defaultTypeface}/files/${defaultTypeface}-latin-${weight}-normal.woff2`),
    ),
  }))
  return { family, faces }
}
