/** Files beside the plan and in folders below it, and no others: whatever a plan names. */
import { realpathSync } from 'node:fs'
import { dirname, sep } from 'node:path'
import { disk, type FileAccess } from '../../oaktag.js'

export interface FolderFiles extends FileAccess {
  /** Files that were asked for since `forget`, those refused apart. */
  readonly asked: () => ReadonlySet<string>
  readonly refused: () => ReadonlySet<string>
  readonly forget: () => void
}

/** @param planFile real path of the plan, whose text is passed in by itself */
export function folderFiles(planFile: string, text: () => string): FolderFiles {
  const folder = dirname(planFile)
  const asked = new Set<string>()
  const refused = new Set<string>()
  const allowed = (path: string): boolean => {
    asked.add(path)
    if (isInside(folder, path)) return true
    refused.add(path)
    return false
  }
  return {
    asked: () => asked,
    refused: () => refused,
    forget: () => {
      asked.clear()
      refused.clear()
    },
    read: (path, most) => {
      if (path === planFile) return planText(text(), most)
      return allowed(path) ? disk.read(path, most) : { kind: 'unreadable' }
    },
    beginning: (path, count) => (allowed(path) ? disk.beginning(path, count) : { kind: 'unreadable' }),
  }
}

/** The same files with another text for the plan. */
export function withPlanText(files: FileAccess, planFile: string, text: string): FileAccess {
  return {
    ...files,
    read: (path, most) => (path === planFile ? planText(text, most) : files.read(path, most)),
  }
}

function planText(text: string, most: number): ReturnType<FileAccess['read']> {
  const bytes = new TextEncoder().encode(text)
  return bytes.length > most ? { kind: 'too large', sizeBytes: bytes.length } : { kind: 'bytes', bytes }
}

/** Where it really lies: a link that leads out of the folder leads nowhere. What is not there is judged by its folder. */
export function isInside(folder: string, path: string): boolean {
  const real = realPath(path) ?? realPath(dirname(path))
  const root = realPath(folder)
  return (
    real !== undefined &&
    root !== undefined &&
    (real === root || real.startsWith(root.endsWith(sep) ? root : root + sep))
  )
}

function realPath(path: string): string | undefined {
  try {
    return realpathSync(path)
  } catch {
    return undefined
  }
}
