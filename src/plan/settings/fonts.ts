import { dirname, resolve } from 'node:path'
import { fail, succeed } from '../../outcomes.js'
import { errorAt } from '../../problems.js'
import type { FileAccess } from '../disk/file-access.js'
import { reading, type ValueReader } from '../keys/key.js'
import type { Takes } from '../keys/takes.js'
import { nameReader } from '../values/names.js'
import type { Vocabulary } from '../vocabulary.js'

export interface FontNames {
  readonly known: readonly string[]
  readonly faultOfFont: Vocabulary['faultOfFont']
  readonly files: FileAccess
  readonly namedIn: string
}

/** A registered typeface's name, or the path of a .ttf, .otf or .woff file, which is given as an absolute path. */
export function fontReader({ known, faultOfFont, files, namedIn }: FontNames): ValueReader<string> {
  const named = nameReader({
    what: 'a font',
    known,
    where: '`oaktag list fonts` shows all of them.',
    list: 'fonts',
  })
  const path: Takes = {
    kind: 'form',
    what: 'the path of a .ttf, .otf or .woff file beside the plan',
    samples: ['school-hand.ttf'],
    pattern: String.raw`\.(?:ttf|otf|woff)$`,
  }
  return reading({ kind: 'any of', ways: [named.takes, path] }, entry => {
    if (entry.kind !== 'text' || !/\.(?:ttf|otf|woff)$/i.test(entry.text)) return named(entry)
    const path = resolve(dirname(namedIn), entry.text)
    if (files.beginning(path, 4).kind !== 'bytes') {
      const advice =
        'Give the path of a .ttf, .otf or .woff file, relative to the plan, or the name of a typeface.'
      return fail(errorAt(entry.place, `no font file "${entry.text}" can be read`, advice))
    }
    const fault = faultOfFont(path, files)
    if (fault === undefined) return succeed(path)
    const advice =
      'Give another font file, TTF or OTF, with the letters a to z; WOFF2 and collections are not read.'
    return fail(errorAt(entry.place, `the font "${entry.text}" cannot be used: ${fault}`, advice))
  })
}
