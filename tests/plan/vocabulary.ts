/** A small vocabulary for the tests of the plan stage; the real one comes from the stages to the right of it. */

import { keysInSentences } from '../../src/plan/keys/placed-keys.js'
import { keysOfPlan } from '../../src/plan/plan-keys.js'
import { choice, gridSize, option, wholeNumber, yesNo } from '../../src/plan/values/options.js'
import type { Vocabulary } from '../../src/plan/vocabulary.js'

export const vocabulary: Vocabulary = {
  layouts: new Map([
    ['word-cards', { options: {}, inWeek: { day: 'centres', given: 'once' } }],
    ['open-sort', { options: {}, inWeek: { day: 'centres', given: 'each pair' } }],
    [
      'bingo',
      {
        inWeek: { day: 'centres', given: 'once' },
        options: {
          boards: option('how many', wholeNumber(1, 500, 24)),
          grid: option('columns x rows', gridSize(2, 10, { columns: 5, rows: 5 })),
          'free centre': option('whether the middle is free', yesNo(true)),
          'caller order': option('in which order', choice(['fair', 'random'], 'fair')),
        },
      },
    ],
    ['key', { options: {}, inWeek: { day: 'lesson', given: 'once' } }],
  ]),
  patterns: ['consonant-digraph', 'digraph-blend', 'silent-letters', 'vowel-team', 'silent-e'],
  papers: [
    { name: 'letter', widthMm: 215.9, heightMm: 279.4, aliases: ['us letter', '8.5x11', '8.5 x 11 in'] },
    { name: 'a4', widthMm: 210, heightMm: 297 },
  ],
  fonts: ['andika', 'lexend', 'opendyslexic', 'atkinson-hyperlegible'],
  faultOfFont: path => (path.includes('damaged') ? 'it is damaged' : undefined),
  lines: ['single', 'double', 'dashed', 'dotted', 'wavy', 'thick'],
  borders: ['single', 'double', 'dashed', 'dotted', 'wavy', 'thick', 'dashed-round'],
  outlines: ['box', 'rounded', 'oval', 'hexagon'],
  plurals: ['add s', 'add es', 'y to i', 'y to i, add es'],
  keysElsewhere: () => keysInSentences(keysOfPlan(vocabulary)),
  tradeWords: kind => new Map(kind === 'pattern' ? [['digraph', 'Write consonant-digraph.']] : []),
}
