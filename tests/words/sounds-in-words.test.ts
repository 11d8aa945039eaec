import { describe, expect, it } from 'vitest'
import {
  piecesInWords,
  piecesSoFar,
  soundsInASentence,
  soundsInWords,
} from '../../src/words/sounds-in-words.js'
import type { SoundPiece, WordSource } from '../../src/words/word.js'

/** `s n a k (e)`; a number behind the letters where they count for more: `x2`. */
function wordOf(written: string, source: WordSource = 'lexicon') {
  const pieces = written.split(' ').map((part): SoundPiece => {
    const [, letters = '', count = '1'] = /^\(?([a-z'-]+)\)?(\d?)$/.exec(part)!
    const silent = part.startsWith('(')
    return { letters, silent, counts: silent ? 0 : Number(count || '1') }
  })
  return { pieces, source, soundCount: pieces.reduce((sum, { counts }) => sum + counts, 0) }
}

describe("a word's sounds in words", () => {
  it('are the number and the pieces, silent ones in brackets', () => {
    expect(soundsInWords(wordOf('s n a k (e)'))).toBe('4: s·n·a·k·(e)')
  })

  it('say sounds where no heading does, and one sound of one', () => {
    expect(soundsInASentence(wordOf('m u d'))).toBe('3 sounds: m·u·d')
    expect(soundsInASentence(wordOf('(h) our'))).toBe('1 sound: (h)·our')
  })

  it('say of a guess that it is one', () => {
    expect(soundsInWords(wordOf('b l or p', 'guess'))).toBe('4: b·l·or·p (a guess)')
  })

  it('say which piece counts for more than one', () => {
    expect(soundsInWords(wordOf('b o x2'))).toBe('4: b·o·x, x counts two')
    expect(piecesInWords(wordOf('e x2 qu2 i s i t (e)'))).toBe('e·x·qu·i·s·i·t·(e), x and qu count two')
    expect(piecesInWords(wordOf('p ure3 l y'))).toBe('p·ure·l·y, ure counts three')
  })

  it('say which of several where the same letters count differently', () => {
    expect(piecesInWords(wordOf('x e r o x2'))).toBe('x·e·r·o·x, the second x counts two')
    expect(piecesInWords(wordOf('f ar2 m y ar2 d'))).toBe('f·ar·m·y·ar·d, each ar counts two')
  })

  it('come one after another, a silent piece with the next that is heard, one at the end with none', () => {
    expect([1, 2, 3, 4].map(heard => piecesSoFar(wordOf('s n a k (e)'), heard))).toEqual([
      's',
      's·n',
      's·n·a',
      's·n·a·k',
    ])
    expect(piecesSoFar(wordOf('(h) our'), 1)).toBe('(h)·our')
    expect(piecesSoFar(wordOf('b o x2'), 3)).toBe('b·o·x, x counts two')
  })
})
