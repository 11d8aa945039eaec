import { describe, expect, test } from 'vitest'
import { openLexicon } from '../../../src/words/lexicon/lexicon.js'
import { derivePronunciation } from '../../../src/words/pronunciation/derive.js'

const lexicon = openLexicon()

describe('a word that the lexicon lacks, from parts that it holds', () => {
  test.each<[string, string | undefined, string]>([
    ["herons'", 'HH EH1 R AH0 N Z', 'as its base'],
    ["sedge's", 'S EH1 JH IH0 Z', 'the sound of -s follows the last sound'],
    ["sloop's", 'S L UW1 P S', 'the sound of -s follows the last sound'],
    ['reed-bed', 'R IY1 D B EH1 D', 'part by part'],
    ['mudflat', 'M AH1 D F L AE2 T', 'two familiar words'],
    ['mudflats', 'M AH1 D F L AE2 T S', 'a plural of two familiar words'],
    ['homeroom', 'HH OW1 M R UW2 M', 'two familiar words'],
    ['reedless', 'R IY1 D L IH0 S', 'an ending'],
    ['nibbly', 'N IH1 B L IY0', 'no vowel before the l'],
    ['frolicked', 'F R AA1 L IH0 K T', 'k after the c of its base'],
    ['squelchier', undefined, 'no base that the lexicon holds'],
    ['blorp', undefined, 'no part is known'],
  ])('%s is %s: %s', (word, pronunciation) => {
    expect(lexicon.lookUp(word)?.pronunciations ?? []).toEqual([])
    expect(derivePronunciation(word, lexicon)).toBe(pronunciation)
  })
})
