import { describe, expect, test } from 'vitest'
import type { Accent } from '../../../src/plan/plan.js'
import { alignWord } from '../../../src/words/alignment/graphemes.js'
import { inAccent } from '../../../src/words/pronunciation/accent.js'
import { written } from '../alignment/written-graphemes.js'

const american: Accent = { rhotic: true, cotCaught: 'apart', wh: 'w' }

function spoken(word: string, pronunciation: string, accent: Partial<Accent>) {
  const { graphemes } = alignWord(word, pronunciation)
  const changed = inAccent({ graphemes, pronunciation }, { ...american, ...accent })
  return [written(changed.graphemes), changed.pronunciation]
}

describe("a class's accent", () => {
  test("the lexicon's own changes nothing", () => {
    expect(spoken('marsh', 'M AA1 R SH', {})).toEqual(['m:M ar:AA+R sh:SH', 'M AA1 R SH'])
  })

  test('r dropped: ar is one sound, the r of fire is silent, an r before a vowel stays', () => {
    expect(spoken('marsh', 'M AA1 R SH', { rhotic: false })).toEqual(['m:M ar:AA sh:SH', 'M AA1 SH'])
    expect(spoken('fire', 'F AY1 R', { rhotic: false })).toEqual(['f:F i:AY r:- e:-', 'F AY1'])
    expect(spoken('ferry', 'F EH1 R IY0', { rhotic: false })[1]).toBe('F EH1 R IY0')
    expect(spoken('reed', 'R IY1 D', { rhotic: false })[1]).toBe('R IY1 D')
    expect(spoken('tern', 'T ER1 N', { rhotic: false })[0]).toBe('t:T er:ER n:N')
  })

  test('cot and caught merged: AO is AA, except before r', () => {
    expect(spoken('caught', 'K AO1 T', { cotCaught: 'merged' })[0]).toBe('c:K augh:AA t:T')
    expect(spoken('wharf', 'W AO1 R F', { cotCaught: 'merged' })[0]).toBe('wh:W ar:AO+R f:F')
  })

  test('wh its own: HH W where the letters are wh, and w as it was', () => {
    expect(spoken('whale', 'W EY1 L', { wh: 'own' })).toEqual(['wh:HH+W a:EY l:L e:-', 'HH W EY1 L'])
    expect(spoken('who', 'HH UW1', { wh: 'own' })[0]).toBe('wh:HH o:UW')
    expect(spoken('wave', 'W EY1 V', { wh: 'own' })[0]).toBe('w:W a:EY v:V e:-')
  })
})
