import { describe, expect, it } from 'vitest'
import { pastedWords, wordEntry } from '../../src/desk/pasted-words.js'

describe('a list that is pasted', () => {
  it.each([
    ['a word a line', 'reed\nmarsh\r\n\nheron', ['reed', 'marsh', 'heron']],
    ['words with commas or blanks between', 'reed, marsh; heron pond', ['reed', 'marsh', 'heron', 'pond']],
    [
      'rows of a spreadsheet, clues beside the words',
      'reed\ttall grass\nmarsh\t\n',
      [{ word: 'reed', clue: 'tall grass' }, 'marsh'],
    ],
    [
      'a table with a head, in any order',
      'Clue\tWord\tLevel\tPart of speech\ntall grass\treed\t3\tnoun',
      [{ word: 'reed', clue: 'tall grass', 'part of speech': 'noun' }],
    ],
    ['a table of many columns without a head', 'reed\t1a\tx\nmarsh\t2a\ty', ['reed', 'marsh']],
    ['a table with numbers before the words', '1.\treed\n2.\tmarsh', ['reed', 'marsh']],
    [
      'rows with commas and quotes',
      '"reed","a tall, ""thin"" grass"\n"marsh","wet land"',
      [
        { word: 'reed', clue: 'a tall, "thin" grass' },
        { word: 'marsh', clue: 'wet land' },
      ],
    ],
    ['rows with commas under a head', 'Words,Clue\nreed,grass', [{ word: 'reed', clue: 'grass' }]],
    ['a numbered list', '1. reed\n2) marsh\n(3) heron\nd) pond', ['reed', 'marsh', 'heron', 'pond']],
    ['a list with bullets and boxes', '\u2022 reed\n- marsh\n\u2610 heron', ['reed', 'marsh', 'heron']],
    ['words in quotes, each with a stop', '\u201creed\u201d, \u2018marsh\u2019.', ['reed', 'marsh']],
    [
      'words with what they mean',
      'reed \u2013 a tall grass\nmarsh - wet land',
      [
        { word: 'reed', clue: 'a tall grass' },
        { word: 'marsh', clue: 'wet land' },
      ],
    ],
    ['a list below its name', 'Week five:\n1. reed\n2. marsh', ['reed', 'marsh']],
    ['a list beside its name, which she sees', 'Words: reed, marsh', ['Words', 'reed', 'marsh']],
    ['each word once', 'reed\nReed\nmarsh\nreed', ['reed', 'marsh']],
    [
      'what stands inside a word, even if it is none',
      "don't\nmother-in-law\nr33d",
      ["don't", 'mother-in-law', 'r33d'],
    ],
    ['nothing where there is no letter', ' \n12\n\u2014\n', []],
  ])('is taken as %s', (_, text, entries) => {
    expect(pastedWords(text).map(wordEntry)).toEqual(entries)
  })
})
