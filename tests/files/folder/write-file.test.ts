import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { systemCode } from '../../../src/files/folder/file-system.js'
import { fileWriter } from '../../../src/files/folder/write-file.js'

let folder = ''
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'oaktag-write-'))
})
afterAll(() => rmSync(folder, { recursive: true, force: true, maxRetries: 5 }))

/** Each look at it finds it so much later. */
function clock(stepMs: number): () => number {
  let now = 0
  return () => {
    now += stepMs
    return now
  }
}

const texts = ['reed', 'Rotkehlchen, größer als ein Zaunkönig', '芦苇 🌾', 'x'.repeat(2 ** 20), '']

describe.each([
  ['at once', 0],
  ['a long time', 50],
])('a file that the disk takes %s', (_, stepMs) => {
  it('holds the text, or the bytes, that it was given', async () => {
    const write = fileWriter(clock(stepMs))
    for (let round = 0; round < 3; round++)
      for (const [index, text] of texts.entries()) {
        await write(join(folder, `${index}.txt`), text)
        expect(readFileSync(join(folder, `${index}.txt`), 'utf8')).toBe(text)
        await write(join(folder, `${index}.bin`), Buffer.from(text))
        expect(readFileSync(join(folder, `${index}.bin`), 'utf8')).toBe(text)
      }
    await write(join(folder, 'page.html'), texts)
    expect(readFileSync(join(folder, 'page.html'), 'utf8')).toBe(texts.join(''))
  })

  it('holds the newer of two, though it is shorter', async () => {
    const write = fileWriter(clock(stepMs))
    await write(join(folder, 'marsh.svg'), 'a long text')
    await write(join(folder, 'marsh.svg'), 'short')
    expect(readFileSync(join(folder, 'marsh.svg'), 'utf8')).toBe('short')
  })

  it('is refused as the system refuses it', async () => {
    const write = fileWriter(clock(stepMs))
    for (let file = 0; file < 8; file++) {
      const refused = write(join(folder, 'no-such-folder', 'a.svg'), 'reed')
      await expect(refused.catch(systemCode)).resolves.toBe('ENOENT')
    }
  })
})

describe('files that are written all day', () => {
  /** How many of so many files stand as soon as they are begun, where the disk takes so long for each. */
  async function writtenAtOnce(files: number, tookMs: (file: number) => number): Promise<number> {
    let [time, looks] = [0, 0]
    const write = fileWriter(() => {
      if (looks++ % 2 === 1) time += tookMs(Math.floor(looks / 2))
      return time
    })
    let atOnce = 0
    for (let file = 0; file < files; file++) {
      const path = join(folder, `day-${file % 3}.txt`)
      const writing = write(path, `${file}`)
      if (readFileSync(path, { encoding: 'utf8', flag: 'a+' }) === `${file}`) atOnce++
      await writing
    }
    return atOnce
  }

  it('are written at once though one is slow by chance now and then', async () => {
    expect(await writtenAtOnce(600, file => (file % 30 === 0 ? 50 : 0))).toBe(600)
  })

  it('are left to another thread while the disk is slow, and tried again', async () => {
    expect(await writtenAtOnce(250, () => 50)).toBeLessThan(20)
    expect(await writtenAtOnce(600, file => (file < 10 ? 50 : 0))).toBeGreaterThan(300)
  })
})

it('what waits for its turn has it between two files', async () => {
  const write = fileWriter(clock(0))
  let turns = 0
  const turn = setInterval(() => turns++, 0)
  const until = performance.now() + 30
  while (performance.now() < until) await write(join(folder, 'reed.svg'), 'reed')
  clearInterval(turn)
  expect(turns).toBeGreaterThan(0)
})
