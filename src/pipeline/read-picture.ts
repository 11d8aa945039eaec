import { readFileSync } from 'node:fs'
import type { Picture } from '../pieces/parts/card-back.js'

/**
 * Opens the teacher's pictures, each once. Files were checked when the plan was read; one that has gone since is
 * undefined.
 */
export function pictureReader(): (path: string) => Picture | undefined {
  const opened = new Map<string, Picture | undefined>()
  return path => {
    if (!opened.has(path)) opened.set(path, openPicture(path))
    return opened.get(path)
  }
}

function openPicture(path: string): Picture | undefined {
  try {
    const bytes = readFileSync(path)
    return { bytes, mediaType: bytes[0] === 0x89 ? 'image/png' : 'image/jpeg' }
  } catch {
    return undefined
  }
}
