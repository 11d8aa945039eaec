import { expect, it } from 'vitest'
import { type FolderFiles, folderFiles } from '../../src/desk/server/folder-files.js'
import { sheetRuns } from '../../src/desk/server/sheet-runs.js'
import { keepWork } from '../../src/oaktag.js'
import { deskFolder } from './desk-folder.js'

it('begins a run after what was told in the same turn has gone out', async () => {
  const text = 'words: [reed]\nprint: [word-cards]\n'
  const { plan } = deskFolder(text)
  const files = folderFiles(plan, () => text)
  const order: string[] = []
  const read: FolderFiles = {
    ...files,
    read: (path, limitBytes) => {
      order.push('run')
      return files.read(path, limitBytes)
    },
  }
  await new Promise<void>(ended => {
    const runs = sheetRuns({ path: plan, files: read, kept: keepWork(), ended })
    // As a page is told of the plan, and then its sheets are begun.
    setImmediate(() => order.push('told'))
    runs.begin()
  })
  expect(order.slice(0, 2)).toEqual(['told', 'run'])
})
