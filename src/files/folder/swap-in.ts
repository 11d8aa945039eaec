import type { FileSystem } from './file-system.js'

/**
 * Puts the newly built folder in the plan's place and the old one aside, in two renames. When the second fails,
 * the old set goes back; when the process dies between them, the next run puts it back.
 */
export async function swapIn(
  { building, replaced }: { readonly building: string; readonly replaced: string },
  folder: string,
  files: FileSystem,
): Promise<void> {
  const hadSet = (await files.look(folder)) !== undefined
  if (hadSet) await files.rename(folder, replaced)
  try {
    await files.rename(building, folder)
  } catch (error) {
    if (hadSet) await files.rename(replaced, folder)
    throw error
  }
}
