import { dirname, resolve } from 'node:path'
import { fail, succeed } from '../../outcomes.js'
import { errorAt, type Outcome, type Place, type Problem } from '../../problems.js'
import type { FileAccess } from '../disk/file-access.js'
import { reading, type ValueReader } from '../keys/key.js'
import type { Takes } from '../keys/takes.js'
import { misfit } from '../yaml/entry.js'
import { problemInSvg } from './svg-picture.js'

/** PNG (W3C), §5.2: the eight bytes every file begins with. JPEG (ITU-T T.81, B.1.1.3): SOI, then another marker. */
const pngSignature = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]
const jpegSignature = [0xff, 0xd8, 0xff]

const form = 'Give the path of a PNG, JPEG or SVG file, relative to the file that names it.'

/** Larger than any camera's picture. */
export const LARGEST_PICTURE_BYTES = 50_000_000

/** Larger than any drawing for a card; one of megabytes is a photograph in disguise. */
const LARGEST_SVG_BYTES = 5_000_000

const pictureTaken: Takes = {
  kind: 'form',
  what: 'the path of a PNG, JPEG or SVG picture',
  samples: ['marsh.png'],
  pattern: String.raw`\S`,
}

/** The absolute path of a picture that is there and is a PNG or a JPEG by its first bytes, or an SVG by its text. */
export function pictureReader(files: FileAccess, namedIn: string): ValueReader<string> {
  return reading(pictureTaken, entry => {
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
    if (beginsWith(pngSignature) || beginsWith(jpegSignature)) {
      const whole = files.read(path, LARGEST_PICTURE_BYTES)
      if (whole.kind === 'bytes') return succeed(path)
      if (whole.kind === 'too large')
        return fail(tooLarge(text, place, whole.sizeBytes, LARGEST_PICTURE_BYTES))
      return fail(errorAt(place, `the picture "${text}" cannot be read`, 'Check that you may open the file.'))
    }
    const beginning = Buffer.from(found.bytes)
      .toString('utf8')
      .replace(/^\uFEFF/, '')
      .trimStart()
    const onlyBlanks = beginning === '' && found.bytes.length === pngSignature.length
    if (onlyBlanks || beginning.startsWith('<')) return svgAt(path, text, place, files)
    const advice = 'Save the picture as PNG, JPEG or SVG; giving the file another name is not enough.'
    return fail(errorAt(place, `"${text}" is neither a PNG nor a JPEG nor an SVG picture`, advice))
  })
}

function svgAt(path: string, text: string, place: Place, files: FileAccess): Outcome<string> {
  const found = files.read(path, LARGEST_SVG_BYTES)
  if (found.kind === 'too large') {
    return fail(tooLarge(text, place, found.sizeBytes, LARGEST_SVG_BYTES))
  }
  const svg = found.kind === 'bytes' ? Buffer.from(found.bytes).toString('utf8') : ''
  const wrong = problemInSvg(svg)
  return wrong === undefined
    ? succeed(path)
    : fail(errorAt(place, `the picture "${text}" ${wrong.problem}`, wrong.advice))
}

function tooLarge(text: string, place: Place, sizeBytes: number, mostBytes: number): Problem {
  const inMillions = (bytes: number) => (bytes / 1e6).toLocaleString('en-US', { maximumFractionDigits: 1 })
  return errorAt(
    place,
    `the picture "${text}" has ${inMillions(sizeBytes)} million bytes`,
    `Up to ${inMillions(mostBytes)} million are read; save it smaller, as PNG or JPEG.`,
  )
}
