import { type FileSystem, systemCode } from './file-system.js'

/** A file into another folder as it is; copied where the disk cannot link, which gives it another time. */
export async function linkOrCopy(from: string, to: string, files: FileSystem): Promise<'linked' | 'copied'> {
  try {
    await files.link(from, to)
    return 'linked'
  } catch (error) {
    if (systemCode(error) === undefined) throw error
    await files.copy(from, to)
    return 'copied'
  }
}
