import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { openPlanFile } from '../../src/desk/server/plan-file.js'
import { deskFolder } from './desk-folder.js'

const text = 'title: Marsh # ours\nwords:\n  - reed\n  - marsh # wet\n'
const opened = () => {
  const { folder, plan } = deskFolder(text)
  return { folder, plan, file: openPlanFile(plan), onDisk: () => readFileSync(plan, 'utf8') }
}
const clue = { kind: 'set', path: ['words', 1, 'clue'], value: 'wet land', textAs: 'word' } as const
const pond = { kind: 'insert', path: ['words'], at: 2, values: ['pond'] } as const

describe('a step', () => {
  it('is in the file at once, is undone and done again, and leaves nothing else behind', () => {
    const { folder, file, onDisk } = opened()
    expect(file.step({ from: file.version(), changes: [clue], says: 'the clue' })).toEqual({
      ok: true,
      version: file.version(),
    })
    const after = 'title: Marsh # ours\nwords:\n  - reed\n  - word: marsh # wet\n    clue: wet land\n'
    expect(onDisk()).toBe(after)
    expect(file.undoes()).toBe('the clue')
    file.undo()
    expect([onDisk(), file.undoes(), file.redoes()]).toEqual([text, null, 'the clue'])
    file.redo()
    expect(onDisk()).toBe(after)
    expect(readdirSync(folder)).toEqual(['week.yaml'])
  })

  it('is undone with the others of its gesture', () => {
    const { file, onDisk } = opened()
    for (const value of ['p', 'po', 'pond'])
      file.step({
        from: file.version(),
        changes: [{ kind: 'set', path: ['words', 0], value }],
        says: value,
        gesture: 'typing',
      })
    file.undo()
    expect(onDisk()).toBe(text)
  })

  it('is made whole or not at all', () => {
    const { file, onDisk } = opened()
    const gone = { kind: 'remove', path: ['words', 7] } as const
    expect(file.step({ from: file.version(), changes: [pond, gone], says: 'both' }).ok).toBe(false)
    expect(onDisk()).toBe(text)
  })
})

it('is never made in a file of another encoding, which would be lost', () => {
  const { plan } = deskFolder('')
  const bytes = Buffer.from('title: caf\xe9\nwords: [reed]\n', 'latin1')
  writeFileSync(plan, bytes)
  const file = openPlanFile(plan)
  const answer = file.step({
    from: file.version(),
    changes: [{ kind: 'set', path: ['title'], value: 'x' }],
    says: 'x',
  })
  expect(answer).toEqual({ ok: false, why: expect.stringContaining('not in UTF-8') })
  expect(readFileSync(plan)).toEqual(bytes)
})

describe('another program that saves meanwhile', () => {
  it('loses nothing to a step from before, nor the step to it', () => {
    const { plan, file, onDisk } = opened()
    const from = file.version()
    writeFileSync(plan, text.replace('  - reed\n', '  - heron # new\n  - reed\n'))
    expect(file.step({ from, changes: [clue, pond], says: 'two' }).ok).toBe(true)
    expect(onDisk()).toBe(
      'title: Marsh # ours\nwords:\n  - heron # new\n  - reed\n  - word: marsh # wet\n    clue: wet land\n  - pond\n',
    )
    file.undo()
    expect(onDisk()).toContain('heron # new')
    file.undo()
    expect(onDisk()).toBe(text)
  })

  it('is not written over where it changed the same thing: that is told', () => {
    const { plan, file, onDisk } = opened()
    const from = file.version()
    const theirs = text.replace('title: Marsh', 'title: Pond')
    writeFileSync(plan, theirs)
    const answer = file.step({
      from,
      changes: [{ kind: 'set', path: ['title'], value: 'Fen' }],
      says: 'the title',
    })
    expect(answer).toEqual({
      ok: false,
      why: expect.stringContaining('Another program changed the same thing'),
    })
    expect(onDisk()).toBe(theirs)
  })

  it('is not undone unseen', () => {
    const { plan, file, onDisk } = opened()
    file.step({ from: file.version(), changes: [pond], says: 'pond' })
    writeFileSync(plan, `${onDisk()}font: lexend\n`)
    expect(file.undo().ok).toBe(false)
    expect(onDisk()).toContain('font: lexend')
  })
})

