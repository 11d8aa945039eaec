import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { machineFiles } from '../../../src/files/folder/file-system.js'
import { swapIn } from '../../../src/files/folder/swap-in.js'
import { folderWith } from '../../pipeline/plan-folder.js'

function workIn(out: string) {
  return { building: join(out, '.new'), replaced: join(out, '.old') }
}

function setIn(folder: string, text: string): void {
  mkdirSync(folder)
  writeFileSync(join(folder, 'manifest.json'), text)
}

const heldBy = (folder: string) => readFileSync(join(folder, 'manifest.json'), 'utf8')

describe('a new set', () => {
  it('takes the place of the old one, which stands aside', async () => {
    const out = folderWith({})
    const work = workIn(out)
    setIn(join(out, 'week'), 'old')
    setIn(work.building, 'new')
    await swapIn(work, join(out, 'week'), machineFiles)
    expect([heldBy(join(out, 'week')), heldBy(work.replaced)]).toEqual(['new', 'old'])
  })

  it('takes its place where there was none', async () => {
    const out = folderWith({})
    const work = workIn(out)
    setIn(work.building, 'new')
    await swapIn(work, join(out, 'week'), machineFiles)
    expect([heldBy(join(out, 'week')), existsSync(work.replaced)]).toEqual(['new', false])
  })

  it('that cannot take its place leaves the old one where it was', async () => {
    const out = folderWith({})
    const work = workIn(out)
    setIn(join(out, 'week'), 'old')
    // Nothing was built: the second of the two renames fails after the first has put the old set aside.
    await expect(swapIn(work, join(out, 'week'), machineFiles)).rejects.toThrow(/ENOENT/)
    expect([heldBy(join(out, 'week')), existsSync(work.replaced)]).toEqual(['old', false])
  })
})
