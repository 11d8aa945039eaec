/**
 * How each sound is spelled, in order of frequency, counted over our alignments and compared with
 *
 * - Hanna, P. R., Hanna, J. S., Hodges, R. E. and Rudorf, E. H. (1966). Phoneme-grapheme correspondences as cues to
 *   spelling improvement: 17,310 words;
 * - its revision, Fry, E. (2004). Phonics: a large phoneme-grapheme frequency count revised. Journal of Literacy
 *   Research 36, 85–98,
 *
 * as B. Murray tabulates them (A catalog of spellings, Auburn University), read there; rows marked `memory` are given
 * from memory.
 *
 * Their dictionary is Merriam-Webster's, ours the CMU Pronouncing Dictionary, their r-coloured vowels are other classes
 * than ours: only what both count alike is compared.
 */
import { beforeAll, describe, expect, it } from 'vitest'
import { type AlignedLetters, type AlignedWord, familiarAlignedWords } from './aligned-words.js'

interface Spelling {
  readonly letters: string
  /** Per cent of the sound's occurrences, a word counted once. */
  readonly share: number
}

interface PublishedSound {
  readonly sound: string
  readonly spellings: readonly Spelling[]
  /** Why the order is another in our count. */
  readonly differs?: string
}

/** `ge` of the source is our g before e; its i_e and the like are ours with a silent e after the consonant. */
const published: readonly PublishedSound[] = [
  sound('AE', 'a 97, a_e 3'),
  sound('EY', 'a 45, a_e 35, ai 9, ay 6'),
  sound('AA R', 'ar 89, ear 3'),
  sound('AO', 'o 41, a 22, au 19, aw 10'),
  sound('B', 'b 97'),
  sound('CH', 'ch 55, t 31, tch 11'),
  sound('D', 'd 98'),
  sound(
    'AH',
    'o 24, u 20, a 19, i 18, e 11, ou 5',
    'many an unstressed a that we count is /i/ or left out in theirs',
  ),
  sound('EH', 'e 91, ea 4'),
  // Their e, 40 per cent, is for the most part that of be-, de-, e- and re-, which is a short i in our lexicon.
  sound('IY', 'y 41, ee 6, ea 6'),
  sound('AH L', 'le 95'),
  sound('F', 'f 78, ph 12, ff 9'),
  sound('G', 'g 88, gg 5'),
  sound('HH', 'h 98'),
  sound('IH', 'i 92, i_e 6, y 2'),
  sound('AY', 'i 37, i_e 37, y 14, igh 6'),
  sound('JH', 'g 66, j 22, dge 5, d 3'),
  sound('K', 'c 73, k 13, ck 6, ch 3'),
  sound('K S', 'x 90'),
  sound('K W', 'qu 97'),
  sound('L', 'l 91, ll 9'),
  sound('M', 'm 94, mm 4'),
  sound('N', 'n 97'),
  sound('ER', 'er 77, or 12, ar 8'),
  // From memory from here on.
  sound('OW', 'o 73, o_e 14, ow 5, oa 5'),
  sound('AW', 'ou 56, ow 29'),
  sound('OY', 'oi 62, oy 32'),
  sound('S', 's 73, c 17, ss 7'),
  sound('SH', 'ti 53, sh 26'),
  sound('Z', 's 64, z 23'),
]

function sound(name: string, shares: string, differs?: string): PublishedSound {
  const spellings = shares.split(', ').map(share => {
    const [letters, percent] = share.split(' ') as [string, string]
    return { letters, share: Number(percent) }
  })
  return differs === undefined ? { sound: name, spellings } : { sound: name, spellings, differs }
}

/** Spellings closer than this are as good as equal: corpora differ. */
const pointsApart = 10
const wordsCounted = 17_000

let shares: ReadonlyMap<string, ReadonlyMap<string, number>>

beforeAll(() => {
  const counts = new Map<string, Map<string, number>>()
  for (const word of familiarAlignedWords(wordsCounted)) {
    for (const letters of word.letters) {
      const bySpelling = counts.get(letters.sound) ?? new Map<string, number>()
      const spelling = spellingOf(letters, word)
      counts.set(letters.sound, bySpelling.set(spelling, (bySpelling.get(spelling) ?? 0) + 1))
    }
  }
  shares = new Map([...counts].map(([name, bySpelling]) => [name, asPercent(bySpelling)]))
})

function asPercent(counts: ReadonlyMap<string, number>): ReadonlyMap<string, number> {
  const all = [...counts.values()].reduce((sum, count) => sum + count, 0)
  return new Map([...counts].map(([letters, count]) => [letters, (100 * count) / all]))
}

/** `a_e` where one consonant and a silent e follow, at the end or before an added s or d. */
function spellingOf(letters: AlignedLetters, { letters: all }: AlignedWord): string {
  if (!letters.isVowel || !/^[aeiouy]$/.test(letters.letters)) return letters.letters
  const [consonant, e, added, more] = all.slice(all.indexOf(letters) + 1)
  const split =
    consonant !== undefined &&
    !consonant.isVowel &&
    consonant.sound !== '' &&
    e?.letters === 'e' &&
    e.sound === '' &&
    (added === undefined || (more === undefined && /^[sd]$/.test(added.letters)))
  return split ? `${letters.letters}_e` : letters.letters
}

function ourShare(name: string, letters: string): number {
  return shares.get(name)?.get(letters) ?? 0
}

function pairsInOrder({ sound: name, spellings }: PublishedSound): readonly boolean[] {
  return spellings.flatMap((first, index) =>
    spellings
      .slice(index + 1)
      .filter(second => first.share - second.share >= pointsApart)
      .map(second => ourShare(name, first.letters) > ourShare(name, second.letters)),
  )
}

describe('sounds and their spellings', () => {
  it.each(published.filter(each => each.differs === undefined).map(each => [each.sound, each] as const))(
    '/%s/ has the same commonest spelling, and the rest in the same order',
    (name, published) => {
      const [ours] = [...shares.get(name)!].toSorted((a, b) => b[1] - a[1])
      expect(ours![0]).toBe(published.spellings[0]!.letters)
      expect(pairsInOrder(published).every(Boolean)).toBe(true)
    },
  )

  it.each(published.filter(each => each.differs !== undefined).map(each => [each.sound, each] as const))(
    '/%s/ has another commonest spelling, and it is explained',
    (name, published) => {
      const [ours] = [...shares.get(name)!].toSorted((a, b) => b[1] - a[1])
      expect(ours![0]).not.toBe(published.spellings[0]!.letters)
      expect(published.differs).not.toBe('')
    },
  )

  it('comes within seven points of the published share on average', () => {
    const differences = published.flatMap(({ sound: name, spellings }) =>
      spellings.map(({ letters, share }) => Math.abs(ourShare(name, letters) - share)),
    )
    const mean = differences.reduce((sum, difference) => sum + difference, 0) / differences.length
    expect(mean).toBeLessThanOrEqual(7)
  })
})