describe('a list of words beside the plan', () => {
  const reed = { kind: 'set', path: ['words', 0], value: 'rush', file: 'week.txt' } as const
  const openedWithList = () => {
    const { folder, plan } = deskFolder('words:\n  - week.txt\n  - pond\n')
    const list = join(folder, 'week.txt')
    writeFileSync(list, '# ours\nreed\nmarsh\n')
    return { file: openPlanFile(plan), list, plan, onList: () => readFileSync(list, 'utf8') }
  }

  it('takes a step, alone or with the plan, undone and done again as one', () => {
    const { file, list, plan, onList } = openedWithList()
    const before = [readFileSync(plan, 'utf8'), onList()]
    const bring = [
      { kind: 'insert', path: ['words'], at: 1, values: ['marsh'] },
      { kind: 'remove', path: ['words', 1], file: 'week.txt' },
    ] as const
    expect(file.step({ from: file.version(), changes: [reed], says: 'rush' }).ok).toBe(true)
    expect(onList()).toBe('# ours\nrush\nmarsh\n')
    expect(file.step({ from: file.version(), changes: bring, says: 'marsh' }).ok).toBe(true)
    expect([readFileSync(plan, 'utf8'), onList()]).toEqual([
      'words:\n  - week.txt\n  - marsh\n  - pond\n',
      '# ours\nrush\n',
    ])
    file.undo()
    file.undo()
    expect([readFileSync(plan, 'utf8'), readFileSync(list, 'utf8')]).toEqual(before)
    file.redo()
    expect(onList()).toBe('# ours\nrush\nmarsh\n')
  })

  it('keeps what another program writes into it, and the step finds its word again', () => {
    const { file, list, onList } = openedWithList()
    const from = file.version()
    writeFileSync(list, 'wren\nreed\nmarsh\n')
    expect(file.step({ from, changes: [reed], says: 'rush' }).ok).toBe(true)
    expect(onList()).toBe('wren\nrush\nmarsh\n')
    file.undo()
    expect([onList(), file.undoes()]).toEqual(['wren\nreed\nmarsh\n', 'what another program changed'])
  })

  it('is written only where the plan names it and it lies beside the plan', () => {
    const { folder, plan } = deskFolder('words:\n  - ../above.txt\n  - pond\n')
    const inner = join(folder, 'inner')
    mkdirSync(inner)
    const own = join(inner, 'week.yaml')
    writeFileSync(own, readFileSync(plan, 'utf8'))
    writeFileSync(join(folder, 'above.txt'), 'reed\n')
    writeFileSync(join(inner, 'other.txt'), 'reed\n')
    const file = openPlanFile(own)
    for (const name of ['../above.txt', 'other.txt', 'week.yaml']) {
      const answer = file.step({ from: file.version(), changes: [{ ...reed, file: name }], says: 'x' })
      expect(answer.ok, name).toBe(false)
    }
    expect([
      readFileSync(join(folder, 'above.txt'), 'utf8'),
      readFileSync(join(inner, 'other.txt'), 'utf8'),
    ]).toEqual(['reed\n', 'reed\n'])
  })

  it('is not made longer than is read again', () => {
    const { file, onList } = openedWithList()
    const insert = { ...reed, value: 'r'.repeat(1_000_001) }
    const answer = file.step({ from: file.version(), changes: [insert], says: 'many' })
    expect(answer).toEqual({ ok: false, why: expect.stringContaining('longer than is read again') })
    expect(onList()).toBe('# ours\nreed\nmarsh\n')
  })
})
