import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { openLexicon } from '../../../src/words/lexicon/lexicon.js'
import { aligned } from './written-graphemes.js'

const lexicon = openLexicon()

const rows = readFileSync(join(import.meta.dirname, 'familiar-words.tsv'), 'utf8')
  .trim()
  .split('\n')
  .filter(line => !line.startsWith('#'))
  .map(line => line.split('\t') as [word: string, graphemes: string])

describe('hand-read graphemes of familiar words, and of words that show each convention', () => {
  test.each(rows)('%s', (word, graphemes) => {
    expect(aligned(word, lexicon.lookUp(word)!.pronunciations[0]!)).toBe(graphemes)
  })
})
