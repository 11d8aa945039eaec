import { describe, expect, test } from 'vitest'
import { alignWord } from '../../../src/words/alignment/graphemes.js'
import { aligned } from './written-graphemes.js'

describe('letters against sounds', () => {
  test('what looks like a team is none when two sounds are heard', () => {
    expect(aligned('pothole', 'P AA1 T HH OW2 L')).toBe('p:P o:AA t:T h:HH o:OW l:L e:-')
    expect(aligned('react', 'R IY0 AE1 K T')).toBe('r:R e:IY a:AE c:K t:T')
    expect(aligned('unknown', 'AH0 N N OW1 N')).toBe('u:AH n:N kn:N ow:OW n:N')
  })

  test('the same letters follow the pronunciation', () => {
    expect(aligned('read', 'R IY1 D')).toBe('r:R ea:IY d:D')
    expect(aligned('read', 'R EH1 D')).toBe('r:R ea:EH d:D')
    expect(aligned('naked', 'N EY1 K AH0 D')).toBe('n:N a:EY k:K e:AH d:D')
  })

  test('capitals and accents stay as typed', () => {
    expect(aligned('Thursday', 'TH ER1 Z D EY2')).toBe('Th:TH ur:ER s:Z d:D ay:EY')
    expect(aligned('café', 'K AH0 F EY1')).toBe('c:K a:AH f:F é:EY')
  })

  test('no grapheme crosses an apostrophe or a hyphen', () => {
    expect(aligned("they're", 'DH EH1 R')).toBe("th:DH ey:EH 'r:R e:-")
    expect(aligned("herons'", 'HH EH1 R AH0 N Z')).toBe("h:HH e:EH r:R o:AH n:N s':Z")
    expect(aligned('drip-proof', 'D R IH1 P P R UW2 F')).toBe('d:D r:R i:IH p-:P p:P r:R oo:UW f:F')
  })

  test('what the table cannot explain is called an exception, with the letters and the sounds', () => {
    expect(alignWord('island', 'AY1 L AH0 N D').exceptions).toEqual([
      's is silent here, which no rule explains',
    ])
    expect(alignWord('mr', 'M IH1 S T ER0').exceptions).toEqual([
      'r spells /IH S T ER/, which no rule explains',
    ])
    expect(alignWord('thread', 'TH R EH1 D').exceptions).toEqual([])
  })
})
