import { expect, test } from 'vitest'
import { guessPartsOfSpeech } from '../../../src/words/parts-of-speech/guess.js'

test.each([
  ['snorfle', 'noun'],
  ['snorfling', 'verb'],
  ['snorfled', 'verb'],
  ['snorfly', 'adverb'],
  ['snobbly', 'adjective'],
  ['snorfleness', 'noun'],
  ['snorfful', 'adjective'],
  ['snorfize', 'verb'],
  ['Snorfing', 'noun'],
])('%s is guessed a %s', (word, part) => expect(guessPartsOfSpeech(word)[0]).toBe(part))
