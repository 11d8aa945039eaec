/** Reading a text file that a plan names, or the plan itself: UTF-8, and not larger than a plan can be. */

import { fail, succeed } from '../../outcomes.js'
import { errorAt, type Outcome, type Place } from '../../problems.js'
import type { FileAccess } from './file-access.js'

const largestBytes = 1_000_000

export interface TextFile {
  /** Path for opening it, and for naming it where it turns out unreadable. */
  readonly path: string
  /** With its article: `the plan`, `the word list`. */
  readonly what: string
  /** Where a missing file is told: the line that names it, or the file itself. */
  readonly place: Place
}

/** The text without a byte-order mark, line ends made `\n`. */
export function readTextFile({ path, what, place }: TextFile, files: FileAccess): Outcome<string> {
  const found = files.read(path, largestBytes)
  switch (found.kind) {
    case 'missing':
      return fail(errorAt(place, `${what} "${path}" is not there`, 'Check the name and the folder.'))
    case 'folder':
      return fail(errorAt(place, `"${path}" is a folder, not a file`, 'Name the file inside the folder.'))
    case 'unreadable':
      return fail(errorAt(place, `${what} "${path}" cannot be read`, 'Check that you may open the file.'))
    case 'too large':
      return fail(
        errorAt(
          place,
          `${what} "${path}" has ${(found.sizeBytes / 1e6).toFixed(1)} million bytes`,
          'Up to 1 million are read; check that it is the file you mean.',
        ),
      )
    case 'bytes':
      return decoded(found.bytes, path)
  }
}

function decoded(bytes: Uint8Array, path: string): Outcome<string> {
  const saveAdvice = 'Open it in an editor and save it as plain text in UTF-8.'
  const mark = (bytes[0] ?? 0) * 256 + (bytes[1] ?? 0)
  if (mark === 0xfffe || mark === 0xfeff) {
    return fail(errorAt({ file: path }, 'the file is in UTF-16, not in UTF-8', saveAdvice))
  }
  const text = new TextDecoder('utf-8').decode(bytes)
  // The first character that is none tells the line; a text may hold U+FFFD itself, which is of no use either.
  const strange = /[\0\uFFFD]/.exec(text)
  if (strange) {
    const before = text.slice(0, strange.index).split(/\r\n?|\n/)
    const place = { file: path, line: before.length, column: before.at(-1)!.length + 1 }
    return fail(errorAt(place, 'the file is not plain text in UTF-8 from here on', saveAdvice))
  }
  return succeed(text.replaceAll(/\r\n?/g, '\n'))
}
