import { dirname, join } from 'node:path'
import { errorAt, type Problem } from '../../problems.js'
import type { ManifestItem } from '../manifest.js'
import type { FileSystem } from './file-system.js'
import { linkOrCopy } from './link-or-copy.js'
import { makeFolders } from './make-folders.js'

/** Brings an item of the last set into the new folder as it is. Its files are linked, or copied where the disk cannot link. */
export async function carryOver(
  item: ManifestItem,
  from: string,
  to: string,
  files: FileSystem,
): Promise<readonly Problem[]> {
  const paths = [item.pdf, ...item.pages.flatMap(page => [page.svg, page.png])].filter(
    path => path !== undefined,
  )
  for (const path of paths) {
    if ((await files.look(join(from, path)))?.kind !== 'file') {
      const advice = 'Run once without --only, so that the whole set is made again. Nothing was changed.'
      return [errorAt({ file: join(from, path) }, 'this file of the last set is missing', advice)]
    }
    await makeFolders(dirname(join(to, path)), files)
    await linkOrCopy(join(from, path), join(to, path), files)
  }
  return []
}
