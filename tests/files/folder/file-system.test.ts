import { mkdir, mkdtemp, readdir, readFile, symlink, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { machineFiles } from '../../../src/files/folder/file-system.js'

const path = async () => join(await mkdtemp(join(tmpdir(), 'oaktag-test-')), 'file')

describe('a file', () => {
  it('holds texts that follow one another, however many and in whatever letters', async () => {
    const file = await path()
    const texts = Array.from({ length: 30_000 }, (_, index) => `${index} heron · ₥ 🦆\n`)
    await machineFiles.write(file, texts)
    expect(await readFile(file, 'utf8')).toBe(texts.join(''))
  })

  it('holds nothing of what stood in it', async () => {
    const file = await path()
    await machineFiles.write(file, 'a long line')
    await machineFiles.write(file, Uint8Array.of(1, 2))
    expect([...(await readFile(file))]).toEqual([1, 2])
    await machineFiles.write(file, '')
    expect((await readFile(file)).length).toBe(0)
  })
})

describe('a folder that is removed', () => {
  it('is gone with all that is in it, and what a link in it leads to is not', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'oaktag-test-'))
    await mkdir(join(folder, 'set/bingo'), { recursive: true })
    await mkdir(join(folder, 'own'))
    await writeFile(join(folder, 'set/bingo/bingo-01.svg'), 'reed')
    await writeFile(join(folder, 'own/notes.txt'), 'marsh')
    await symlink(join(folder, 'own'), join(folder, 'set/link'))
    await machineFiles.removeFolder(join(folder, 'set'))
    expect(await readdir(folder)).toEqual(['own'])
    expect(await readFile(join(folder, 'own/notes.txt'), 'utf8')).toBe('marsh')
    await machineFiles.removeFolder(join(folder, 'own/notes.txt'))
    await machineFiles.removeFolder(join(folder, 'nothing', 'here'))
    expect(await readdir(join(folder, 'own'))).toEqual([])
  })
})
