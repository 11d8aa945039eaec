import { describe, expect, it } from 'vitest'
import { loadTypeface } from '../../../fonts/load-typeface.js'
import { pointsToMm } from '../../../src/geometry.js'
import { present } from '../../../src/outcomes.js'
import { noFitProblem } from '../../../src/pieces/faces/size-problem.js'
import { typeScale } from '../../../src/pieces/text/type-scale.js'
import { fitWords, type NoFit } from '../../../src/pieces/word/fit-words.js'
import type { Problem } from '../../../src/problems.js'

const loaded = loadTypeface({ name: 'andika', place: { file: 'plan.yaml' } })
if (!loaded.ok) throw new Error('andika does not load')
const typeface = loaded.value
const type = typeScale({ kind: 'normal' }, typeface)

function problemFor(
  words: readonly string[],
  widthMm: number,
  heightMm: number,
  on?: 'piece' | 'board' | 'page',
): Problem {
  const fit = fitWords({
    typeface,
    large: false,
    words: words.map(word => ({ word, spans: [], room: { widthMm, heightMm } })),
    minimumMm: type.wordMinimumMm,
    maximumMm: type.wordMaximumMm,
  })
  return noFitProblem(fit as NoFit, { type, place: { file: 'plan.yaml' }, ...present({ on }) })
}

const messageFor = (...asked: Parameters<typeof problemFor>): string => problemFor(...asked).message

describe('a word without room', () => {
  it('is told what helps: fewer pieces on a sheet or words on a board, but a page is one already', () => {
    expect(problemFor(['marshmallow'], 20, 20).advice).toMatch(/^Print fewer on a sheet/)
    expect(problemFor(['marshmallow'], 20, 20, 'board').advice).toMatch(/^Take fewer words to a board/)
    expect(problemFor(['marshmallow'], 20, 20, 'page').advice).toBe(
      'Turn the paper, take larger paper, choose a smaller size, or leave that word out.',
    )
  })

  it('is told with the size at which it would fit', () => {
    expect(messageFor(['reed', 'marshmallow'], 20, 20)).toMatch(
      /^"marshmallow" needs more room than the 20 × 20 mm it has: it would fit at [\d.]+ pt, not at 14\.1 pt/,
    )
  })

  it('is never said to fit at the very size at which it does not', () => {
    // p hangs below and b stands above: each fits this height alone, both on one baseline do not.
    const heightMm = pointsToMm(14) * 0.85
    const [, would, least] = /fit at ([\d.]+) pt, not at ([\d.]+) pt/.exec(
      messageFor(['pea', 'bud'], 90, heightMm),
    )!
    expect(Number(would)).toBeLessThan(Number(least))
  })

  it('is told in words, without sizes below nothing, where the piece leaves it none', () => {
    expect(messageFor(['reed'], 20, -3)).toBe('"reed" has next to no room on a piece as small as this')
  })
})
