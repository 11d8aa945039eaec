import { setTimeout } from 'node:timers/promises'
import { type FileSystem, systemCode } from './file-system.js'

/** A scanner or a preview lets go of a file within a second or two; a viewer that is left open does not. */
const mostWaits = 40
const waitMs = 100

/**
 * The same files, but what cannot be moved or removed because a program holds it open is tried again for four seconds.
 * On Windows an open file is told as EPERM or EACCES too, and a folder being emptied as ENOTEMPTY.
 */
export function patientFiles(
  files: FileSystem,
  wait: (ms: number) => Promise<unknown> = setTimeout,
): FileSystem {
  const passing = files.kind === 'windows' ? ['EBUSY', 'EPERM', 'EACCES', 'ENOTEMPTY'] : ['EBUSY']
  const patiently = async (act: () => Promise<void>): Promise<void> => {
    for (let waits = 0; ; waits++) {
      try {
        return await act()
      } catch (error) {
        if (waits === mostWaits || !passing.includes(systemCode(error) ?? '')) throw error
        await wait(waitMs)
      }
    }
  }
  return {
    ...files,
    rename: (from, to) => patiently(() => files.rename(from, to)),
    removeFile: path => patiently(() => files.removeFile(path)),
    removeFolder: path => patiently(() => files.removeFolder(path)),
  }
}
