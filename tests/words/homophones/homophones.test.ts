/** The groups that the build made of the lexicon and of the table, as a teacher meets them. */
import { describe, expect, it } from 'vitest'
import type { Accent } from '../../../src/plan/plan.js'
import { homophoneGroups, homophonesOf } from '../../../src/words/homophones/homophones.js'
import type { LexiconEntry } from '../../../src/words/lexicon/entry.js'
import { openLexicon } from '../../../src/words/lexicon/lexicon.js'
import { rowsOf } from '../../../src/words/tables/installed-tables.js'

const lexicon = openLexicon()
const american: Accent = { rhotic: true, cotCaught: 'apart', wh: 'w' }

describe('homophones', () => {
  it.each([
    ['symbol', ['cymbal']],
    ['colonel', ['kernel']],
    ['dying', ['dyeing']],
    ['time', ['thyme']],
    ['seize', ['sees', 'seas']],
    ['rein', ['rain', 'reign']],
    ['poor', ['pour', 'pore']],
    ['burrow', ['borough', 'burro']],
    ['read', ['reed', 'red']],
    ['i', ['eye']],
    ['gray', []],
    ['desert', []],
  ])('of %s are %j', (word, others) => expect(homophonesOf(word).toSorted()).toEqual(others.toSorted()))

  it('follow the accent', () => {
    expect(homophonesOf('whale')).toEqual(['wail'])
    expect(homophonesOf('whale', { ...american, wh: 'own' })).toEqual([])
    expect(homophonesOf('caught', { ...american, cotCaught: 'merged' })).toEqual(['cot'])
    expect(homophonesOf('caught', { ...american, rhotic: false })).toEqual(['court'])
    expect(homophonesOf('ferry', { ...american, rhotic: false })).toEqual([])
    expect(homophonesOf('cot', { ...american, rhotic: false })).toEqual([])
  })

  it('are 350 groups and more, each of two words or more, each word once', () => {
    expect(homophoneGroups().length).toBeGreaterThan(350)
    for (const { words } of homophoneGroups()) {
      expect(words.length).toBeGreaterThan(1)
      expect(new Set(words).size).toBe(words.length)
    }
  })
})

describe('groups listed by hand', () => {
  const listed = rowsOf('homophones/homophones').map(([words = '', where, why]) => ({ words, where, why }))
  /** Groups that give a reason, none of whose words bears it out. */
  const unfounded = (reason: string, bearsOut: (entry: LexiconEntry | undefined) => boolean) =>
    listed
      .filter(({ why }) => why === reason)
      .map(({ words }) => words)
      .filter(words => !words.split(' ').some(word => bearsOut(lexicon.lookUp(word))))

  it('have a word that speech has seldom, where they say so', () => {
    const isSeldom = (entry: LexiconEntry | undefined) =>
      entry === undefined || entry.pronunciations.length === 0 || entry.familiarity < 15
    expect(unfounded('seldom in speech', isSeldom)).toEqual([])
  })

  it('have a word that is not offered, where they say so', () => {
    const isNotOffered = (entry: LexiconEntry | undefined) =>
      entry === undefined || entry.unfit || entry.notReadAloud || entry.name
    expect(unfounded('not offered to children', isNotOffered)).toEqual([])
  })

  it('have a word that the lexicon takes for a name, where they say so', () => {
    expect(unfounded('taken for a name', entry => entry?.name === true)).toEqual([])
  })

  it('sound the same in the lexicon, unless they are said in another way too or in an accent', () => {
    const pronunciationsOf = (word: string) =>
      (lexicon.lookUp(word)?.pronunciations ?? []).map(said => said.replace(/\d/g, ''))
    const wrong = listed
      .filter(({ where, why }) => /every|wh/.test(where ?? '') && why !== 'said in another way too')
      .map(({ words }) => words)
      .filter(words => {
        const [first = [], ...others] = words.split(' ').map(pronunciationsOf)
        return !first.some(said => others.every(other => other.includes(said)))
      })
    expect(wrong).toEqual([])
  })
})
