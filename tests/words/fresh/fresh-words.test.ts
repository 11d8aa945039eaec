/** How the analysis does on words it was never mended from; the heads of the tables tell the figures at first sight. */
import { describe, expect, it } from 'vitest'
import type { Plural } from '../../../src/words/word.js'
import { percent, report } from '../gold/gold.js'
import { agreementWith } from '../held-out/hand-alignment.js'
import { type FreshWord, nameOf, readFreshWords, shows } from './fresh-table.js'

/** Share of things that agree, with every disagreement told. */
function share(title: string, asked: number, wrong: readonly string[]): number {
  report(`fresh words: ${title} ${percent(asked - wrong.length, asked)}`, wrong)
  return (asked - wrong.length) / asked
}

/** Words that fail, each with what the table says and what was found. */
function failing(
  words: readonly FreshWord[],
  agrees: (fresh: FreshWord) => boolean,
  tell: (fresh: FreshWord) => string,
): readonly string[] {
  return words.filter(fresh => !agrees(fresh)).map(fresh => `${fresh.text}: ${tell(fresh)}`)
}

function partsOf({ word }: FreshWord): readonly string[] {
  return word.partsOfSpeech
}

function formOf(plural: Plural | null): string {
  return plural === null ? 'none' : plural.form
}

const pluralAgrees = ({ plurals, word }: FreshWord) =>
  word.plural === null ? plurals!.length === 0 : plurals!.includes(word.plural.form)

/** The least share of each: what is found now, or two words less. */
const tables = [
  {
    file: 'fresh-words.tsv',
    words: 300,
    floor: {
      phonemes: 0.9985,
      whole: 0.993,
      divisions: 0.993,
      present: 0.994,
      absent: 0.998,
      first: 0.933,
      others: 0.973,
      plurals: 0.965,
    },
  },
  {
    file: 'more-fresh-words.tsv',
    words: 307,
    floor: {
      phonemes: 0.9985,
      whole: 0.993,
      divisions: 0.993,
      present: 0.994,
      absent: 0.998,
      first: 0.98,
      others: 1,
      plurals: 0.99,
    },
  },
]

describe.each(tables)('fresh words of a primary classroom, $file', ({ file, words, floor }) => {
  const freshWords = readFreshWords(file)
  const withPlurals = freshWords.filter(({ plurals }) => plurals !== undefined)

  it(`are ${words}, each once`, () => {
    expect(new Set(freshWords.map(({ text }) => text)).size).toBe(words)
  })

  it('have their letters and sounds together rightly', () => {
    const agreements = freshWords.map(({ graphemes, word }) => agreementWith(graphemes, word))
    const phonemes = agreements.reduce((sum, agreement) => sum + agreement.phonemes, 0)
    const right = agreements.reduce((sum, agreement) => sum + agreement.right, 0)
    report(`fresh words: phonemes on the right letters ${percent(right, phonemes)}`, [])
    const wrong = failing(
      freshWords,
      ({ graphemes, word }) => agreementWith(graphemes, word).whole,
      ({ graphemes, word }) =>
        `by hand ${graphemes}; found ${word.graphemes.map(({ letters, sounds }) => `${letters}=${sounds.join('+') || '-'}`).join(' ')}`,
    )
    expect(right / phonemes).toBeGreaterThanOrEqual(floor.phonemes)
    expect(share('whole words aligned', freshWords.length, wrong)).toBeGreaterThanOrEqual(floor.whole)
  })

  it('have the number of sounds that a class counts', () => {
    const wrong = failing(
      freshWords,
      ({ counts, word }) => counts.includes(String(word.soundCount)),
      ({ counts, word }) => `by hand ${counts.join(' or ')}; found ${word.soundCount}`,
    )
    expect(share('sounds as taught', freshWords.length, wrong)).toBe(1)
  })

  it('are divided as primary teaching divides them', () => {
    const long = freshWords.filter(
      ({ divisions, word }) => word.syllables.length > 1 || divisions.some(way => way.includes('·')),
    )
    const wrong = failing(
      long,
      ({ divisions, word }) => divisions.includes(word.syllables.join('·')),
      ({ divisions, word }) => `by hand ${divisions.join(' or ')}; found ${word.syllables.join('·')}`,
    )
    expect(
      share('divisions of words with more than one syllable', long.length, wrong),
    ).toBeGreaterThanOrEqual(floor.divisions)
  })

  it('show the patterns they hold', () => {
    const asked = freshWords.flatMap(({ present }) => present).length
    const wrong = freshWords.flatMap(({ text, present, word }) =>
      present
        .filter(named => !shows(word, named))
        .map(
          named =>
            `${text}: no ${nameOf(named)} (${word.patterns.map(({ pattern, letters }) => `${pattern} ${letters}`).join('; ')})`,
        ),
    )
    expect(share('patterns present', asked, wrong)).toBeGreaterThanOrEqual(floor.present)
  })

  it('show none of the patterns that tempt', () => {
    const asked = freshWords.flatMap(({ absent }) => absent).length
    const wrong = freshWords.flatMap(({ text, absent, word }) =>
      absent
        .filter(named => shows(word, named))
        .map(
          named =>
            `${text}: ${nameOf(named)} (${word.patterns
              .filter(({ pattern }) => pattern === named.pattern)
              .map(({ letters, why }) => `${letters}: ${why}`)
              .join('; ')})`,
        ),
    )
    expect(share('tempting patterns absent', asked, wrong)).toBeGreaterThanOrEqual(floor.absent)
  })

  it('begin with the part of speech a primary teacher names', () => {
    const wrong = failing(
      freshWords,
      fresh => fresh.first.includes(partsOf(fresh)[0] ?? ''),
      fresh => `by hand ${fresh.first.join(' or ')}; found ${partsOf(fresh).join(', ')}`,
    )
    expect(share('first part of speech', freshWords.length, wrong)).toBeGreaterThanOrEqual(floor.first)
  })

  it('hold the other parts of speech that children meet', () => {
    const asked = freshWords.flatMap(({ contained }) => contained).length
    const wrong = freshWords.flatMap(fresh =>
      fresh.contained
        .filter(part => !partsOf(fresh).includes(part))
        .map(part => `${fresh.text}: no ${part}; found ${partsOf(fresh).join(', ')}`),
    )
    expect(share('other parts of speech contained', asked, wrong)).toBeGreaterThanOrEqual(floor.others)
  })

  it('have their plurals, or none', () => {
    const wrong = failing(
      withPlurals,
      pluralAgrees,
      ({ plurals, word }) => `by hand ${plurals!.join(' or ') || 'none'}; found ${formOf(word.plural)}`,
    )
    expect(share('plurals', withPlurals.length, wrong)).toBeGreaterThanOrEqual(floor.plurals)
  })

  it('name the rule of the plural', () => {
    const ruled = withPlurals.filter(fresh => fresh.word.plural !== null && pluralAgrees(fresh))
    const wrong = failing(
      ruled,
      ({ rules, word }) => rules.includes(word.plural!.rule),
      ({ rules, word }) => `by hand ${rules.join(' or ')}; found ${word.plural!.rule}`,
    )
    expect(share('rules of plurals', ruled.length, wrong)).toBeGreaterThanOrEqual(0.99)
  })
})
