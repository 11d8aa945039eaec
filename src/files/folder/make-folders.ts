import { dirname } from 'node:path'
import { type FileSystem, systemCode } from './file-system.js'

/** A link stands where a folder is needed, and leads to nothing; the message is its path. */
export class LinkToNothing extends Error {}

/**
 * Makes a folder and those above it that are missing; returns the outermost one that was made, `undefined` where all
 * were there. Node's own way of doing so never ends where nobody may make folders, as below `/proc`.
 */
export async function makeFolders(folder: string, files: FileSystem): Promise<string | undefined> {
  const made = await madeFolder(folder, files)
  if (made !== 'nothing above') return made ? folder : undefined
  const outermost = await makeFolders(dirname(folder), files)
  return (await madeFolder(folder, files, 'above is made')) ? (outermost ?? folder) : outermost
}

/** Whether it was made now; `nothing above` where the folder that should hold it is missing, so far. */
async function madeFolder(
  folder: string,
  files: FileSystem,
  above?: 'above is made',
): Promise<boolean | 'nothing above'> {
  try {
    await files.makeFolder(folder)
    return true
  } catch (error) {
    if (systemCode(error) === 'EEXIST') {
      if ((await files.lookThrough(folder)) === undefined) throw new LinkToNothing(folder)
      return false
    }
    // A drive's root is there and may yet not be made: EPERM on Windows.
    if ((await files.lookThrough(folder))?.kind === 'folder') return false
    const mayBeMissing = systemCode(error) === 'ENOENT' && dirname(folder) !== folder && above === undefined
    if (mayBeMissing) return 'nothing above'
    throw error
  }
}
