import { describe, expect, it } from 'vitest'
import { loadTypeface } from '../../../fonts/load-typeface.js'
import { pointsToMm } from '../../../src/geometry.js'
import { type Fit, fitWords, type NoFit } from '../../../src/pieces/word/fit-words.js'
import { measureWord } from '../../../src/pieces/word/word-art.js'

const loaded = loadTypeface({ name: 'andika', place: { file: 'plan.yaml' } })
if (!loaded.ok) throw new Error('andika does not load')
const typeface = loaded.value
const limits = { typeface, large: false, minimumMm: pointsToMm(14), maximumMm: pointsToMm(64) }
const inRoom = (words: readonly string[], widthMm: number, heightMm = 40) =>
  words.map(word => ({ word, spans: [], room: { widthMm, heightMm } }))

const asFit = (fit: Fit | NoFit): Fit => {
  if (!('sizeMm' in fit)) throw new Error(`${fit.tooLong().word} does not fit`)
  return fit
}

describe('one size for a set', () => {
  it('is the largest at which the longest word fits, to a quarter of a point', () => {
    const fit = asFit(fitWords({ ...limits, words: inRoom(['reed', 'thrush', 'spring'], 40) }))
    const width = (sizeMm: number, word: string) => measureWord({ typeface, word, spans: [], sizeMm }).widthMm
    const widths = (sizeMm: number) => ['reed', 'thrush', 'spring'].map(word => width(sizeMm, word))
    expect(Math.max(...widths(fit.sizeMm))).toBeLessThanOrEqual(40)
    expect(Math.max(...widths(fit.sizeMm + pointsToMm(0.26)))).toBeGreaterThan(40)
  })

  it('names the word that decides, and the size without it', () => {
    const fit = asFit(fitWords({ ...limits, words: inRoom(['reed', 'frog', 'marshmallow'], 50) }))
    expect(fit.decider()?.word).toBe('marshmallow')
    expect(fit.decider()?.sizeWithoutMm).toBeGreaterThan(fit.sizeMm)
  })

  it('stops at the largest size wanted, and then no word decides', () => {
    const fit = asFit(fitWords({ ...limits, words: inRoom(['reed'], 500, 200) }))
    expect(fit.sizeMm).toBe(limits.maximumMm)
    expect(fit.decider()).toBeUndefined()
  })

  it('leaves room above and below one shared baseline', () => {
    // p hangs below, b stands above: each fits the height alone, together they need more.
    const fit = asFit(fitWords({ ...limits, words: inRoom(['pea', 'bud'], 200, 12) }))
    expect(fit.aboveMm + fit.belowMm).toBeLessThanOrEqual(12)
  })

  it('says which word is too long and where it would fit', () => {
    const fit = fitWords({ ...limits, words: inRoom(['reed', 'marshmallow'], 20) })
    const { word, wouldFitMm } = (fit as NoFit).tooLong()
    expect(word).toBe('marshmallow')
    expect(wouldFitMm).toBeGreaterThan(0)
    expect(wouldFitMm).toBeLessThan(limits.minimumMm)
  })
})
