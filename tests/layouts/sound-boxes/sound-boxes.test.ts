import { describe, expect, it } from 'vitest'
import { pathBox } from '../../../src/files/page/path-data.js'
import type { Box } from '../../../src/geometry.js'
import type { PathShape } from '../../../src/pieces/piece.js'
import { kindsOf, linesOn, marshWithClues, piecesOf, printItem, problemsOf } from '../print-item.js'

type Piece = ReturnType<typeof piecesOf>[number]

/** The left edges of the upright bars of the boxes, from the path that draws all the bars. */
function uprightBars(piece: Piece): readonly number[] {
  const paths = piece.art.flatMap(({ art }) =>
    art.shapes.filter((shape): shape is PathShape => shape.kind === 'path'),
  )
  const bars = paths
    .flatMap(({ d }) => [...d.matchAll(/M([\d.]+) ([\d.]+)L([\d.]+) [\d.]+L[\d.]+ ([\d.]+)L/g)])
    .map(match => match.slice(1).map(Number) as [number, number, number, number])
  return bars
    .filter(([left, top, right, bottom]) => bottom - top > 10 && right - left < 1)
    .map(([left]) => left)
}

/** Paths as wide as the boxes and higher than their lines. */
function arrowsOn(piece: Piece): readonly PathShape[] {
  const paths = piece.art.flatMap(({ art }) =>
    art.shapes.filter((shape): shape is PathShape => shape.kind === 'path'),
  )
  const [left, right] = [Math.min(...uprightBars(piece)), Math.max(...uprightBars(piece))]
  const isAsWide = ({ xMm, widthMm }: Box) => Math.abs(xMm - left) < 1 && Math.abs(xMm + widthMm - right) < 1
  return paths.filter(({ d }) => isAsWide(pathBox(d)!) && pathBox(d)!.heightMm > 2)
}

const boxesOn = (piece: Piece) => uprightBars(piece).length - 1

describe('sound boxes', () => {
  // One box a sound, no letters: Elkonin 1963. Counts by hand, as taught: m-ar-sh, s-p-l-a-sh, f-o-x with two for x.
  it.each([
    ['reed', 3],
    ['marsh', 3],
    ['thrush', 4],
    ['gnat', 3],
    ['spring', 5],
    ['wren', 3],
  ])('have for %s %i boxes', async (word, sounds) => {
    const printed = await printItem(`{layout: sound-boxes, show: word, words: [${word}]}`)
    expect(boxesOn(piecesOf(printed)[0]!)).toBe(sounds)
  })

  it('are large enough for a counter, and equally large on every strip', async () => {
    const pieces = piecesOf(await printItem('{layout: sound-boxes}'))
    const edges = pieces.flatMap(piece => {
      const bars = uprightBars(piece)
      return bars.slice(1).map((left, index) => left - bars[index]!)
    })
    expect(Math.min(...edges)).toBeGreaterThanOrEqual(18)
    expect(Math.max(...edges) - Math.min(...edges)).toBeLessThan(0.01)
  })

  it('have an arrow below the boxes on every strip of a sheet as it comes', async () => {
    const pieces = piecesOf(await printItem('{layout: sound-boxes}'))
    expect(pieces.map(piece => arrowsOn(piece).length)).toEqual(pieces.map(() => 1))
    expect(await problemsOf('{layout: sound-boxes}')).not.toContain('arrow')
  })

  it('go without the arrow where the strips are too low for it, and say so', async () => {
    const low = '{layout: sound-boxes, across: 1, down: 8}'
    expect(piecesOf(await printItem(low)).flatMap(arrowsOn)).toEqual([])
    expect(await problemsOf(low)).toContain('too low for the arrow')
  })

  it('show no word where there are no pictures, and the word where the teacher asks for it', async () => {
    const textsOf = async (item: string) => piecesOf(await printItem(item)).flatMap(piece => piece.text)
    expect(await textsOf('{layout: sound-boxes}')).toEqual([])
    expect(await textsOf('{layout: sound-boxes, show: word, words: [reed, frog]}')).toEqual(['reed', 'frog'])
  })

  it('have the words and their sounds on a page of its own', async () => {
    const printed = await printItem('{layout: sound-boxes}')
    expect(kindsOf(printed)).toEqual(['pieces', 'answers', 'cover'])
    expect(linesOn(printed, 'answers')).toContain('4 | thrush | 4: th·r·u·sh')
  })

  it('say of a guess that it is one', async () => {
    const plan = marshWithClues.replace('word: reed', 'word: zorpish')
    expect(linesOn(await printItem('{layout: sound-boxes}', plan), 'answers').join('\n')).toMatch(
      /zorpish.*\(a guess\)/,
    )
  })

  it('show nothing but their set mark in large print, where no word is wanted', async () => {
    const strips = piecesOf(await printItem('{layout: sound-boxes, size: large}'))
    expect(strips.map(strip => strip.art.flatMap(({ art }) => art.text.map(run => run.text)))).toEqual(
      strips.map(strip => [strip.setMark]),
    )
  })

  it('name the words that have no picture', async () => {
    expect(await problemsOf('{layout: sound-boxes, show: picture, words: [reed, frog]}')).toContain(
      'no picture for "reed", "frog"',
    )
  })

  it('warn of boxes that a counter barely fits, and refuse smaller ones', async () => {
    expect(await problemsOf('{layout: sound-boxes, paper: a4, across: 2, down: 5}')).toMatch(
      /the sound boxes are 1\d\.\d mm wide, because "\w+" has 5 sounds; 18 mm suits a counter/,
    )
    expect(await problemsOf('{layout: sound-boxes, across: 4, down: 5}')).toContain('no counter goes in')
  })
})
