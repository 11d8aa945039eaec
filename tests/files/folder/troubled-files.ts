import { type FileSystem, machineFiles } from '../../../src/files/folder/file-system.js'
import type { Contents } from '../../../src/files/folder/write-file.js'

/** As Node's file system reports it. */
export function systemError(code: string, syscall = 'write'): Error {
  return Object.assign(new Error(`${code}: no luck`), { code, syscall })
}

/** Everything that changes the disk. */
const changes = [
  'makeFolder',
  'write',
  'copy',
  'link',
  'rename',
  'touch',
  'removeFile',
  'removeEmptyFolder',
  'removeFolder',
] as const
export type Change = (typeof changes)[number]

/** The machine's files, asked before every change: what `trouble` throws is what the system says. */
export function troubledFiles(
  trouble: (change: Change, path: string) => void,
  kind: FileSystem['kind'] = 'posix',
): FileSystem {
  const asked = (change: Change, path: string): Promise<void> =>
    new Promise(resolve => {
      trouble(change, path)
      resolve()
    })
  const { link, copy, rename, write } = machineFiles
  return {
    ...machineFiles,
    kind,
    makeFolder: path => asked('makeFolder', path).then(() => machineFiles.makeFolder(path)),
    touch: path => asked('touch', path).then(() => machineFiles.touch(path)),
    removeFile: path => asked('removeFile', path).then(() => machineFiles.removeFile(path)),
    removeEmptyFolder: path =>
      asked('removeEmptyFolder', path).then(() => machineFiles.removeEmptyFolder(path)),
    removeFolder: path => asked('removeFolder', path).then(() => machineFiles.removeFolder(path)),
    copy: (from, to) => asked('copy', to).then(() => copy(from, to)),
    link: (from, to) => asked('link', to).then(() => link(from, to)),
    rename: (from, to) => asked('rename', from).then(() => rename(from, to)),
    // A full disk and a kill leave the beginning of the file.
    write: (path, contents) =>
      asked('write', path).then(
        () => write(path, contents),
        async (error: unknown) => {
          await write(path, firstHalf(contents)).catch(() => undefined)
          throw error
        },
      ),
  }
}

function firstHalf(contents: Contents): string | Uint8Array {
  const whole =
    typeof contents === 'string' || contents instanceof Uint8Array ? contents : [...contents].join('')
  return whole.slice(0, whole.length / 2)
}

/** Why a process that was killed does no more: no system says this. */
export class Killed extends Error {}

/** Files of a process that is killed at its nth change: nothing that it does from then on has an effect. */
export function filesUntilKilled(changeCount: number): { files: FileSystem; killed: () => boolean } {
  let left = changeCount
  const dies = (): void => {
    if (left <= 0) throw new Killed()
    left -= 1
  }
  const files = troubledFiles(change => {
    if (change !== 'touch') dies()
  })
  return { files, killed: () => left <= 0 }
}
