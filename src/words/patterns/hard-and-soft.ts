/** c and g with their two sounds each, q with its u, x with its pair of sounds. */
import type { Pattern } from './pattern.js'
import { commonPractice } from './pattern.js'
import { soundName } from './sound-names.js'
import { findEach, type SpelledSound } from './spelled-sounds.js'

function softens(next: SpelledSound | undefined): string {
  const letter = next?.letters[0] ?? ''
  return /[eiy]/.test(letter) ? ` before ${letter}` : ''
}

export const hardC: Pattern = {
  name: 'hard-c',
  scope: 'letters',
  definition: 'c said /K/: cat, crab, picnic',
  condition: 'c alone as a grapheme, said /K/; not ck, ch, cc',
  example: { word: 'crab', letters: 'c' },
  counterExample: { word: 'duck', why: 'its c belongs to the digraph ck' },
  source: commonPractice,
  spelledWith: /c/,
  find: findEach('hard-c', ({ letters, said }) =>
    letters === 'c' && said === 'K' ? `c spells ${soundName('K')}` : undefined,
  ),
}

export const softC: Pattern = {
  name: 'soft-c',
  scope: 'letters',
  definition: 'c said /S/, before e, i or y: cell, city, icy, dance',
  condition: 'c alone as a grapheme, said /S/; not the sc of scene, in which the c is silent',
  example: { word: 'city', letters: 'c' },
  counterExample: { word: 'ocean', why: 'its c is said /SH/' },
  source: 'Clymer 1963, generalisation that c before e or i is /S/; from memory',
  spelledWith: /c/,
  find: findEach('soft-c', ({ letters, said, index }, all) =>
    letters === 'c' && said === 'S' ? `c spells ${soundName('S')}${softens(all[index + 1])}` : undefined,
  ),
}

export const hardG: Pattern = {
  name: 'hard-g',
  scope: 'letters',
  definition: 'g said /G/: gull, frog, finger',
  condition: 'g alone as a grapheme, said /G/; not gg, gh, gu',
  example: { word: 'frog', letters: 'g' },
  counterExample: { word: 'ring', why: 'its g belongs to the digraph ng' },
  source: commonPractice,
  spelledWith: /g/,
  find: findEach('hard-g', ({ letters, said }) =>
    letters === 'g' && said === 'G' ? `g spells ${soundName('G')}` : undefined,
  ),
}

export const softG: Pattern = {
  name: 'soft-g',
  scope: 'letters',
  definition: 'g said /JH/, before e, i or y: gem, giant, page',
  condition: 'g (or dg before e, i, y, as in badger) as a grapheme said /JH/; dge is a trigraph',
  example: { word: 'page', letters: 'g' },
  counterExample: { word: 'girl', why: 'its g is hard although i follows' },
  source: 'Clymer 1963, generalisation that g before e or i is often /JH/; from memory',
  spelledWith: /g/,
  find: findEach('soft-g', ({ letters, said, index }, all) =>
    said === 'JH' && /^(g|dg|gg)$/.test(letters)
      ? `${letters} spells ${soundName('JH')}${softens(all[index + 1])}`
      : undefined,
  ),
}

export const qu: Pattern = {
  name: 'qu',
  scope: 'letters',
  definition: 'q with its u: two letters, two sounds, /K W/',
  condition: 'the grapheme qu said /K W/, also inside squ; qu said /K/ (mosquito) has a silent u',
  example: { word: 'quilt', letters: 'qu' },
  counterExample: { word: 'mosquito', why: 'its qu is said /K/: the u is silent' },
  source: commonPractice,
  spelledWith: /qu/,
  find: findEach('qu', ({ letters, said }) =>
    letters === 'qu' && said === 'K W' ? 'q and u go together and spell two sounds, /K W/' : undefined,
  ),
}

export const x: Pattern = {
  name: 'x',
  scope: 'letters',
  definition:
    'x, one letter that mostly spells two sounds: /K S/ in box, /G Z/ in exam, /Z/ at the beginning',
  condition: 'x alone or xc as a grapheme, whatever it spells',
  example: { word: 'box', letters: 'x' },
  counterExample: { word: 'rocks', why: 'the same two sounds, spelled ck and an added s' },
  source: commonPractice,
  spelledWith: /x/,
  find: findEach('x', ({ letters, sounds, said }) =>
    /^x[ch]?$/.test(letters) && sounds.length > 0
      ? `${letters} spells ${sounds.length === 1 ? 'one sound' : 'two sounds'}, /${said}/`
      : undefined,
  ),
}
