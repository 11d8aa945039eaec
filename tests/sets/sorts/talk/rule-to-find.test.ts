import { describe, expect, it } from 'vitest'
import { rankedSorts } from '../../../../src/sets/sorts/rank-sorts.js'
import { sortTalk } from '../../../../src/sets/sorts/talk/sort-talk.js'
import { wordsOfAWeek } from '../words-of-a-week.js'

/** What the talk on the first sort tells as its rule. */
function ruleIn(list: string): string | undefined {
  const words = wordsOfAWeek(list)
  const [rated] = rankedSorts(words)
  const told = sortTalk({ rated: rated!, words, toAdd: () => [] }).find(({ answer }) => answer !== undefined)
  return told?.answer?.replace(': so it is in all words here.', '')
}

describe('a rule to find', () => {
  it.each([
    ['where letters stand', 'rain, sail, trail, hay, clay, spray', 'ai: inside the word; ay: at the end'],
    [
      'a silent e round a consonant',
      'lake, gate, wave, rain, sail, trail',
      'a_e: round a consonant; ai: inside the word',
    ],
    [
      'the letter behind',
      'cat, cob, crab, kid, kelp, kite',
      'c: before any other letter, or at the end; k: before e, i or y',
    ],
    [
      'the vowel before',
      'duck, sock, neck, bank, milk, park',
      'ck: right behind a short vowel; k: behind any other sound',
    ],
    [
      'the sound before -ed',
      'jumped, baked, fished, sailed, waved, rained, landed, waited, skated',
      '-ed as in baked: behind a sound that does not hum; -ed as in waved: behind a sound that hums; -ed as in landed: behind /t/ or /d/',
    ],
    [
      'the sound before -s',
      'cats, cups, beds, bugs, lambs, rocks',
      '-s as in cats: behind a sound that does not hum; -s as in beds: behind a sound that hums',
    ],
    [
      'how the word ends before -ing',
      'running, hopping, digging, riding, baking, hiking, fishing, jumping, reading',
      'nothing changes: in another way; double the last letter: one vowel letter, one consonant; drop e: silent e',
    ],
    [
      'how the word for one ends',
      'ducks, ponds, kites, foxes, dishes, benches, ponies, berries, puppies, leaves, wolves, knives',
      'add s: another letter; add es: s, x, z, ch or sh; y to i: a consonant and y; f to v: f or fe',
    ],
    [
      'how a word for one ends that has no ending yet',
      'boat, kite, lamp, fox, dish, bench, pony, berry, puppy',
      'add s: another letter; add es: s, x, z, ch or sh; y to i: a consonant and y',
    ],
    [
      'what closes a first syllable',
      'tiger, robot, music, rabbit, basket, napkin',
      'open syllable: one; closed syllable: two or more letters',
    ],
  ])('is %s', (_what, list, rule) => {
    expect(ruleIn(list)).toBe(rule)
  })

  it.each([
    ['a spelling stands in two places', 'rain, sail, aim, hay, clay, spray'],
    ['a word has k before another letter', 'cat, cob, crab, kid, kelp, koala'],
    ['a base with one vowel and one consonant does not double', 'running, hopping, opening, jumping'],
    ['both spellings stand alike', 'leaf, seal, beach, reed, seed, feel'],
  ])('is none where %s', (_what, list) => {
    expect(ruleIn(list)).toBeUndefined()
  })

  it('is none of the letter behind for letters that do not go by it', () => {
    expect(ruleIn('fan, fog, frog, phone, physical, photo')).toBeUndefined()
  })
})
