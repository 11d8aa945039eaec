import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { readFamiliarity } from '../../../src/words/lexicon/sources.js'
import { gatherPartsOfSpeech } from '../../../src/words/parts-of-speech/gather.js'
import { readParts } from '../../../src/words/parts-of-speech/listed-parts.js'
import { readSenses } from '../../../src/words/parts-of-speech/wordnet.js'

const text = readFileSync(join(import.meta.dirname, 'familiar-words.tsv'), 'utf8')
const byHand = new Map(
  text
    .split('\n')
    .filter(line => line !== '' && !line.startsWith('#'))
    .map(line => {
      const [word = '', parts = ''] = line.split('\t')
      return [word, readParts(parts)]
    }),
)
const heard = readFamiliarity()
const familiarity = (word: string) => heard.get(word)?.count ?? 0
const more = 'otters jumped happier oxen swam quickly treat treats please pleas pleases snorfle'.split(' ')
const gathered = gatherPartsOfSpeech([...byHand.keys(), ...more], familiarity)

describe('familiar words tagged by hand', () => {
  test('are more than 500', () => expect(byHand.size).toBeGreaterThan(500))

  test('95 % and more have the right one first', () => {
    const wrong = [...byHand].filter(([word, parts]) => gathered.get(word)?.[0] !== parts[0])
    expect(1 - wrong.length / byHand.size).toBeGreaterThan(0.95)
  })

  test('99 % and more have every one', () => {
    const missing = [...byHand].filter(
      ([word, parts]) => !parts.every(part => gathered.get(word)?.includes(part)),
    )
    expect(1 - missing.length / byHand.size).toBeGreaterThan(0.99)
  })

  test('the order of senses alone would not do', () => {
    const senses = readSenses()
    const firstBySenses = (word: string) =>
      senses.get(word)?.toSorted((a, b) => b.count - a.count || a.rank - b.rank)[0]?.partOfSpeech
    const right = [...byHand].filter(([word, parts]) => firstBySenses(word) === parts[0])
    expect(right.length / byHand.size).toBeLessThan(0.85)
  })
})

describe('forms with endings', () => {
  test.each([
    ['otters', ['noun']],
    ['jumped', ['verb']],
    ['happier', ['adjective']],
    ['oxen', ['noun']],
    ['swam', ['verb']],
    ['quickly', ['adverb']],
  ])('%s', (word, parts) => expect(gathered.get(word)).toEqual(parts))
})

test('a verb in s is several things too where its base is a noun', () => {
  expect(gathered.get('treats')).toEqual(['verb', 'noun'])
  expect(gathered.get('pleases')).toEqual(['verb'])
})

test('what no source lists has none', () => {
  expect(gathered.has('snorfle')).toBe(false)
})

test('a name that is no part of speech is refused', () => {
  expect(readParts('noun, verb')).toEqual(['noun', 'verb'])
  expect(() => readParts('noun, verv')).toThrow('"verv" is no part of speech')
})
