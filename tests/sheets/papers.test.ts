import { describe, expect, it } from 'vitest'
import { papers } from '../../src/sheets/papers.js'
import { paperNamed } from './paper-named.js'

describe('papers', () => {
  it.each([
    ['Letter', 'letter'],
    ['US_Letter', 'letter'],
    ['A4', 'a4'],
    ['index 3x5', 'index-3x5'],
    ['3×5', 'index-3x5'],
    ['11 x 17 in', 'tabloid'],
  ])('knows %s as %s', (written, name) => {
    expect(paperNamed(written)?.name).toBe(name)
  })

  it('does not know a paper that it has not', () => {
    expect(paperNamed('a2')).toBeUndefined()
  })

  it('are all portrait and each name is taken once', () => {
    expect(papers.filter(paper => paper.widthMm > paper.heightMm)).toEqual([])
    const names = papers.flatMap(paper => [paper.name, ...(paper.aliases ?? [])])
    expect(new Set(names.map(name => paperNamed(name)?.name)).size).toBe(papers.length)
    for (const paper of papers)
      for (const alias of paper.aliases ?? []) expect(paperNamed(alias)?.name).toBe(paper.name)
  })

  it('may have any size, turned portrait', () => {
    expect(paperNamed('200 x 120.5 mm')).toMatchObject({ widthMm: 120.5, heightMm: 200 })
  })
})
