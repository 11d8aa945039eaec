import { describe, expect, it } from 'vitest'
import type { FileAccess } from '../../../src/plan/disk/file-access.js'
import { filesInMemory, problemsOf } from '../reading.js'

const png = Buffer.from('89504e470d0a1a0a0000000d', 'hex')
const plan = 'words:\n  - word: marsh\n    picture: marsh.png\nprint: [key]\n'
const place = 'week.yaml:3:14: error: the picture "marsh.png"'

/** A disk on which every file is of that size. */
function filesOf(sizeBytes: number): FileAccess {
  const small = filesInMemory({ 'marsh.png': png })
  return {
    beginning: small.beginning,
    read: (path, most) => (sizeBytes > most ? { kind: 'too large', sizeBytes } : small.read(path, most)),
  }
}

describe('a picture', () => {
  it('of three gigabytes is refused at its line, with what may be read', () => {
    expect(problemsOf(plan, filesOf(3_000_000_000))).toEqual([`${place} has 3,000 million bytes`])
    expect(problemsOf(plan, filesOf(50_000_001))).toEqual([`${place} has 50 million bytes`])
  })

  it('of fifty million bytes is taken', () => {
    expect(problemsOf(plan, filesOf(50_000_000))).toEqual([])
  })

  it('that begins as one and cannot be read to its end is refused', () => {
    const files: FileAccess = { ...filesOf(100), read: () => ({ kind: 'unreadable' }) }
    expect(problemsOf(plan, files)).toEqual([`${place} cannot be read`])
  })
})
