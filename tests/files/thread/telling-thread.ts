import { machineFiles } from '../../../src/files/folder/file-system.js'
import { type PictureToDraw, setFilesAtOnce } from '../../../src/files/folder/set-files.js'
import { openWritingThread } from '../../../src/files/thread/open-writing-thread.js'
import type { WritingThread } from '../../../src/files/thread/writing-thread.js'

/** What it is told of, in its order; a page as its resolution and its look. */
export interface TellingThread {
  readonly aheadOne: (page: string) => void
  readonly writtenOne?: (page: string) => void
  readonly letGoAhead?: () => void
  readonly isReady?: () => boolean
}

/** One that tells what it is asked for, does the disk's work at once and draws nothing. */
export function tellingThread({
  aheadOne,
  writtenOne = () => {},
  letGoAhead = () => {},
  isReady = () => true,
}: TellingThread): WritingThread {
  const files = setFilesAtOnce(machineFiles)
  return {
    ...openWritingThread(),
    isReady,
    drawAhead: pictures => pictures.map(told).forEach(aheadOne),
    setFiles: () => ({
      ...files,
      draw: (path, picture, whenLeft) => {
        writtenOne(told(picture))
        return files.write(path, 'a picture', whenLeft)
      },
    }),
    letGo: () => {},
    letGoAhead,
    setAside: async () => [],
    removeFolder: machineFiles.removeFolder,
  }
}

function told({ dpi, look }: PictureToDraw): string {
  return `${dpi} ${look}`
}
