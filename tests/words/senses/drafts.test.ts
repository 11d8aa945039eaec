import { describe, expect, it, test } from 'vitest'
import { openLexicon } from '../../../src/words/lexicon/lexicon.js'
import { allDrafts, draftInTables, draftOf } from '../../../src/words/senses/drafts.js'
import { faultsOf } from './faults-of-a-draft.js'

describe('a draft of a clue', () => {
  it('is found for a word in small or in capital letters', () => {
    expect(draftOf('frog')).toBe(allDrafts().get('frog'))
    expect(draftOf('Frog')).toBe(draftOf('frog'))
    expect(draftOf('mudflatless')).toBeUndefined()
  })

  it('is the same, whether it is searched in the tables or they are read', () => {
    const drafts = [...allDrafts()]
    expect(drafts.map(([word]) => [word, draftInTables(word)])).toEqual(drafts)
  })
})

describe('the faults of a draft', () => {
  test.each([
    ['tern', 'a white bird that dives for small fish at the edge of the salt marsh', '68 characters'],
    ['tern', 'a white bird.', 'a stop at the end'],
    ['crab', 'a decapod with claws', 'rare: decapod'],
    ['tide', 'the sea kills it', 'unfit for children: kills'],
    ['tide', 'the sea is its girlfriend', 'not read aloud: girlfriend'],
    ['sail', 'sailed by a crew', 'the word or its form: sailed'],
    ['goose', 'one of many geese', 'the word or its form: geese'],
    ['swim', 'what a swimmer does', 'the word or its form: swimmer'],
    ['musician', 'she makes music', 'the word or its form: music'],
    ['cupboard', 'the place for your cup', 'a half of it: cup'],
    ['bookcase', 'it is full of books', 'a half of it: books'],
  ])('%s, "%s": %s', (word, draft, fault) => {
    expect(faultsOf(word, draft)).toContain(fault)
  })

  it('are not found in forms of familiar words', () => {
    expect(faultsOf('duck', "it swims, quacks and eats the pond's weeds")).toEqual([])
  })
})

describe('all drafts', () => {
  const drafts = [...allDrafts()]

  it('are there for four thousand words', () => expect(drafts.length).toBeGreaterThan(4000))

  it('are short, in familiar words that are fit for children, and do not say their word, a form or a half of it', () => {
    const faults = drafts.flatMap(([word, draft]) =>
      faultsOf(word, draft).map(fault => `${word}: ${draft} (${fault})`),
    )
    expect(faults).toEqual([])
  })

  it('are each of one word', () => {
    const firstOf = new Map<string, string>()
    const shared = drafts.flatMap(([word, draft]) => {
      const first = firstOf.get(draft.toLowerCase())
      if (first === undefined) firstOf.set(draft.toLowerCase(), word)
      return first === undefined ? [] : [`${first} and ${word}: ${draft}`]
    })
    expect(shared).toEqual([])
  })

  it('are of words that are fit for children', () => {
    const lexicon = openLexicon()
    expect(drafts.filter(([word]) => lexicon.lookUp(word)?.unfit).map(([word]) => word)).toEqual([])
  })
})
