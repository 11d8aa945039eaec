import { describe, expect, it } from 'vitest'
import type { Word } from '../../../src/words/word.js'
import { analysed, percent, report, rowsOf, waysOf } from './gold.js'

/** A grapheme of the gold table: its letters, and the ways of saying it that are right. */
interface GoldGrapheme {
  readonly letters: string
  readonly start: number
  readonly ways: readonly string[]
}

function readAlignment(text: string): readonly GoldGrapheme[] {
  let start = 0
  return text.split(' ').map(cell => {
    const [letters = '', sounds = ''] = cell.split('=')
    const grapheme = { letters, start, ways: sounds.split('|').map(way => (way === '-' ? '' : way)) }
    start += letters.length
    return grapheme
  })
}

/** Sounds of a vowel without stress, of which dictionaries write now one, now the other. */
function reduced(sounds: string): string {
  return sounds.replace(/\bIH\b/g, 'AH')
}

interface SpokenGrapheme {
  readonly letters: string
  readonly start: number
  readonly sounds: string
  readonly stressed: boolean
}

function spokenGraphemes({ graphemes, pronunciations }: Word): readonly SpokenGrapheme[] {
  const spoken = (pronunciations[0] ?? '').split(' ')
  let next = 0
  return graphemes.map(({ letters, start, sounds }) => {
    const said = spoken.slice(next, next + sounds.length)
    next += sounds.length
    return { letters, start, sounds: sounds.join('+'), stressed: said.some(sound => /[12]$/.test(sound)) }
  })
}

function agrees(gold: GoldGrapheme, tool: SpokenGrapheme): boolean {
  if (gold.letters !== tool.letters) return false
  return gold.ways.some(
    way => way === tool.sounds || (!tool.stressed && reduced(way) === reduced(tool.sounds)),
  )
}

/**
 * From the graphemes and the division by hand: each that is heard is one sound, x and qu with two are two, a long i or
 * diphthong and an r that closes its syllable are one. Common practice, no source, but for the first (Elkonin 1963).
 */
function soundsAsTaught(way: string, divided: string): number {
  const heard = readAlignment(way).filter(({ ways }) => ways[0] !== '')
  const twice = heard.filter(({ letters, ways }) => /x|qu/.test(letters) && ways[0]!.includes('+'))
  const withTheirR = heard.filter(({ start, letters, ways }, index) => {
    const before = heard[index - 1]
    if (letters !== 'r' || ways[0] !== 'R' || !/A[YW]$|OY$/.test(before?.ways[0] ?? '')) return false
    return !startsSyllable(start, divided)
  })
  return heard.length + twice.length - withTheirR.length
}

function startsSyllable(index: number, divided: string): boolean {
  let start = 0
  return divided.split('·').some(syllable => {
    const begins = start === index
    start += syllable.length
    return begins
  })
}

interface Verdict {
  readonly phonemes: number
  readonly right: number
  readonly whole: boolean
}

function judge(gold: readonly GoldGrapheme[], tool: readonly SpokenGrapheme[]): Verdict {
  const at = new Map(tool.map(grapheme => [grapheme.start, grapheme]))
  let phonemes = 0
  let right = 0
  let whole = gold.length === tool.length
  for (const grapheme of gold) {
    const count = grapheme.ways[0] === '' ? 0 : grapheme.ways[0]!.split('+').length
    const spoken = at.get(grapheme.start)
    const same = spoken !== undefined && agrees(grapheme, spoken)
    phonemes += count
    if (same) right += count
    else whole = false
  }
  return { phonemes, right, whole }
}

const rows = rowsOf('aligned.tsv').map(([word = '', graphemes = '', counts = '', syllables = '']) => {
  const tool = analysed(word)
  const spoken = spokenGraphemes(tool)
  const verdicts = waysOf(graphemes).map(way => judge(readAlignment(way), spoken))
  const best = verdicts.reduce((a, b) => (b.right / b.phonemes > a.right / a.phonemes || b.whole ? b : a))
  const written = spoken.map(({ letters, sounds }) => `${letters}=${sounds || '-'}`).join(' ')
  return { word, graphemes, counts, syllables, tool, best, written }
})

describe('familiar words aligned by hand', () => {
  it('are at least five hundred', () => {
    expect(rows.length).toBeGreaterThanOrEqual(500)
  })

  it('agree in their phonemes, and as whole words', () => {
    const wrong = rows.filter(({ best }) => !best.whole)
    const phonemes = rows.reduce((sum, { best }) => sum + best.phonemes, 0)
    const right = rows.reduce((sum, { best }) => sum + best.right, 0)
    report(
      `alignment: phonemes ${percent(right, phonemes)}, whole words ${percent(rows.length - wrong.length, rows.length)}`,
      wrong.map(({ word, graphemes, written }) => `${word}: by hand ${graphemes}; found ${written}`),
    )
    expect(right / phonemes).toBeGreaterThanOrEqual(0.999)
    expect((rows.length - wrong.length) / rows.length).toBeGreaterThanOrEqual(0.998)
  })

  it('have the right number of phonemes', () => {
    const wrong = rows.filter(({ counts, tool }) => !waysOf(counts).includes(String(tool.phonemeCount)))
    report(
      `phoneme counts ${percent(rows.length - wrong.length, rows.length)}`,
      wrong.map(({ word, counts, tool }) => `${word}: by hand ${counts}; found ${tool.phonemeCount}`),
    )
    expect((rows.length - wrong.length) / rows.length).toBeGreaterThanOrEqual(0.998)
  })

  it('have the right number of sounds as taught', () => {
    const byHand = ({ graphemes, syllables }: (typeof rows)[number]) =>
      waysOf(graphemes).flatMap(way => waysOf(syllables).map(divided => soundsAsTaught(way, divided)))
    const wrong = rows.filter(row => !byHand(row).includes(row.tool.soundCount))
    report(
      `sounds as taught ${percent(rows.length - wrong.length, rows.length)}`,
      wrong.map(row => `${row.word}: by hand ${byHand(row).join(' or ')}; found ${row.tool.soundCount}`),
    )
    expect((rows.length - wrong.length) / rows.length).toBeGreaterThanOrEqual(0.998)
  })

  it('are divided into syllables as primary teaching divides them', () => {
    const divided = rows.filter(({ syllables, tool }) => /·/.test(syllables) || tool.syllables.length > 1)
    const wrong = divided.filter(
      ({ syllables, tool }) => !waysOf(syllables).includes(tool.syllables.join('·')),
    )
    report(
      `syllable division ${percent(divided.length - wrong.length, divided.length)}`,
      wrong.map(
        ({ word, syllables, tool }) => `${word}: by hand ${syllables}; found ${tool.syllables.join('·')}`,
      ),
    )
    expect((divided.length - wrong.length) / divided.length).toBeGreaterThanOrEqual(0.995)
  })
})
