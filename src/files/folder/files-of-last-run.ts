import { join } from 'node:path'
import type { FileSystem } from './file-system.js'
import type { LeftFile, SetFiles, WhenLeft } from './set-files.js'

/** How a file was left: what it was made from, and what the disk tells of it. */
interface Left {
  readonly madeFrom: string
  readonly sizeBytes: number
  readonly changedMs: number
}

/** What the last run of a program that writes the same plan again left where. */
export interface FilesOfLastRun {
  /** @param before the set as it stands, and @param folder the one that is being made */
  readonly into: (
    before: string,
    folder: string,
    files: Pick<FileSystem, 'look'>,
    setFiles: Pick<SetFiles, 'link'>,
  ) => PutFile
  /** Whether the last run left a file there that was made from the same. */
  readonly isLeft: (path: string, madeFrom: string) => boolean
  /** The run has ended, and all its files are there: those that it put are the last run's now. */
  readonly letGo: () => void
}

/**
 * @param madeFrom all that its contents depend on, in short
 * @param write brings the file there where it has to be made
 */
export type PutFile = (path: string, madeFrom: string, write: WriteFile) => Promise<void>

export type WriteFile = (path: string, whenLeft?: WhenLeft) => Promise<void>

/** A file that would come out as it stands is linked: neither made nor written again. One that somebody changed is made anew. */
export function filesOfLastRun(): FilesOfLastRun {
  let last: ReadonlyMap<string, Left> = new Map()
  let now = new Map<string, Left>()
  return {
    into: (before, folder, files, setFiles) => async (path, madeFrom, write) => {
      const [from, to] = [join(before, path), join(folder, path)]
      const left = last.get(path)
      const asItStands = left !== undefined && (await isAsLeft(from, left, madeFrom, files))
      const whenLeft = ({ linked, standing }: LeftFile): void => {
        if (linked && left !== undefined) now.set(path, left)
        else if (standing !== undefined) now.set(path, { madeFrom, ...standing })
      }
      if (asItStands) await setFiles.link(from, to, whenLeft)
      else await write(to, whenLeft)
    },
    isLeft: (path, madeFrom) => last.get(path)?.madeFrom === madeFrom,
    letGo: () => {
      last = now
      now = new Map()
    },
  }
}

async function isAsLeft(
  path: string,
  left: Left,
  madeFrom: string,
  files: Pick<FileSystem, 'look'>,
): Promise<boolean> {
  if (left.madeFrom !== madeFrom) return false
  const found = await files.look(path)
  return found?.kind === 'file' && found.sizeBytes === left.sizeBytes && found.changedMs === left.changedMs
}
