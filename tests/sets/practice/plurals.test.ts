import { describe, expect, it } from 'vitest'
import { pluralPractice } from '../../../src/sets/practice/plurals.js'
import { studied } from './word-of-lexicon.js'

const more = ['box', 'city', 'wolf', 'tooth', 'sheep', 'frog', 'pond']
const practise = (words: readonly string[], add: 'too few' | 'every rule' | 'nothing' = 'nothing') =>
  pluralPractice({
    words: words.map(studied),
    add,
    study: studied,
    nounOf: (rule, taken) => {
      const rules = [
        'add es',
        'y to i, add es',
        'f to v, es at the end',
        'changes inside',
        'stays the same',
        'add s',
        'add s',
      ]
      const index = more.findIndex((word, at) => rules[at] === rule && !taken.has(word))
      return index < 0 ? undefined : studied(more[index]!)
    },
  })

describe('practice of plurals', () => {
  it('asks for the plural of each noun, the words of one rule together', () => {
    const { items } = practise(['leaf', 'reed', 'tooth', 'marsh', 'gnat', 'city', 'sheep'])
    expect(items.map(({ prompt, answer, rule }) => `${prompt} ${answer}: ${rule}`)).toEqual([
      'reed reeds: add s',
      'gnat gnats: add s',
      'marsh marshes: add es',
      'city cities: y to i, add es',
      'leaf leaves: f to v, es at the end',
      'tooth teeth: changes inside',
      'sheep sheep: stays the same',
    ])
  })

  it('has knife beside leaf, under a rule that is true of both', () => {
    expect(practise(['leaf', 'knife']).items.map(({ answer, rule }) => `${answer}: ${rule}`)).toEqual([
      'leaves: f to v, es at the end',
      'knives: f to v, es at the end',
    ])
  })

  it.each([
    ['zorpish', 'what we know of it is a guess'],
    ['carry', 'no noun'],
    ['hop', 'most often a verb'],
    ['scarf', 'two plurals in use, scarves and scarfs'],
    ['mud', 'not counted'],
    ['scarves', 'already plural: one scarf'],
    ['scissors', 'always plural'],
    ['bus', 'two plurals in use, buses and busses'],
    ['ads', 'not sure whether it is a plural already'],
  ])('leaves out %s and says why', (word, why) => {
    expect(practise([word]).leftOut).toEqual([{ word, why }])
  })

  it('asks of a plural for that plural, once where its noun is on the list too', () => {
    const pairs = practise(['feet', 'puppies', 'knives', 'leaves', 'box', 'boxes']).items.map(
      ({ prompt, answer, from }) => `${prompt} ${answer}${from === undefined ? '' : ` (${from.text})`}`,
    )
    expect(pairs).toEqual([
      'box boxes',
      'puppy puppies (puppies)',
      'knife knives (knives)',
      'leaf leaves (leaves)',
      'foot feet (feet)',
    ])
  })

  it('takes the teacher’s plural of a word that is a guess', () => {
    const blorf = { ...studied('blorf'), plural: { form: 'blorves', rule: 'as the teacher writes it' } }
    const practice = pluralPractice({
      words: [{ ...blorf, overridden: ['plural'] }],
      add: 'nothing',
      study: studied,
      nounOf: () => undefined,
    })
    expect(practice.items.map(({ answer }) => answer)).toEqual(['blorves'])
  })

  it('adds nouns from elsewhere up to eight, of the rules that have fewest, and marks them as added', () => {
    const { items } = practise(['reed', 'gnat'], 'too few')
    expect(items).toHaveLength(8)
    expect(items.filter(({ added }) => added !== true).map(({ prompt }) => prompt)).toEqual(['reed', 'gnat'])
    expect(items.filter(({ added }) => added).map(({ prompt }) => prompt)).toEqual([
      'frog',
      'box',
      'city',
      'wolf',
      'tooth',
      'sheep',
    ])
  })

  it('adds nothing to a list that has enough, unless every rule is asked for', () => {
    const eight = ['reed', 'gnat', 'frog', 'pond', 'shrub', 'stream', 'marsh', 'twig']
    expect(practise(eight, 'too few').items).toHaveLength(8)
    expect(practise(eight, 'every rule').items.filter(({ added }) => added).length).toBeGreaterThanOrEqual(5)
  })

  it('adds nothing to a list without a noun', () => {
    expect(practise(['carry', 'hop'], 'too few').items).toEqual([])
  })
})
