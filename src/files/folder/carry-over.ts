import { copyFile, link, mkdir } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { errorAt, type Problem } from '../../problems.js'
import type { ManifestItem } from '../manifest.js'
import { systemCode } from './file-problem.js'

/** Brings an item of the last set into the new folder as it is. Its files are linked, or copied where the disk cannot link. */
export async function carryOver(item: ManifestItem, from: string, to: string): Promise<readonly Problem[]> {
  const paths = [item.pdf, ...item.pages.flatMap(page => [page.svg, page.png])].filter(
    path => path !== undefined,
  )
  for (const path of paths) {
    await mkdir(dirname(join(to, path)), { recursive: true })
    try {
      await linkOrCopy(join(from, path), join(to, path))
    } catch (error) {
      if (systemCode(error) !== 'ENOENT') throw error
      const advice = 'Run once without --only, so that the whole set is made again. Nothing was changed.'
      return [errorAt({ file: join(from, path) }, 'this file of the last set is missing', advice)]
    }
  }
  return []
}

async function linkOrCopy(from: string, to: string): Promise<void> {
  try {
    await link(from, to)
  } catch (error) {
    if (systemCode(error) === 'ENOENT') throw error
    await copyFile(from, to)
  }
}
