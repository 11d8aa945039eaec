/** Reading a text file that a plan names, or the plan itself, in UTF-8 or as spreadsheets save it, and not larger than a plan can be. */

import { fail, succeed } from '../../outcomes.js'
import { errorAt, type Outcome, type Place, warningAt } from '../../problems.js'
import type { FileAccess } from './file-access.js'
import { decodeWindows1252 } from './windows-1252.js'

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
  const text = new TextDecoder(encodingByMark(bytes)).decode(bytes)
  // The first character that is none tells the line; a text may hold U+FFFD itself, which is of no use either.
  const strange = /[\0\uFFFD]/.exec(text)
  if (strange === null) return succeed(withLineEnds(text))
  const place = placeAt(path, text.slice(0, strange.index))
  const western = strange[0] === '\0' ? undefined : decodeWindows1252(bytes)
  if (western !== undefined)
    return succeed(withLineEnds(western), [
      warningAt(
        place,
        'the file is not in UTF-8: from here on it is read as a Western European text of Windows',
        'Check letters with accents, and curly quotes; to be sure, save the file as plain text in UTF-8.',
      ),
    ])
  const advice = 'Open it in an editor and save it as plain text in UTF-8.'
  return fail(errorAt(place, 'the file is not plain text from here on', advice))
}

/** The mark at the beginning tells UTF-16 from UTF-8 (The Unicode Standard 15.0, section 23.8). */
function encodingByMark([first, second]: Uint8Array): string {
  if (first === 0xff && second === 0xfe) return 'utf-16le'
  return first === 0xfe && second === 0xff ? 'utf-16be' : 'utf-8'
}

function withLineEnds(text: string): string {
  return text.replaceAll(/\r\n?/g, '\n')
}

function placeAt(path: string, textBefore: string): Place {
  const before = textBefore.split(/\r\n?|\n/)
  return { file: path, line: before.length, column: before.at(-1)!.length + 1 }
}
