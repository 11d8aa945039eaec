import { describe, expect, it } from 'vitest'
import { find } from '../../src/oaktag.js'

describe('find, of the library', () => {
  it('gives studied words, each with what in it fits', async () => {
    const found = await find({ patterns: ['digraph-blend'], place: 'beginning', count: 2 })
    expect(found).toMatchObject({
      ok: true,
      value: {
        words: [
          { word: { text: 'through', syllables: ['through'] }, remark: 'thr' },
          { word: { text: 'three' }, remark: 'thr' },
        ],
        waysOut: [],
        byClassFile: false,
      },
    })
  })

  it('gives what would work where nothing fits', async () => {
    const found = await find({ sounds: 40, syllables: 1, count: 2 })
    expect(found).toMatchObject({ value: { words: [] } })
    expect(found.ok && found.value.waysOut.map(({ does, options }) => [does, ...options])).toContainEqual([
      'leave out',
      '--sounds 40',
    ])
  })

  it('gives problems as values', async () => {
    expect(await find({ like: 'r33d', count: 2 })).toMatchObject({
      ok: false,
      problems: [{ severity: 'error' }],
    })
    expect(await find({ taught: 'nowhere.txt', count: 2 })).toMatchObject({
      ok: false,
      problems: [{ place: { file: 'nowhere.txt' } }],
    })
  })
})
