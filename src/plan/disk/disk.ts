import { closeSync, openSync, readFileSync, readSync, statSync } from 'node:fs'
import type { FileAccess, FileContents } from './file-access.js'

/** The files of the machine itself. */
export const disk: FileAccess = {
  read: (path, limitBytes) =>
    opened(path, (descriptor, sizeBytes) =>
      sizeBytes > limitBytes
        ? { kind: 'too large', sizeBytes }
        : { kind: 'bytes', bytes: readFileSync(descriptor) },
    ),
  beginning: (path, count) =>
    opened(path, descriptor => {
      const bytes = new Uint8Array(count)
      return { kind: 'bytes', bytes: bytes.subarray(0, readSync(descriptor, bytes, 0, count, 0)) }
    }),
}

function opened(path: string, take: (descriptor: number, sizeBytes: number) => FileContents): FileContents {
  let descriptor: number | undefined
  try {
    const status = statSync(path)
    if (status.isDirectory()) return { kind: 'folder' }
    // To open a pipe is to wait for its other end, perhaps for ever.
    if (!status.isFile()) return { kind: 'unreadable' }
    descriptor = openSync(path, 'r')
    return take(descriptor, status.size)
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code
    return { kind: code === 'ENOENT' || code === 'ENOTDIR' ? 'missing' : 'unreadable' }
  } finally {
    if (descriptor !== undefined) closeSync(descriptor)
  }
}
