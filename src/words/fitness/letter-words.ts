/** Abbreviations that are said letter by letter: the pronunciation is the names of their letters, as in ATM. */
import { soundsOf } from '../alignment/arpabet.js'

/** Common practice, no source; Z as in America. */
const letterNames: Readonly<Record<string, string>> = {
  a: 'EY',
  b: 'B IY',
  c: 'S IY',
  d: 'D IY',
  e: 'IY',
  f: 'EH F',
  g: 'JH IY',
  h: 'EY CH',
  i: 'AY',
  j: 'JH EY',
  k: 'K EY',
  l: 'EH L',
  m: 'EH M',
  n: 'EH N',
  o: 'OW',
  p: 'P IY',
  q: 'K Y UW',
  r: 'AA R',
  s: 'EH S',
  t: 'T IY',
  u: 'Y UW',
  v: 'V IY',
  w: 'D AH B AH L Y UW',
  x: 'EH K S',
  y: 'W AY',
  z: 'Z IY',
}

export function isSaidByLetters(word: string, pronunciation: string): boolean {
  const names = [...word].map(letter => letterNames[letter])
  return soundsOf(pronunciation).join(' ') === names.join(' ')
}
