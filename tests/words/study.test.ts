import { describe, expect, test } from 'vitest'
import type { WordOverrides } from '../../src/plan/plan.js'
import { openLexicon } from '../../src/words/lexicon/lexicon.js'
import { straighten, studyWord } from '../../src/words/study.js'
import { written } from './alignment/written-graphemes.js'

const lexicon = openLexicon()
const place = { file: 'marsh.yaml', line: 7, column: 5 }

function study(text: string, overrides: WordOverrides = {}) {
  const outcome = studyWord({ text, place, overrides }, lexicon)
  if (!outcome.ok) throw new Error(outcome.problems[0]!.message)
  return outcome.value
}

describe('a word, studied', () => {
  test('thread, as the contract has it', () => {
    expect(study('thread')).toMatchObject({
      text: 'thread',
      known: true,
      source: 'lexicon',
      pronunciations: ['TH R EH1 D'],
      graphemes: [
        { letters: 'th', start: 0, sounds: ['TH'] },
        { letters: 'r', start: 2, sounds: ['R'] },
        { letters: 'ea', start: 3, sounds: ['EH'] },
        { letters: 'd', start: 5, sounds: ['D'] },
      ],
      soundCount: 4,
      syllables: ['thread'],
      partsOfSpeech: ['noun', 'verb'],
      plural: { form: 'threads', rule: 'add s' },
    })
  })

  test('capitals and accents stay, curly apostrophes are straightened', () => {
    expect(study('Heron').graphemes[0]!.letters).toBe('H')
    expect(study('she’s')).toMatchObject({ text: "she's", known: true, soundCount: 3 })
    expect(study('cafe\u0301')).toMatchObject({ text: 'café', known: true })
    expect(straighten('well\u2010known')).toBe('well-known')
  })

  test('a word that no dictionary holds is a guess and says so', () => {
    expect(study('blorp')).toMatchObject({ known: false, source: 'guess', soundCount: 4, phonemeCount: 5 })
    expect(study('q')).toMatchObject({ known: true })
    expect(study('beeswax')).toMatchObject({ known: false, source: 'guess', partsOfSpeech: ['noun'] })
  })

  test('parts of speech that no source lists are guessed, the plural with them, and called a guess', () => {
    expect(study('tide-pool')).toMatchObject({
      partsOfSpeech: ['noun'],
      partsOfSpeechGuessed: true,
      plural: { form: 'tide-pools', rule: 'add s' },
    })
    expect(study('blorfing')).toMatchObject({
      source: 'guess',
      partsOfSpeech: ['verb', 'noun', 'adjective'],
      plural: null,
    })
    expect(study('blorfing', { partsOfSpeech: ['noun'] }).plural).toMatchObject({ form: 'blorfings' })
    expect(study('glark-ring').plural).not.toBeNull()
    expect(study('beeswax').partsOfSpeechGuessed).toBeUndefined()
    expect(study('reed').partsOfSpeechGuessed).toBeUndefined()
    expect(study("heron's")).toMatchObject({ partsOfSpeech: [], plural: null })
  })

  test('patterns are found at a hyphen and an apostrophe, on the letters alone', () => {
    expect(study('ping-pong').patterns).toContainEqual(
      expect.objectContaining({ pattern: 'consonant-digraph', letters: 'ng', start: 2, end: 4 }),
    )
    expect(study('tide-pool').patterns).toContainEqual(
      expect.objectContaining({ pattern: 'silent-e', letters: 'i_e', start: 1, end: 4 }),
    )
    expect(study('middle-sized').patterns).toContainEqual(
      expect.objectContaining({ pattern: 'consonant-le', letters: 'dle', start: 3, end: 6 }),
    )
  })

  test('spellings that no rule explains and ways of saying to choose from are noted', () => {
    expect(study('island').notes).toEqual(['exception: s is silent here, which no rule explains'])
    expect(study('wind').notes?.[0]).toContain('/W AY1 N D/ (to turn)')
    expect(study('reed').notes).toBeUndefined()
  })
})

describe("the teacher's word wins", () => {
  test('her sounds', () => {
    const word = study('lake', { sounds: ['l', 'a_e', 'k'] })
    expect(word).toMatchObject({ source: 'teacher', known: true, soundCount: 3 })
    expect(written(word.graphemes)).toBe('l:L a:EY k:K e:-')
  })

  test('her sounds for a word nobody knows', () => {
    const word = study('blorp', { sounds: ['bl', 'or', 'p'] })
    expect(word).toMatchObject({ source: 'teacher', known: false })
    expect(written(word.graphemes)).toBe('bl:B+L or:AO+R p:P')
  })

  test('her syllables, parts of speech and plural', () => {
    const word = study('otter', { syllables: ['ot', 'ter'], partsOfSpeech: ['noun'], plural: 'otter' })
    expect(word).toMatchObject({
      source: 'teacher',
      overridden: ['syllables', 'part of speech', 'plural'],
      syllables: ['ot', 'ter'],
      partsOfSpeech: ['noun'],
      plural: { form: 'otter', rule: 'as the teacher writes it' },
    })
    expect(study('otter', { noPlural: true })).toMatchObject({ plural: null, overridden: ['plural'] })
  })

  test('her findings', () => {
    const without = study('thread', { notPatterns: [{ pattern: 'digraph-blend' }] })
    expect(without.patterns.map(({ pattern }) => pattern)).not.toContain('digraph-blend')
    const added = study('lake', { alsoPatterns: [{ pattern: 'vowel-team', letters: 'a_e' }] })
    expect(added.patterns).toContainEqual({
      pattern: 'vowel-team',
      letters: 'a_e',
      start: 1,
      end: 4,
      place: 'end',
      why: 'the teacher says so',
      source: 'teacher',
    })
  })

  test('sounds that nobody knows stay a guess, whatever else she settled', () => {
    expect(study('blorp', { plural: 'blorpen' })).toMatchObject({ source: 'guess', overridden: ['plural'] })
  })

  test('sounds that do not add up are an error at their place, with advice', () => {
    const outcome = studyWord({ text: 'reed', place, overrides: { sounds: ['r', 'e', 'd'] } }, lexicon)
    expect(outcome).toEqual({
      ok: false,
      problems: [
        {
          severity: 'error',
          place,
          message: 'the sounds "r e d" do not add up to "reed"',
          advice: 'Write every letter of "reed" once, in order, with a space between sounds.',
        },
      ],
    })
  })

  test('an accent changes the phonemes', () => {
    const planWord = { text: 'marsh', place, overrides: {} }
    const outcome = studyWord(planWord, lexicon, {
      accent: { rhotic: false, cotCaught: 'apart', wh: 'w' },
    })
    expect(outcome).toMatchObject({ ok: true, value: { phonemeCount: 3, pronunciations: ['M AA1 SH'] } })
  })
})
