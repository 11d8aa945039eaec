import { describe, expect, it } from 'vitest'
import type { Accent, CountSounds } from '../../src/plan/plan.js'
import { openLexicon } from '../../src/words/lexicon/lexicon.js'
import { piecesInWords } from '../../src/words/sounds-in-words.js'
import { studyWord } from '../../src/words/study.js'

const lexicon = openLexicon()

function study(
  text: string,
  ways: { accent?: Accent; countSounds?: CountSounds } = {},
  sounds?: readonly string[],
) {
  const overrides = sounds === undefined ? {} : { sounds }
  const outcome = studyWord({ text, place: { file: 'marsh.yaml' }, overrides }, lexicon, ways)
  if (!outcome.ok) throw new Error(outcome.problems[0]!.message)
  return outcome.value
}

const counted = (...asked: Parameters<typeof study>) => {
  const word = study(...asked)
  return `${word.soundCount}: ${piecesInWords(word)}`
}

// Counts by hand. One box for each sound that is heard: Elkonin 1963. That a vowel with its r is one sound, and x and
// qu two: common practice, no source.
describe('as taught, every piece that is heard counts once', () => {
  it.each([
    ['mud', '3: m·u·d'],
    ['thread', '4: th·r·ea·d'],
    ['crush', '4: c·r·u·sh'],
    ['match', '3: m·a·tch'],
    ['duck', '3: d·u·ck'],
    ['rabbit', '5: r·a·bb·i·t'],
    ['knight', '3: kn·igh·t'],
    ['eight', '2: eigh·t'],
    ['I', '1: I'],
    ['finger', '5: f·i·n·g·er'],
    ['think', '4: th·i·n·k'],
    ['nation', '5: n·a·ti·o·n'],
    ['jumped', '5: j·u·m·p·ed'],
    ['wanted', '6: w·a·n·t·e·d'],
  ])('%s', (word, said) => {
    expect(counted(word)).toBe(said)
  })

  it.each([
    ['snake', '4: s·n·a·k·(e)'],
    ['horse', '3: h·or·s·(e)'],
    ['have', '3: h·a·v·(e)'],
    ['island', '5: i·(s)·l·a·n·d'],
    ['homework', '6: h·o·m·(e)·w·or·k'],
  ])('silent pieces stand in brackets and count nothing: %s', (word, said) => {
    expect(counted(word)).toBe(said)
  })

  it.each([
    ['car', '2: c·ar'],
    ['marsh', '3: m·ar·sh'],
    ['fern', '3: f·er·n'],
    ['chair', '2: ch·air'],
    ['are', '1: are'],
    ['care', '2: c·are'],
    ['store', '3: s·t·ore'],
    ['where', '2: wh·ere'],
    ['measure', '4: m·ea·s·ure'],
    ['picture', '5: p·i·c·t·ure'],
    ['pure', '2: p·ure'],
    ['curious', '5: c·ur·i·ou·s'],
    ['story', '4: s·t·or·y'],
  ])('a vowel with its r is one piece, a silent e right after it included: %s', (word, said) => {
    expect(counted(word)).toBe(said)
  })

  it.each([
    ['fire', '2: f·ire'],
    ['fires', '3: f·ire·s'],
    ['tired', '3: t·ir·ed'],
    ['wiring', '4: w·ir·i·ng'],
    ['hour', '1: (h)·our'],
    ['flour', '3: f·l·our'],
    ['choir', '2: ch·oir'],
    ['tyre', '2: t·yre'],
  ])('so is a long i or a diphthong with the r that closes its syllable: %s', (word, said) => {
    expect(counted(word)).toBe(said)
  })

  it.each([
    ['pirate', '5: p·i·r·a·t·(e)', 'the r begins the next syllable'],
    ['very', '4: v·e·r·y', 'so it does in its sound, and the e keeps its own'],
    ['carry', '4: c·a·rr·y', 'rr is a doubled consonant'],
    ['around', '5: a·r·ou·n·d', 'the r opens the stressed syllable'],
    ['payroll', '5: p·ay·r·o·ll', 'two words in one'],
    ['flower', '4: f·l·ow·er', 'er is a syllable of its own'],
    ["we're", "3: w·e·'r·(e)", 'no piece crosses an apostrophe'],
    ['acre', '3: a·c·re', 're is one piece as it is'],
  ])('but not in %s (%s): %s', (word, said) => {
    expect(counted(word)).toBe(said)
  })

  it.each([
    ['cute', '3: c·u·t·(e)'],
    ['few', '2: f·ew'],
    ['unit', '4: u·n·i·t'],
    ['music', '5: m·u·s·i·c'],
    ['value', '4: v·a·l·ue'],
    ['table', '4: t·a·b·le'],
    ['puddle', '4: p·u·dd·le'],
    ['one', '2: o·n·(e)'],
    ['pizza', '4: p·i·zz·a'],
    ['prism', '5: p·r·i·s·m'],
    ['language', '7: l·a·n·g·u·a·g·(e)'],
    ["don't", "4: d·o·n·'t"],
    ['ping-pong', '6: p·i·ng-·p·o·ng'],
  ])('a piece that holds two sounds counts once all the same: %s', (word, said) => {
    expect(counted(word)).toBe(said)
  })

  it.each([
    ['box', '4: b·o·x, x counts two'],
    ['queen', '4: qu·ee·n, qu counts two'],
    ['exam', '5: e·x·a·m, x counts two'],
    ['luxury', '6: l·u·x·ur·y, x counts two'],
    ['excellent', '8: e·xc·e·ll·e·n·t, xc counts two'],
    ['exhibit', '7: e·xh·i·b·i·t, xh counts two'],
    ['anxious', '6: a·n·xi·ou·s, xi counts two'],
    ['acquire', '4: a·cqu·ire, cqu counts two'],
  ])('only x and qu count two: %s', (word, said) => {
    expect(counted(word)).toBe(said)
  })

  it.each([
    ['xylophone', '7: x·y·l·o·ph·o·n·(e)'],
    ['mosquito', '7: m·o·s·qu·i·t·o'],
    ['antique', '5: a·n·t·i·que'],
  ])('and only where both are heard: %s', (word, said) => {
    expect(counted(word)).toBe(said)
  })
})

