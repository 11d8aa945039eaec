import { mkdirSync, mkdtempSync, readFileSync, rmSync, statSync, utimesSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, it, onTestFinished } from 'vitest'
import { type FileSystem, machineFiles } from '../../../src/files/folder/file-system.js'
import { filesOfLastRun, type WriteFile } from '../../../src/files/folder/files-of-last-run.js'
import { setFilesAtOnce } from '../../../src/files/folder/set-files.js'

/** Runs that each make a folder of one file, and what was made for it. */
function runs(files: FileSystem = machineFiles) {
  const folder = mkdtempSync(join(tmpdir(), 'oaktag-last-run-'))
  onTestFinished(() => rmSync(folder, { recursive: true }))
  const last = filesOfLastRun()
  const made: string[] = []
  let count = 0
  const pathOf = (run: number) => join(folder, `${run}`, 'sheet.svg')
  const run = async (madeFrom: string): Promise<void> => {
    const [before, now] = [join(folder, `${count}`), join(folder, `${++count}`)]
    mkdirSync(now)
    const setFiles = setFilesAtOnce(files)
    const write: WriteFile = (path, whenLeft) => {
      made.push(madeFrom)
      return setFiles.write(path, `<svg>${madeFrom}</svg>`, whenLeft)
    }
    await last.into(before, now, files, setFiles)('sheet.svg', madeFrom, write)
    last.letGo()
  }
  return { run, made, pathOf, isLeft: last.isLeft }
}

it('is the same file where it would come out as it stands, from run to run', async () => {
  const { run, made, pathOf } = runs()
  for (const madeFrom of ['reed', 'reed', 'reed']) await run(madeFrom)
  expect(made).toEqual(['reed'])
  expect(statSync(pathOf(3)).ino).toBe(statSync(pathOf(1)).ino)
})

it('is copied where the disk cannot link', async () => {
  const cannot = async () => {
    throw Object.assign(new Error('no links here'), { code: 'EPERM', syscall: 'link' })
  }
  const { run, made, pathOf } = runs({ ...machineFiles, link: cannot })
  for (const madeFrom of ['reed', 'reed', 'reed']) await run(madeFrom)
  expect([made, readFileSync(pathOf(3), 'utf8')]).toEqual([['reed'], '<svg>reed</svg>'])
})

it('is made anew where it would come out otherwise', async () => {
  const { run, made, pathOf } = runs()
  for (const madeFrom of ['reed', 'marsh']) await run(madeFrom)
  expect(made).toEqual(['reed', 'marsh'])
  expect(readFileSync(pathOf(1), 'utf8')).toBe('<svg>reed</svg>')
})

it.each([
  ['written over', (path: string) => writeFileSync(path, 'scribbled')],
  ['written over by as much', (path: string) => writeFileSync(path, '<svg>weed</svg>')],
  ['touched', (path: string) => utimesSync(path, 1, 1)],
  ['taken away', (path: string) => rmSync(path)],
])('is made anew where somebody has %s', async (_, meddle) => {
  const { run, made, pathOf } = runs()
  await run('reed')
  // Not within the same tick of a coarse clock.
  await new Promise(done => setTimeout(done, 20))
  meddle(pathOf(1))
  await run('reed')
  expect([made, readFileSync(pathOf(2), 'utf8')]).toEqual([['reed', 'reed'], '<svg>reed</svg>'])
})

it('is known to be left where it was made from the same in the last run that ended', async () => {
  const { run, isLeft } = runs()
  const left = () => ['reed', 'marsh'].map(madeFrom => isLeft('sheet.svg', madeFrom))
  const asked = [left()]
  for (const madeFrom of ['reed', 'reed', 'marsh']) {
    await run(madeFrom)
    asked.push(left())
  }
  expect(asked).toEqual([
    [false, false],
    [true, false],
    [true, false],
    [false, true],
  ])
  expect(isLeft('other.svg', 'marsh')).toBe(false)
})
