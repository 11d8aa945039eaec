import {
  linkSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmdirSync,
  type Stats,
  statSync,
  unlinkSync,
  utimesSync,
} from 'node:fs'
import { copyFile, open, rm } from 'node:fs/promises'
import { join } from 'node:path'
import { type Contents, fileWriter } from './write-file.js'

/** What writing a set asks of a disk: passed in, so that full disks, Windows and kills can be tried anywhere. */
export interface FileSystem {
  /** Windows holds on to files that a program has open, and keeps some names for itself. */
  readonly kind: 'windows' | 'posix'
  /** What stands at the path; a link is `other`, whatever it leads to. */
  readonly look: (path: string) => Promise<Standing | undefined>
  /** The same of what a link leads to. */
  readonly lookThrough: (path: string) => Promise<Standing | undefined>
  readonly makeFolder: (path: string) => Promise<void>
  /** Names in a folder. */
  readonly list: (folder: string) => Promise<readonly string[]>
  readonly readText: (path: string) => Promise<string>
  readonly write: (path: string, contents: Contents) => Promise<void>
  /** Returns when the file, or the names in the folder, are on the disk itself, as far as the system can say. */
  readonly settle: (path: string) => Promise<void>
  readonly copy: (from: string, to: string) => Promise<void>
  readonly link: (from: string, to: string) => Promise<void>
  readonly rename: (from: string, to: string) => Promise<void>
  /** Says of a file that it was changed now. */
  readonly touch: (path: string) => Promise<void>
  readonly removeFile: (path: string) => Promise<void>
  readonly removeEmptyFolder: (path: string) => Promise<void>
  /** A folder with all that is in it; nothing where it is not there. */
  readonly removeFolder: (path: string) => Promise<void>
}

export type { Contents }

export interface Standing {
  readonly kind: 'file' | 'folder' | 'other'
  readonly sizeBytes: number
  readonly changedMs: number
}

/**
 * The machine's own files. What is asked of names alone is over in less time than it takes to hand it to another thread and to
 * hear of it: a set is put in place by hundreds of such steps. So are the contents of a page's file and of a manifest;
 * larger ones are written beside the program.
 */
export const machineFiles: FileSystem = {
  kind: process.platform === 'win32' ? 'windows' : 'posix',
  look: async path => standing(() => lstatSync(path, { throwIfNoEntry: false })),
  lookThrough: async path => standing(() => statSync(path, { throwIfNoEntry: false })),
  makeFolder: async path => mkdirSync(path),
  list: async folder => readdirSync(folder),
  readText: async path => readFileSync(path, 'utf8'),
  write: fileWriter(),
  settle: settleOnDisk,
  copy: (from, to) => copyFile(from, to),
  link: async (from, to) => linkSync(from, to),
  rename: async (from, to) => renameSync(from, to),
  touch: async path => utimesSync(path, new Date(), new Date()),
  removeFile: async path => unlinkSync(path),
  removeEmptyFolder: async path => rmdirSync(path),
  removeFolder,
}

/** What is there and gives way is removed step by step; what does not is left to Node, which knows what to try. */
async function removeFolder(path: string): Promise<void> {
  if (lstatSync(path, { throwIfNoEntry: false }) === undefined) return
  try {
    removeAll(path)
  } catch (error) {
    if (systemCode(error) === undefined) throw error
    await rm(path, { recursive: true, force: true })
  }
}

function removeAll(folder: string): void {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name)
    if (entry.isDirectory()) removeAll(path)
    else unlinkSync(path)
  }
  rmdirSync(folder)
}

/** What a disk says that is full or broken; a system that cannot tell of folders, or at all, says something else. */
const notWritten = ['EIO', 'ENOSPC', 'EDQUOT']

async function settleOnDisk(path: string): Promise<void> {
  try {
    const handle = await open(path, process.platform === 'win32' ? 'r+' : 'r')
    try {
      await handle.sync()
    } finally {
      await handle.close()
    }
  } catch (error) {
    const code = systemCode(error)
    if (code === undefined || notWritten.includes(code)) throw error
  }
}

function standing(look: () => Stats | undefined): Standing | undefined {
  try {
    const found = look()
    if (found === undefined) return undefined
    const kind = found.isFile() ? 'file' : found.isDirectory() ? 'folder' : 'other'
    return { kind, sizeBytes: found.size, changedMs: found.mtimeMs }
  } catch (error) {
    if (['ENOENT', 'ENOTDIR'].includes(systemCode(error) ?? '')) return undefined
    throw error
  }
}

/** As the system names what went wrong, `ENOENT`; undefined for a fault that is none of the system's. */
export function systemCode(error: unknown): string | undefined {
  return error instanceof Error && 'syscall' in error && 'code' in error ? String(error.code) : undefined
}
