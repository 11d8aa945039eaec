import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { folderFiles, isInside } from '../../src/desk/server/folder-files.js'
import { deskFolder } from './desk-folder.js'

it('opens what lies beside the plan or below, and nothing that leads out of there', () => {
  const { folder } = deskFolder('')
  const own = join(folder, 'weeks')
  mkdirSync(join(own, 'pictures'), { recursive: true })
  const plan = join(own, 'week.yaml')
  for (const file of [plan, join(own, 'words.txt'), join(own, 'pictures/a.txt'), join(folder, 'secret.txt')])
    writeFileSync(file, 'reed')
  symlinkSync(join(folder, 'secret.txt'), join(own, 'link.txt'))
  symlinkSync(folder, join(own, 'up'))
  const files = folderFiles(plan, () => 'words: [marsh]')
  const kind = (path: string) => files.read(path, 1000).kind
  expect(['words.txt', 'pictures/a.txt'].map(name => kind(join(own, name)))).toEqual(['bytes', 'bytes'])
  const outside = [
    join(own, '../secret.txt'),
    join(own, 'link.txt'),
    join(own, 'up/secret.txt'),
    '/etc/hostname',
  ]
  expect(outside.map(kind)).toEqual(['unreadable', 'unreadable', 'unreadable', 'unreadable'])
  expect([...files.refused()]).toEqual(outside)
  expect(files.read(plan, 1000)).toEqual({ kind: 'bytes', bytes: new TextEncoder().encode('words: [marsh]') })
  expect(isInside(own, `${own}-2/x.txt`)).toBe(false)
})
