import { describe, expect, it } from 'vitest'
import { rankSorts, sortNamed } from '../../../src/sets/sorts/rank-sorts.js'
import { columnsOf, wordsOfAWeek } from './words-of-a-week.js'

const sort = (list: string, name: string) => sortNamed(wordsOfAWeek(list), name)?.sort

describe('by beginning and end', () => {
  it('digraphs stand against blends by their kind', () => {
    expect(columnsOf(sort('ship, chin, thumb, frog, clap, stem', 'how the word begins'))).toEqual({
      'beginning blend': 'clap, frog, stem',
      'consonant digraph': 'chin, ship, thumb',
    })
  })

  it('three words or more that begin with a single letter are a column of their own', () => {
    const { columns } = sort('ship, chin, frog, clap, mud, pond, otter', 'how the word begins')!
    expect(columns.at(-1)).toEqual({
      title: 'a single letter',
      without: true,
      words: ['mud', 'otter', 'pond'],
    })
  })

  it('digraphs and blends stand together by their letters', () => {
    expect(
      columnsOf(sort('ship, shed, stem, stop, think, thin', 'which consonants the word begins with')),
    ).toEqual({ sh: 'shed, ship', st: 'stem, stop', th: 'thin, think' })
  })

  it('blends of many letters gather by the one that they share', () => {
    const [first] = rankSorts(
      wordsOfAWeek('blink, clam, flag, plum, crab, drum, frog, grass, snail, spot, stump'),
    )
    expect(columnsOf(first)).toEqual({
      'l blends': 'blink, clam, flag, plum',
      'r blends': 'crab, drum, frog, grass',
      's blends': 'snail, spot, stump',
    })
  })

  it('first letters, one or more, are a sort', () => {
    expect(columnsOf(sort('sip, sun, ship, shed, cat, cup, chin, chop', 'which letters come first'))).toEqual(
      {
        c: 'cat, cup',
        ch: 'chin, chop',
        s: 'sip, sun',
        sh: 'shed, ship',
      },
    )
  })

  it('the letters of an ending -ed are no last letters to sort by', () => {
    expect(sort('tried, wanted, needed, baked, jumped, hopped', 'which letters come last')).toBeUndefined()
  })

  it('last letters keep their silent e', () => {
    expect(columnsOf(sort('dance, fence, large, plunge, leave, glove', 'which letters come last'))).toEqual({
      ce: 'dance, fence',
      ge: 'large, plunge',
      ve: 'glove, leave',
    })
  })
})
