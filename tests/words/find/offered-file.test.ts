import { describe, expect, it } from 'vitest'
import {
  offeredWordsAt,
  offeredWordsIn,
  openOfferedWords,
  writeOfferedWords,
} from '../../../src/words/find/offered-file.js'
import { wordsToOffer } from '../../../src/words/find/words-to-offer.js'
import { lexicon, offered, offeredByHand } from './offered.js'

/** All that is kept of a word, whatever it is read from. */
const kept = ({
  text,
  familiarity,
  soundCount,
  syllableCount,
  stressed,
  graphemes,
  findings,
  sortable: { firstSyllable: _known, ...sortable },
}: (typeof offeredByHand)[0]) => ({
  text,
  familiarity,
  soundCount,
  syllableCount,
  stressed,
  graphemes,
  findings,
  sortable,
})

describe('the file of words to offer', () => {
  it('gives back every word as it was written', () => {
    const read = offeredWordsIn(writeOfferedWords(offeredByHand))
    expect(read.map(kept)).toEqual(offeredByHand.map(kept))
  })

  it('of another version is refused, with what to do', () => {
    expect(() => offeredWordsIn('OAKTAG OFFERED WORDS 0\n')).toThrow('npm run build')
  })

  it('that is missing is told, with what to do', () => {
    expect(() => offeredWordsAt('nowhere/offered-words.txt')).toThrow('npm run build')
  })

  it('as it is built holds the words to offer in their order, and what studying them gives', () => {
    const built = openOfferedWords()
    const words = [...wordsToOffer(lexicon)]
    expect(built.slice(0, words.length).map(({ text }) => text)).toEqual(words)
    const sample = built.slice(0, words.length).filter((_, index) => index % 400 === 0)
    expect(sample.map(kept)).toEqual(sample.map(({ text }) => kept(offered(text))))
  })
})
