import { describe, expect, test } from 'vitest'
import { inOneWriting, writings } from '../../../src/words/pronunciation/one-writing.js'

describe('sounds that the dictionary writes in two ways', () => {
  test.each([
    ['tire', 'T AY1 ER0', 'T AY1 R', 'as fire'],
    ['sour', 'S AW1 ER0', 'S AW1 R', 'as hour'],
    ['around', 'ER0 AW1 N D', 'AH0 R AW1 N D', 'a·round'],
    ['terrific', 'T ER0 IH1 F IH0 K', 'T AH0 R IH1 F IH0 K', 'ter·rif·ic'],
    ['decoration', 'D EH2 K ER0 EY1 SH AH0 N', 'D EH2 K AH0 R EY1 SH AH0 N', 'dec·o·ra·tion'],
    ['raw', 'R AA1', 'R AO1', 'as law'],
    ['falling', 'F AA1 L IH0 NG', 'F AO1 L IH0 NG', 'as fall'],
    ['wobbly', 'W AA1 B AH0 L IY0', 'W AA1 B L IY0', 'wob·bly'],
    ['sparrow', 'S P EH1 R OW0', 'S P AE1 R OW0', 'as arrow'],
    ['catcher', 'K AE1 CH ER2', 'K AE1 CH ER0', 'as pitcher'],
    ['visually', 'V IH1 ZH W AH0 L IY0', 'V IH1 ZH UW0 AH0 L IY0', 'as visual'],
    ['usually', 'Y UW1 ZH AH0 W AH0 L IY0', 'Y UW1 ZH UW0 AH0 L IY0', 'as usual'],
  ])('%s: %s becomes %s', (word, listed, written, why) => {
    expect(inOneWriting(word, listed), why).toBe(written)
  })

  test.each([
    ['forever', 'F ER0 EH1 V ER0', 'for keeps its r'],
    ['operation', 'AA2 P ER0 EY1 SH AH0 N', 'op·er·a·tion'],
    ['interrupt', 'IH2 N T ER0 AH1 P T', 'inter- keeps its er'],
    ['memory', 'M EH1 M ER0 IY0', 'no stress follows'],
    ['flower', 'F L AW1 ER0', 'its e is written'],
    ['liar', 'L AY1 ER0', 'its a is written'],
    ['wallet', 'W AA1 L IH0 T', 'a after w'],
    ['palm', 'P AA1 M', 'a before lm'],
    ['larkspur', 'L AA1 R K S P ER2', 'lark and spur'],
    ['vary', 'V EH1 R IY0', 'one r'],
    ['tear', 'T EH1 R', 'another vowel'],
  ])('%s: %s stays, %s', (word, listed) => {
    expect(inOneWriting(word, listed)).toBe(listed)
  })

  test('each names a word that it changes', () => {
    expect(writings.filter(({ example }) => example === '')).toEqual([])
  })
})
