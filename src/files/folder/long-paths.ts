import { resolve } from 'node:path'
import { type Problem, warningAt } from '../../problems.js'
import type { Manifest } from '../manifest.js'
import type { FileSystem } from './file-system.js'
import { filesOfSet } from './previous-set.js'

/** What most programs of Windows can open ("Maximum Path Length Limitation", learn.microsoft.com): 260, its end counted. */
const longestPath = 259

/** Files can be written under longer paths than Windows' own programs open. */
export function longPathWarning(
  manifest: Manifest,
  folder: string,
  kind: FileSystem['kind'],
): readonly Problem[] {
  const [longest = ''] = filesOfSet(manifest)
    .map(path => resolve(folder, path))
    .sort((a, b) => b.length - a.length)
  if (kind === 'posix' || longest.length <= longestPath) return []
  return [
    warningAt(
      { file: folder },
      `a path of this set has ${longest.length} characters, and many programs on Windows open up to ${longestPath}`,
      'Choose a folder nearer to the root of its drive with --out, or give the item a shorter name.',
    ),
  ]
}
