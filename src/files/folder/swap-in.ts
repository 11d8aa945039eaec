import { rename } from 'node:fs/promises'
import { systemCode } from './file-problem.js'
import type { WorkFolder } from './work-folder.js'

/**
 * Puts the newly built folder in the plan's place and the old one aside, in two renames. When the second fails,
 * the old set goes back; when the process dies between them, the next run puts it back.
 */
export async function swapIn({ building, replaced }: WorkFolder, folder: string): Promise<void> {
  const hadSet = await moveAside(folder, replaced)
  try {
    await rename(building, folder)
  } catch (error) {
    if (hadSet) await rename(replaced, folder)
    throw error
  }
}

async function moveAside(folder: string, aside: string): Promise<boolean> {
  try {
    await rename(folder, aside)
    return true
  } catch (error) {
    if (systemCode(error) === 'ENOENT') return false
    throw error
  }
}
