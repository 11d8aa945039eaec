import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { LexiconEntry } from '../../../src/words/lexicon/entry.js'
import { partsOfSpeech, soundBytes } from '../../../src/words/lexicon/file-format.js'
import { lexiconIn, openLexicon } from '../../../src/words/lexicon/lexicon.js'
import { writeLexicon } from '../../../src/words/lexicon/write-lexicon.js'

const reed: LexiconEntry = {
  word: 'reed',
  pronunciations: ['R IY1 D'],
  familiarity: 464,
  partsOfSpeech: ['noun'],
  unfit: false,
  notReadAloud: false,
  name: false,
  heteronym: false,
}

describe('the lexicon file', () => {
  test('gives back what was written', () => {
    const lexicon = lexiconIn(writeLexicon([reed]))
    expect(lexicon.lookUp('reed')).toEqual(reed)
    expect(lexicon.lookUp('REED')).toEqual(reed)
    expect(lexicon.lookUp('ree')).toBeUndefined()
    expect(lexicon.lookUp('reeds')).toBeUndefined()
    expect(lexicon.lookUp('réed')).toBeUndefined()
    expect(lexicon.lookUp('')).toBeUndefined()
  })

  test('lists its entries by familiarity', () => {
    const entries = [
      { ...reed, word: 'tern', familiarity: 1 },
      { ...reed, word: 'marsh', familiarity: 179 },
      reed,
    ]
    expect([...lexiconIn(writeLexicon(entries)).entries()].map(({ word }) => word)).toEqual([
      'reed',
      'marsh',
      'tern',
    ])
  })

  test('holds any entries, in whichever order they come', () => {
    const entry = fc.record<LexiconEntry>({
      word: fc.stringMatching(/^[a-z]{1,8}('[a-z])?$/),
      pronunciations: fc.array(
        fc.array(fc.constantFrom(...soundBytes), { minLength: 1 }).map(sounds => sounds.join(' ')),
        { maxLength: 4 },
      ),
      familiarity: fc.nat(5_000_000),
      partsOfSpeech: fc.uniqueArray(fc.constantFrom(...partsOfSpeech)),
      unfit: fc.boolean(),
      notReadAloud: fc.boolean(),
      name: fc.boolean(),
      heteronym: fc.boolean(),
    })
    const entries = fc.uniqueArray(entry, { selector: ({ word }) => word, maxLength: 30 })
    fc.assert(
      fc.property(entries, written => {
        const lexicon = lexiconIn(writeLexicon(written))
        expect(lexicon.size).toBe(written.length)
        for (const each of written) expect(lexicon.lookUp(each.word)).toEqual(each)
      }),
    )
  })

  test('finds words in every part of a long list, and none between them', () => {
    const letters = [...'acegikmoqsuwy']
    const words = letters.flatMap(one => letters.flatMap(two => letters.map(three => one + two + three)))
    const lexicon = lexiconIn(
      writeLexicon(words.map((word, familiarity) => ({ ...reed, word, familiarity }))),
    )
    expect(words.filter(word => lexicon.lookUp(word)?.word !== word)).toEqual([])
    expect(words.filter(word => lexicon.lookUp(`${word}a`) !== undefined)).toEqual([])
    expect(['aa', 'b', 'yyz', 'zz'].filter(word => lexicon.lookUp(word) !== undefined)).toEqual([])
    expect([...lexicon.entries()].map(({ word }) => word)).toEqual(words.toReversed())
  })

  test('that breaks off says what to do', () => {
    const whole = writeLexicon([reed])
    const lexicon = lexiconIn(whole.subarray(0, whole.length - 12))
    expect(() => lexicon.lookUp('reed')).toThrow(/Run "npm run build"/)
  })

  test('a missing file says what to do', () => {
    expect(() => openLexicon('/nowhere/lexicon.bin')).toThrow(/Run "npm run build"/)
  })

  test('a file of another version says what to do', () => {
    expect(() => lexiconIn(Buffer.from('something else, and long enough'))).toThrow(/Run "npm run build"/)
  })
})

describe('the compiled lexicon', () => {
  const lexicon = openLexicon()

  test('knows the words of a marsh, a harbour and a bakery', () => {
    for (const word of ['reed', 'heron', 'wharf', 'dinghy', 'dough', 'yeast', 'otter', 'tern'])
      expect(lexicon.lookUp(word)?.pronunciations.length, word).toBeGreaterThan(0)
  })

  test('begins with the most familiar words', () => {
    const first = [...lexicon.entries()].slice(0, 50).map(({ word }) => word)
    expect(first).toEqual(expect.arrayContaining(['you', 'the', 'to', 'it', 'that']))
  })

  test('tells heteronyms and names', () => {
    expect(lexicon.lookUp('wind')?.heteronym).toBe(true)
    expect(lexicon.lookUp('reed')?.heteronym).toBe(false)
    expect(lexicon.lookUp('london')?.name).toBe(true)
    expect(lexicon.lookUp('heron')?.name).toBe(false)
  })

  test('keeps words without a listed pronunciation', () => {
    expect(lexicon.lookUp('beeswax')).toMatchObject({ pronunciations: [], partsOfSpeech: ['noun'] })
  })
})
