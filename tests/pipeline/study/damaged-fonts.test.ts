import { describe, expect, it } from 'vitest'
import { putPlanOnSheets } from '../../../src/pipeline.js'
import { damagedFonts, flipped, goodFont } from '../../pieces/typeface/damaged-fonts.js'
import { filesInMemory } from '../../plan/reading.js'

const plan = `title: Along the marsh
font: fonts/reedbed.ttf
words: [reed, marsh]
print:
  - word-cards
  - layout: key
    font: fonts/reedbed.ttf
`
const onSheets = (font: Uint8Array, bold?: Uint8Array) =>
  putPlanOnSheets({
    planFile: 'week.yaml',
    files: filesInMemory({
      'week.yaml': plan,
      'fonts/reedbed.ttf': font,
      ...(bold && { 'fonts/reedbed-Bold.ttf': bold }),
    }),
  })

describe('a plan that names a damaged font', () => {
  it.each(Object.entries(damagedFonts))(
    '%s: is told at each line that names it, with advice',
    async (_, font) => {
      const { ok, problems } = await onSheets(font)
      expect([ok, problems.map(({ severity, place }) => [severity, place.line, place.column])]).toEqual([
        false,
        [
          ['error', 2, 7],
          ['error', 7, 11],
        ],
      ])
      for (const { message, advice } of problems) {
        expect(message).toMatch(/^the font "fonts\/reedbed.ttf" cannot be used: /)
        expect(advice).toMatch(/TTF or OTF/)
      }
    },
  )

  it('is told of its bold weight, which is found beside it', async () => {
    const { problems } = await onSheets(goodFont, goodFont.subarray(0, 3000))
    expect(problems[0]).toMatchObject({ place: { line: 2 }, message: expect.stringContaining('bold') })
  })

  it('makes its sheets where the font is whole', async () => {
    expect((await onSheets(goodFont)).ok).toBe(true)
  })

  it('with flipped bits is told, or makes its sheets', async () => {
    for (let seed = 100; seed < 112; seed++) {
      const { ok, problems } = await onSheets(flipped(seed, 1 + (seed % 2)))
      expect(ok || problems.every(({ place }) => place.line === 2 || place.line === 7)).toBe(true)
    }
  })
})
