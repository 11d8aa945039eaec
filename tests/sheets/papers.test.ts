import { describe, expect, it } from 'vitest'
import { customPaper, findPaper, papers } from '../../src/sheets/papers.js'

describe('papers', () => {
  it.each([
    ['Letter', 'letter'],
    ['US_Letter', 'letter'],
    ['A4', 'a4'],
    ['index 3x5', 'index-3x5'],
    ['3×5', 'index-3x5'],
    ['11 x 17 in', 'tabloid'],
  ])('knows %s as %s', (written, name) => {
    expect(findPaper(written)?.name).toBe(name)
  })

  it('does not know a paper that it has not', () => {
    expect(findPaper('a2')).toBeUndefined()
  })

  it('are all portrait and each name is taken once', () => {
    expect(papers.filter(paper => paper.widthMm > paper.heightMm)).toEqual([])
    const names = papers.flatMap(paper => [paper.name, ...(paper.aliases ?? [])])
    expect(new Set(names.map(name => findPaper(name)?.name)).size).toBe(papers.length)
    for (const paper of papers)
      for (const alias of paper.aliases ?? []) expect(findPaper(alias)?.name).toBe(paper.name)
  })

  it('may have any size, turned portrait and named after it', () => {
    expect(customPaper({ widthMm: 200, heightMm: 120.5 })).toEqual({
      name: '120.5 x 200 mm',
      widthMm: 120.5,
      heightMm: 200,
    })
  })
})
