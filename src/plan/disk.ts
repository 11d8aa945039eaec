import { closeSync, fstatSync, openSync, readFileSync, readSync } from 'node:fs'
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
    descriptor = openSync(path, 'r')
    const status = fstatSync(descriptor)
    if (status.isDirectory()) return { kind: 'folder' }
    // A pipe or a device has no end that could be waited for.
    if (!status.isFile()) return { kind: 'unreadable' }
    return take(descriptor, status.size)
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code
    return { kind: code === 'ENOENT' || code === 'ENOTDIR' ? 'missing' : 'unreadable' }
  } finally {
    if (descriptor !== undefined) closeSync(descriptor)
  }
}
