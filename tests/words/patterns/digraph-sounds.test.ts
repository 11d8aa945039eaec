import { describe, expect, it } from 'vitest'
import { isDigraph } from '../../../src/words/patterns/digraph-sounds.js'

describe('a consonant digraph', () => {
  it('has a sound that neither of its letters has alone', () => {
    expect(isDigraph('ch', 'CH')).toBe(true)
    expect(isDigraph('ch', 'SH')).toBe(true)
    expect(isDigraph('ph', 'F')).toBe(true)
  })

  it('is none where one letter keeps its own sound and the other is silent: school, Thomas, who', () => {
    expect(isDigraph('ch', 'K')).toBe(false)
    expect(isDigraph('th', 'T')).toBe(false)
    expect(isDigraph('wh', 'HH')).toBe(false)
  })
})
