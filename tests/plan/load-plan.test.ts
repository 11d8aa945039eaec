import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { loadPlan } from '../../src/plan/load-plan.js'
import { toldBy } from './reading.js'
import { vocabulary } from './vocabulary.js'

let folder = ''
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'oaktag-plan-'))
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

function planFile(name: string, contents: string | Uint8Array): string {
  const path = join(folder, name)
  writeFileSync(path, contents)
  return path
}

const told = (path: string) =>
  toldBy(loadPlan(path, vocabulary)).map(problem => problem.replace(path, 'PLAN'))

describe('a plan on disk', () => {
  it('is read, with the lists and pictures beside it', () => {
    planFile('list.csv', 'word,picture\nreed,reed.png\n')
    planFile('reed.png', Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a))
    const outcome = loadPlan(planFile('marsh.yaml', 'words: list.csv\nprint: [key]\n'), vocabulary)
    expect(outcome).toMatchObject({
      ok: true,
      value: { stem: 'marsh', words: [{ text: 'reed', picture: join(folder, 'reed.png') }] },
    })
  })

  it('must be there', () => {
    const path = join(folder, 'none.yaml')
    expect(told(path)).toEqual([`PLAN: error: the plan "${path}" is not there`])
  })

  it('must not lie behind a file', () => {
    const path = join(planFile('file', ''), 'none.yaml')
    expect(told(path)).toEqual([`PLAN: error: the plan "${path}" is not there`])
  })

  it('must be a file', () => {
    const path = join(folder, 'folder.yaml')
    mkdirSync(path)
    expect(told(path)).toEqual([`PLAN: error: "${path}" is a folder, not a file`])
  })

  it('that is not in UTF-8 is read as an older text of Windows, with a warning', () => {
    const text = 'title: caf\xe9\nwords: [reed]\nprint: [key]\n'
    const path = planFile('latin.yaml', Buffer.from(text, 'latin1'))
    expect(told(path)).toEqual([
      'PLAN:1:11: warning: the file is not in UTF-8: from here on it is read as a Western European text of Windows',
    ])
  })

  it('must be text', () => {
    const path = planFile('zip.yaml', Buffer.from('title: \0\x03\n', 'latin1'))
    expect(told(path)).toEqual(['PLAN:1:8: error: the file is not plain text from here on'])
  })

  it('must not be larger than a plan can be', () => {
    const path = planFile('large.yaml', '#'.repeat(1_000_001))
    expect(told(path)).toEqual([`PLAN: error: the plan "${path}" has 1.0 million bytes`])
  })

  it('must be readable', () => {
    const unreadable = () => ({ kind: 'unreadable' }) as const
    const locked = { read: unreadable, beginning: unreadable }
    expect(toldBy(loadPlan('week.yaml', vocabulary, locked))).toEqual([
      'week.yaml: error: the plan "week.yaml" cannot be read',
    ])
  })

  it('must have an end: a device or a pipe is not waited for', () => {
    const path = process.platform === 'win32' ? String.raw`\\.\NUL` : '/dev/null'
    expect(told(path)).toEqual([`PLAN: error: the plan "${path}" cannot be read`])
  })
})

describe('a font file', () => {
  it('is read where it can be used, and told at its line where not', () => {
    planFile('face.ttf', Uint8Array.of(0, 1, 0, 0, 0))
    planFile('damaged.otf', 'no font')
    const plan = (font: string) => planFile('font.yaml', `font: ${font}\nwords: [reed]\nprint: [key]\n`)
    expect(loadPlan(plan('face.ttf'), vocabulary)).toMatchObject({
      value: { font: join(folder, 'face.ttf') },
    })
    expect(told(plan('damaged.otf'))).toEqual([
      'PLAN:1:7: error: the font "damaged.otf" cannot be used: it is damaged',
    ])
    expect(told(plan('none.ttf'))).toEqual(['PLAN:1:7: error: no font file "none.ttf" can be read'])
  })
})
