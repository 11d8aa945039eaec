import { existsSync } from 'node:fs'
import { symlink } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { machineFiles } from '../../../src/files/folder/file-system.js'
import { makeFolders } from '../../../src/files/folder/make-folders.js'
import { folderWith } from '../../pipeline/plan-folder.js'

describe('folders for the sheets', () => {
  it('are made with all that is missing above them, and the outermost new one is told', async () => {
    const folder = folderWith({})
    expect(await makeFolders(join(folder, 'a', 'b', 'c'), machineFiles)).toBe(join(folder, 'a'))
    expect(existsSync(join(folder, 'a', 'b', 'c'))).toBe(true)
    expect(await makeFolders(join(folder, 'a', 'b', 'd'), machineFiles)).toBe(join(folder, 'a', 'b', 'd'))
  })

  it('are left alone where they are there', async () => {
    expect(await makeFolders(folderWith({}), machineFiles)).toBeUndefined()
  })

  it('are an error, soon, where nothing can be made', async () => {
    const folder = folderWith({})
    await symlink(join(folder, 'nowhere'), join(folder, 'link'))
    for (const path of [join(folder, 'link'), join(folder, 'link', 'x')])
      await expect(makeFolders(path, machineFiles)).rejects.toThrow(join(folder, 'link'))
  })

  it.runIf(existsSync('/proc/self'))('are an error, soon, below /proc', async () => {
    await expect(makeFolders('/proc/oaktag/x', machineFiles)).rejects.toThrow('ENOENT')
  })
})
