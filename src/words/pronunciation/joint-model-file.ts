/**
 * The joint model as one file: the mark, then compressed (deflate) the length of the head, the head as JSON (the tokens and how many runs there
 * are of each length), then for each length the keys, the counts, the followers and how often they follow, little-endian as in memory.
 */
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { deflateRawSync, inflateRawSync } from 'node:zlib'
import { buildFolder } from '../../installation.js'
import { type Guesser, guesserOf } from './guess.js'
import { type JointModel, type JointToken, tokenSpan } from './joint-model.js'

const fileMark = 'OAKTAG GUESSES 2'

export const jointModelPath = join(buildFolder, 'guesses.bin')

interface Head {
  readonly tokens: readonly JointToken[]
  readonly lengths: readonly number[]
}

export function writeJointModel({ tokens, runs }: JointModel): Buffer {
  if (tokens.length > tokenSpan)
    throw new Error(`The joint model has ${tokens.length} tokens, more than fit a key`)
  const head: Head = { tokens, lengths: runs.map(({ keys }) => keys.length) }
  const text = Buffer.from(JSON.stringify(head))
  const length = Buffer.alloc(4)
  length.writeUInt32LE(text.length)
  const arrays = runs.flatMap(({ keys, counts, followers, followed }) => [keys, counts, followers, followed])
  const bytes = arrays.map(({ buffer, byteOffset, byteLength }) =>
    Buffer.from(buffer, byteOffset, byteLength),
  )
  const body = deflateRawSync(Buffer.concat([length, text, ...bytes]), { level: 9 })
  return Buffer.concat([Buffer.from(fileMark, 'latin1'), body])
}

/** @throws Error when the bytes are no model of this version */
export function readJointModel(file: Buffer): JointModel {
  if (file.toString('latin1', 0, fileMark.length) !== fileMark) {
    throw new Error('The model for guesses was made by another version. Run "npm run build" to make it anew.')
  }
  const body = inflateRawSync(file.subarray(fileMark.length))
  let at = 0
  const take = (length: number) => {
    at += length
    return body.subarray(at - length, at)
  }
  const { tokens, lengths } = JSON.parse(take(take(4).readUInt32LE()).toString()) as Head
  const runs = lengths.map(length => ({
    keys: new Float64Array(ownBytes(take(8 * length))),
    counts: new Uint32Array(ownBytes(take(4 * length))),
    followers: new Uint32Array(ownBytes(take(4 * length))),
    followed: new Uint32Array(ownBytes(take(4 * length))),
  }))
  return { tokens, runs }
}

/** A copy of its own, so that numbers lie where the processor wants them. */
function ownBytes(bytes: Buffer): ArrayBuffer {
  const own = new ArrayBuffer(bytes.length)
  new Uint8Array(own).set(bytes)
  return own
}

let installed: Guesser | undefined

/**
 * The guesser that `npm run build` made, read when the first guess is asked for.
 * @throws Error with what to do, when it is missing
 */
export const installedGuesser: Guesser = {
  guess(spelling) {
    if (installed === undefined) {
      if (!existsSync(jointModelPath)) {
        throw new Error(
          `The model for guesses is missing (${jointModelPath}). Run "npm run build" to make it.`,
        )
      }
      installed = guesserOf(readJointModel(readFileSync(jointModelPath)))
    }
    return installed.guess(spelling)
  },
}
