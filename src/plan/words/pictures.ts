import { dirname, resolve } from 'node:path'
import { fail, succeed } from '../../outcomes.js'
import { errorAt } from '../../problems.js'
import type { FileAccess } from '../disk/file-access.js'
import { misfit, type Reader } from '../yaml/entry.js'

/** PNG (W3C), §5.2: the eight bytes every file begins with. JPEG (ITU-T T.81, B.1.1.3): SOI, then another marker. */
const pngSignature = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]
const jpegSignature = [0xff, 0xd8, 0xff]

const form = 'Give the path of a PNG or JPEG file, relative to the file that names it.'

/** The absolute path of a picture that is there and is a PNG or a JPEG by its first bytes. */
export function pictureReader(files: FileAccess, namedIn: string): Reader<string> {
  return entry => {
    if (entry.kind !== 'text') return misfit(entry, "a picture's path", form)
    const { text, place } = entry
    const path = resolve(dirname(namedIn), text)
    const found = files.beginning(path, pngSignature.length)
    if (found.kind === 'missing') return fail(errorAt(place, `no picture "${text}" is there`, form))
    if (found.kind === 'folder') return fail(errorAt(place, `"${text}" is a folder, not a picture`, form))
    if (found.kind !== 'bytes') {
      return fail(errorAt(place, `the picture "${text}" cannot be read`, 'Check that you may open the file.'))
    }
    const beginsWith = (signature: readonly number[]) =>
      signature.every((byte, index) => found.bytes[index] === byte)
    if (beginsWith(pngSignature) || beginsWith(jpegSignature)) return succeed(path)
    const advice = 'Save the picture as PNG or JPEG; giving the file another name is not enough.'
    return fail(errorAt(place, `"${text}" is neither a PNG nor a JPEG picture`, advice))
  }
}
