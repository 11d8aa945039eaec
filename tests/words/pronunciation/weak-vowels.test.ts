import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { alignWord } from '../../../src/words/alignment/graphemes.js'
import { openLexicon } from '../../../src/words/lexicon/lexicon.js'
import { withWeakVowels } from '../../../src/words/pronunciation/one-writing.js'
import { weakVowels } from '../../../src/words/pronunciation/weak-vowels.js'

describe('weak vowels in one writing', () => {
  test.each([
    ['cabin', 'K AE1 B AH0 N', 'K AE1 B IH0 N', 'as robin'],
    ['habit', 'HH AE1 B AH0 T', 'HH AE1 B IH0 T', 'as rabbit'],
    ['nostril', 'N AA1 S T R IH0 L', 'N AA1 S T R AH0 L', 'as pencil'],
    ['festival', 'F EH1 S T IH0 V AH0 L', 'F EH1 S T AH0 V AH0 L', 'as animal'],
    ['ability', 'AH0 B IH1 L AH0 T IY0', 'AH0 B IH1 L IH0 T IY0', 'an i before t'],
    ['director', 'D AH0 R EH1 K T ER0', 'D IH0 R EH1 K T ER0', 'a first i'],
    ['orphanage', 'AO1 R F AH0 N AH0 JH', 'AO1 R F AH0 N IH0 JH', 'as village'],
    ['desperate', 'D EH1 S P ER0 IH0 T', 'D EH1 S P ER0 AH0 T', 'as private'],
    ['pocket', 'P AA1 K AH0 T', 'P AA1 K IH0 T', 'as ticket'],
    ['asses', 'AE1 S AH0 Z', 'AE1 S IH0 Z', 'as boxes'],
    ['useless', 'Y UW1 S L AH0 S', 'Y UW1 S L IH0 S', 'as wireless'],
    ['competent', 'K AA1 M P AH0 T IH0 N T', 'K AA1 M P AH0 T AH0 N T', 'as moment'],
    ['regret', 'R AH0 G R EH1 T', 'R IH0 G R EH1 T', 'as return'],
    ['entire', 'IH0 N T AY1 R', 'EH0 N T AY1 R', 'as enjoy'],
  ])('%s: %s becomes %s, %s', (word, listed, written) => {
    expect(withWeakVowels(word, listed)).toBe(written)
  })

  test.each([
    ['hello', 'HH AH0 L OW1', 'no be-, de-, e-, pre-, re-, se-'],
    ['happy', 'HH AE1 P IY0', 'a last y'],
    ['comment', 'K AA1 M EH0 N T', 'a full vowel'],
    ['the', 'DH AH0', 'nothing follows'],
  ])('%s: %s stays, %s', (word, listed) => {
    expect(withWeakVowels(word, listed)).toBe(listed)
  })

  test('each rule names a word that shows it', () => {
    expect(weakVowels.filter(({ name, example }) => name === '' || example === '')).toEqual([])
  })
})

describe('over the lexicon', () => {
  const endings = readFileSync(new URL('weak-endings.tsv', import.meta.url), 'utf8')
    .split('\n')
    .filter(line => line !== '' && !line.startsWith('#'))
    .map(line => line.split('\t'))
  const words = [...openLexicon().entries()].filter(
    ({ name, familiarity, pronunciations }) => !name && familiarity > 1 && pronunciations.length > 0,
  )

  test.each(endings)('words in -%s have /%s/ there, such as %s', (ending = '', vowel) => {
    const said = words
      .filter(({ word }) => word.endsWith(ending))
      .flatMap(({ word, pronunciations: [pronunciation = ''] }) => {
        const { graphemes } = alignWord(word, pronunciation)
        const weak = graphemes.find(({ start }) => start === word.length - ending.length)
        const lastVowel = pronunciation.match(/[A-Z]+\d/g)?.at(-1)
        const isWeak = weak?.letters.length === 1 && `${weak.sounds[0]}0` === lastVowel
        return isWeak && /^[AI]H0$/.test(lastVowel) ? [{ word, sound: weak.sounds[0] }] : []
      })
    expect(said.length).toBeGreaterThan(4)
    expect(said.filter(({ sound }) => sound !== vowel).map(({ word }) => word)).toEqual([])
  })
})
