import type { PageShapes } from '../page/page-shapes.js'
import type { Contents, FileSystem, Standing } from './file-system.js'
import { linkOrCopy } from './link-or-copy.js'

/** Told when a file is where it belongs. */
export type WhenLeft = (left: LeftFile) => void

export interface LeftFile {
  /** Whether it is the very file of the last set. */
  readonly linked: boolean
  readonly standing: Standing | undefined
}

/** A page at one resolution, with all that its picture depends on in short. */
export interface PictureToDraw {
  readonly dpi: number
  readonly look: string
  /** Asked for where it is not drawn already. */
  readonly page: () => PageShapes
}

/**
 * How the files of a set come into the folder that it is built in: in the order of the calls. Each call returns when the next
 * may follow; what goes wrong is told by one of those, or by `done` at the latest.
 */
export interface SetFiles {
  readonly makeFolder: (path: string) => Promise<void>
  readonly write: (path: string, contents: Contents, whenLeft?: WhenLeft) => Promise<void>
  /** Draws a page's PNG file where it is written; left out where that is not beside whoever asks for it. */
  readonly draw?: (path: string, picture: PictureToDraw, whenLeft?: WhenLeft) => Promise<void>
  /** A file of the last set as it is; copied where the disk cannot link. */
  readonly link: (from: string, to: string, whenLeft: WhenLeft) => Promise<void>
  /** As `settle` of the file system. */
  readonly settle: (path: string) => Promise<void>
  /** Returns when all is done that was asked for. */
  readonly done: () => Promise<void>
}

/** Each call returns when it is done. */
export function setFilesAtOnce(files: FileSystem): SetFiles {
  return {
    makeFolder: files.makeFolder,
    write: async (path, contents, whenLeft) => {
      await files.write(path, contents)
      whenLeft?.({ linked: false, standing: await files.look(path) })
    },
    link: async (from, to, whenLeft) => {
      const linked = (await linkOrCopy(from, to, files)) === 'linked'
      whenLeft({ linked, standing: linked ? undefined : await files.look(to) })
    },
    settle: files.settle,
    done: async () => {},
  }
}
