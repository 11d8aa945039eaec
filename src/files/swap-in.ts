import { readFile, rename } from 'node:fs/promises'
import { join } from 'node:path'
import { systemCode } from './file-problem.js'
import type { WorkFolder } from './work-folder.js'

export type SwapResult = 'swapped' | 'changed meanwhile'

/**
 * Puts the newly built folder in the plan's place and the old one aside, in two renames. `expected` is the text
 * of the manifest that this run has read, or `null` where there was none: when another run has put its own set
 * there meanwhile, that set is left in place, for this run to look again. When the second rename fails, the old
 * set goes back.
 */
export async function swapIn(work: WorkFolder, folder: string, expected: string | null): Promise<SwapResult> {
  const old = await moveAside(folder, work.replaced)
  if (old && (await manifestIn(work.replaced)) !== expected) {
    await rename(work.replaced, folder)
    return 'changed meanwhile'
  }
  try {
    await rename(work.building, folder)
    return 'swapped'
  } catch (error) {
    const taken = ['ENOTEMPTY', 'EEXIST'].includes(systemCode(error) ?? '')
    if (old && !taken) await rename(work.replaced, folder)
    if (taken) return 'changed meanwhile'
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

async function manifestIn(folder: string): Promise<string | null> {
  try {
    return await readFile(join(folder, 'manifest.json'), 'utf8')
  } catch (error) {
    if (systemCode(error) === 'ENOENT') return null
    throw error
  }
}
