import { describe, expect, it } from 'vitest'
import type { Accent } from '../../../src/plan/plan.js'
import { openLexicon } from '../../../src/words/lexicon/lexicon.js'
import {
  inPlainSounds,
  legend,
  plainSounds,
  respelling,
} from '../../../src/words/pronunciation/respelling.js'
import { studyWord } from '../../../src/words/study.js'

const lexicon = openLexicon()

function said(text: string, accent?: Accent): string {
  const ways = accent === undefined ? {} : { accent }
  const word = studyWord({ text, place: { file: 'plan.yaml' }, overrides: {} }, lexicon, ways)
  if (!word.ok) throw new Error(`${text} is no word`)
  return respelling(word.value, word.value.pronunciations[0]!)
}

describe('how a word is said, in letters that a teacher reads', () => {
  it.each([
    ['bridge', 'brij'],
    ['cake', 'kāk'],
    ['thread', 'thred'],
    ['knife', 'nīf'],
    ['marsh', 'mahrsh'],
    ['want', 'wahnt'],
    ['bear', 'bair'],
    ['house', 'hows'],
    ['queen', 'kwēn'],
    ['book', 'buuk'],
    ['moon', 'moon'],
  ])('%s is %s', (word, plain) => {
    expect(said(word)).toBe(plain)
  })

  it.each([
    ['pumpkin', /^PUMP-k(?:i|uh)n$/],
    ['tiger', /^TĪ-ger$/],
    ['about', /^uh-BOWT$/],
    ['table', /^TĀ-buhl$/],
  ])('%s is parted at its syllables, the stressed one in capitals', (word, plain) => {
    expect(said(word)).toMatch(plain)
  })

  it.each([
    ['chair', 'chai(r)'],
    ['near', 'nee(r)'],
    ['car', 'kah'],
    ['story', 'STAWR-ē'],
  ])('%s is %s for a class that drops its r', (word, plain) => {
    expect(said(word, { rhotic: false, cotCaught: 'apart', wh: 'w' })).toBe(plain)
  })

  it('is put for every /ARPABET/ in a sentence, and for nothing else', () => {
    expect(inPlainSounds('br: b /B/, r /R/; either/or, OK, /K S/')).toBe(
      'br: b /b/, r /r/; either/or, OK, /ks/',
    )
    expect(plainSounds('B R IH1 JH')).toBe('brij')
  })

  it('comes with what its signs mean, those alone that have to be told', () => {
    expect(legend(['B EH1 D'])).toEqual([])
    expect(legend(['TH IY1 F', 'S IY1'])).toEqual(['th thin', 'ē see'])
  })

  it('leaves no sound of the five thousand most familiar words without a sign', () => {
    let count = 0
    for (const { word } of lexicon.entries()) {
      if (count++ === 5000) break
      expect(said(word)).toMatch(/^[\p{L}-]+$/u)
    }
  })
})
