import { type Problem, warningAt } from '../problems.js'
import { type Discarding, discardSet } from './folder/discard-set.js'
import { fileProblem } from './folder/file-problem.js'
import type { FileSystem } from './folder/file-system.js'
import type { WorkFolder } from './folder/work-folder.js'
import { type WritingThread, WritingThreadEnded } from './thread/writing-thread.js'
import type { KeptFiles } from './write-items.js'

export interface Replaced {
  readonly work: Pick<WorkFolder, 'discarding'>
  readonly files: FileSystem
  readonly thread: WritingThread | undefined
  readonly kept?: KeptFiles | undefined
}

/** The new set is in place by now: an old one that cannot be removed is no failure, and the next run clears it up. */
export async function discardReplaced({
  work: { discarding },
  files,
  thread,
  kept,
}: Replaced): Promise<readonly Problem[]> {
  try {
    const moved = await (thread === undefined || kept === undefined
      ? discardSet(discarding, files)
      : discardBeside(discarding, { thread, files, kept }))
    return moved.map(otherFileWarning)
  } catch (error) {
    return [notRemoved(error, discarding.folder, files)]
  }
}

/** What is to be told of the set that the last run replaced: by now this run has tried again to remove it. */
export async function stillThere(
  kept: KeptFiles | undefined,
  files: FileSystem,
): Promise<readonly Problem[]> {
  const [warning] = (await kept?.removing) ?? []
  const isThere = warning !== undefined && (await files.look(warning.place.file)) !== undefined
  return isThere ? [warning] : []
}

/** Nobody waits until the last file of the old set is removed, but the next run. */
async function discardBeside(
  discarding: Discarding,
  {
    thread,
    files,
    kept,
  }: Pick<Replaced, 'files'> & { readonly thread: WritingThread; readonly kept: KeptFiles },
): Promise<readonly string[]> {
  try {
    const moved = await thread.setAside(discarding)
    kept.removing = thread.removeFolder(discarding.gone).then(
      () => [],
      (error: unknown) =>
        error instanceof WritingThreadEnded ? [] : [notRemoved(error, discarding.gone, files)],
    )
    return moved
  } catch (error) {
    if (!(error instanceof WritingThreadEnded)) throw error
    return discardSet(discarding, files)
  }
}

function notRemoved(error: unknown, folder: string, { kind }: FileSystem): Problem {
  const { message } = fileProblem(error, folder, kind)
  return warningAt(
    { file: folder },
    `the set that was replaced could not be removed: ${message}`,
    'The new set is in place. The next run tries again to remove the old one.',
  )
}

function otherFileWarning(path: string): Problem {
  return warningAt(
    { file: path },
    'this file was in the plan’s folder and was moved here',
    'The plan’s folder holds only what the newest run made; keep your own files outside it.',
  )
}