describe('every phoneme', () => {
  const countSounds = 'every phoneme'
  it.each([
    ['mud', '3: m·u·d'],
    ['snake', '4: s·n·a·k·(e)'],
    ['marsh', '4: m·ar·sh, ar counts two'],
    ['cute', '4: c·u·t·(e), u counts two'],
    ['table', '5: t·a·b·le, le counts two'],
    ['pure', '4: p·ure, ure counts three'],
    ['fire', '3: f·ire, ire counts two'],
    ['her', '2: h·er'],
    ['box', '4: b·o·x, x counts two'],
  ])('counts what the dictionary writes, and the same pieces are shown: %s', (word, said) => {
    expect(counted(word, { countSounds })).toBe(said)
  })

  it('is in any count the number of phonemes', () => {
    expect(study('marsh')).toMatchObject({ soundCount: 3, phonemeCount: 4 })
    expect(study('marsh', { countSounds })).toMatchObject({ soundCount: 4, phonemeCount: 4 })
  })
})

describe("the teacher's own division", () => {
  it.each([
    ['car', 'c ar', '2: c·ar'],
    ['car', 'c a r', '3: c·a·r'],
    ['fire', 'f i re', '3: f·i·re'],
    ['pond', 'p o nd', '3: p·o·nd'],
    ['box', 'b o x', '4: b·o·x, x counts two'],
    ['queen', 'q u ee n', '4: q·u·ee·n'],
  ])('of %s as %s sets the pieces and the count', (word, division, said) => {
    expect(counted(word, {}, division.split(' '))).toBe(said)
  })

  it('counts its heard pieces also where every phoneme is counted: her word is the nearer one', () => {
    expect(counted('car', { countSounds: 'every phoneme' }, ['c', 'ar'])).toBe('2: c·ar')
  })
})

describe("the class's accent", () => {
  const rLess: Accent = { rhotic: false, cotCaught: 'apart', wh: 'w' }
  it.each([
    ['marsh', '3: m·ar·sh', '3: m·ar·sh'],
    ['fire', '2: f·ire', '2: f·ire'],
    ['hour', '1: (h)·our', '1: (h)·our'],
    ['her', '2: h·er', '2: h·er'],
  ])('with r dropped, %s counts as much as taught: the vowel with its r was one', (word, said) => {
    expect(counted(word, { accent: rLess })).toBe(said)
  })

  it('with r dropped, an r that a teacher parts from its vowel says nothing', () => {
    expect(counted('car', { accent: rLess }, ['c', 'a', 'r'])).toBe('2: c·a·(r)')
  })

  it('with wh its own sound, wh is one piece as taught, and two phonemes', () => {
    const accent: Accent = { rhotic: true, cotCaught: 'apart', wh: 'own' }
    expect(counted('whale', { accent })).toBe('3: wh·a·l·(e)')
    expect(study('whale', { accent }).phonemeCount).toBe(4)
  })
})
