import { dirname, resolve } from 'node:path'
import { fail, succeed } from '../../outcomes.js'
import { errorAt } from '../../problems.js'
import type { FileAccess } from '../disk/file-access.js'
import { nameReader } from '../values/names.js'
import type { Reader } from '../yaml/entry.js'

/** OpenType 1.9, "Organization of an OpenType font": the first four bytes of TrueType and of CFF outlines. */
const signatures = ['\0\x01\0\0', 'OTTO', 'true']

export interface FontNames {
  readonly known: readonly string[]
  readonly files: FileAccess
  readonly namedIn: string
}

/** A registered typeface's name, or the path of a .ttf or .otf file, which is given as an absolute path. */
export function fontReader({ known, files, namedIn }: FontNames): Reader<string> {
  const named = nameReader({ what: 'a font', known, where: '`oaktag list fonts` shows all of them.' })
  return entry => {
    if (entry.kind !== 'text' || !/\.(?:ttf|otf)$/i.test(entry.text)) return named(entry)
    const path = resolve(dirname(namedIn), entry.text)
    const found = files.beginning(path, 4)
    if (found.kind !== 'bytes') {
      const advice = 'Give the path of a .ttf or .otf file, relative to the plan, or the name of a typeface.'
      return fail(errorAt(entry.place, `no font file "${entry.text}" can be read`, advice))
    }
    if (signatures.includes(String.fromCharCode(...found.bytes))) return succeed(path)
    const message = `"${entry.text}" holds no TrueType or OpenType font`
    return fail(
      errorAt(entry.place, message, 'Use a .ttf or .otf file; web fonts and collections are not read.'),
    )
  }
}
