import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type FileSystem, machineFiles } from '../../src/files/folder/file-system.js'
import type { Format } from '../../src/files/folder/item-paths.js'
import { setFilesAtOnce } from '../../src/files/folder/set-files.js'
import type { PlacedItem } from '../../src/files/printed-plan.js'
import { writeItems } from '../../src/files/write-items.js'
import { asToDraw } from '../../src/sheets/sheet.js'
import { item, sheet } from './marsh-sheets.js'

let folder: string
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'oaktag-items-'))
})
afterAll(() => rm(folder, { recursive: true }))

const SHEETS = 12

/** Two items of which nothing is drawn, and how many of their sheets were under way at most while they were written. */
async function sheetsUnderWay(formats: readonly Format[], jobs: number) {
  let [drawn, most] = [0, 0]
  const filesLeft = new Map<string, number>()
  const items = ['first', 'second'].map((name): PlacedItem => {
    const sheets = Array.from({ length: SHEETS }, (_, index) => ({
      ...asToDraw(sheet()),
      draw: () => {
        drawn += 1
        most = Math.max(most, drawn - written())
        return sheet({ title: `${name} ${index}` })
      },
    }))
    return { ...item({ name }), sheets }
  })
  const written = () => [...filesLeft.values()].filter(left => left === 0).length
  const files: FileSystem = {
    ...machineFiles,
    makeFolder: async () => {},
    write: async path => {
      await new Promise(resolve => setTimeout(resolve, 2))
      const page = path.replace(/\.\w+$/, '')
      filesLeft.set(page, (filesLeft.get(page) ?? formats.length) - 1)
    },
  }
  const printed = { stem: 'x', title: 'x', className: '', seed: 1, itemNames: [], items }
  await writeItems({
    printed,
    whole: true,
    folder,
    formats,
    dpi: 72,
    jobs,
    files,
    setFiles: setFilesAtOnce(files),
  })
  return { drawn, most }
}

describe('the sheets of a set', () => {
  it.each([
    [1, 1],
    [2, 2],
    [4, 4],
  ])(
    'are drawn one after the other as they are written: of %i under way no more than one beyond is held',
    async (jobs, held) => {
      const { drawn, most } = await sheetsUnderWay(['svg'], jobs)
      expect(drawn).toBe(2 * SHEETS)
      expect(most).toBeGreaterThan(0)
      expect(most).toBeLessThanOrEqual(held + 1)
    },
  )

  it('are drawn once for all formats', async () => {
    const { drawn, most } = await sheetsUnderWay(['svg', 'png'], 2)
    expect(drawn).toBe(2 * SHEETS)
    expect(most).toBeLessThanOrEqual(3)
  })
})
