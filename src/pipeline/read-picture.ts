import { readFileSync } from 'node:fs'
import type { Picture } from '../pieces/card-back.js'

const read = new Map<string, Picture | undefined>()

/** A teacher's picture, read once; files were checked when the plan was read, and one that has gone since is undefined. */
export function readPicture(path: string): Picture | undefined {
  if (!read.has(path)) read.set(path, openPicture(path))
  return read.get(path)
}

function openPicture(path: string): Picture | undefined {
  try {
    const bytes = readFileSync(path)
    return { bytes, mediaType: bytes[0] === 0x89 ? 'image/png' : 'image/jpeg' }
  } catch {
    return undefined
  }
}
