import { mkdir } from 'node:fs/promises'
import { dirname } from 'node:path'
import { systemCode } from './file-problem.js'

/**
 * Makes a folder and those above it that are missing; returns the outermost one that was made, `undefined` where all
 * were there. Node's own way of doing so never ends where nobody may make folders, as below `/proc`.
 */
export async function makeFolders(folder: string): Promise<string | undefined> {
  const made = await madeFolder(folder)
  if (made !== 'nothing above') return made ? folder : undefined
  const outermost = await makeFolders(dirname(folder))
  return (await madeFolder(folder, 'above is made')) ? (outermost ?? folder) : outermost
}

/** Whether it was made now; `nothing above` where the folder that should hold it is missing, so far. */
async function madeFolder(folder: string, above?: 'above is made'): Promise<boolean | 'nothing above'> {
  try {
    await mkdir(folder)
    return true
  } catch (error) {
    if (systemCode(error) === 'EEXIST') return false
    const mayBeMissing = systemCode(error) === 'ENOENT' && dirname(folder) !== folder && above === undefined
    if (mayBeMissing) return 'nothing above'
    throw error
  }
}
