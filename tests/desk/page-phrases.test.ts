/** What the engine tells of a plan, as the page tells it. */
import { readFileSync } from 'node:fs'
import { globSync } from 'tinyglobby'
import { expect, it } from 'vitest'
import { namesFor } from '../../src/desk/server/desk-names.js'
import { pagePhrases, phrases } from '../../src/desk/server/page-phrases.js'

const said = pagePhrases(await namesFor())

it.each([
  [
    'bingo',
    'So that the game lasts, the boards have no free space; write free: yes in the plan to have it otherwise.',
    'So that the game lasts, the boards have no free space; choose “yes” for “Whether the middle of a board with an odd grid is free” to have it otherwise.',
  ],
  [
    'bingo',
    'Write win at: 12 or less, or give more words.',
    'Choose 12 or less for “The call at which one board alone is to win”, or give more words.',
  ],
  [
    'sound-boxes',
    'Give each word a picture, or write show: word or show: nothing.',
    'Give each word a picture, or choose “word” for “What stands above the boxes” or “nothing” for “What stands above the boxes”.',
  ],
  [
    'word-search',
    'Write grid: 12x12, or give fewer words.',
    'Choose 12x12 for “Columns and rows of letters”, or give fewer words.',
  ],
  [
    undefined,
    'Give words a clue each, or write clues: drafts in the plan to take ours.',
    'Give words a clue each, or choose “our draft stands there” for “Where you gave no clue” to take ours.',
  ],
  [
    undefined,
    'Take the mark out, or add a word that shows it: "oaktag find --pattern" finds some, "oaktag study" tells what your words show.',
    'Take the mark out, or add a word that shows it; what your words show stands under Marks.',
  ],
  [
    undefined,
    'The mark on consonant-digraph does not reach the digraph inside a blend: shrub. Add "inside blends: yes" to the mark for a mark there too, or "inside blends: no" to have none.',
    'The mark on consonant digraph does not reach the digraph inside a blend: shrub. Choose under Marks, How it looks, whether it is marked inside blends too.',
  ],
  [
    'bingo',
    'Give the group more words, or leave it out with groups.',
    'Give the group more words, or leave it out where its groups are ticked.',
  ],
  [undefined, 'The sort is "how the word ends". By what kind of letters.', undefined],
  [undefined, 'Words are 63 pt: "stream" decides.', undefined],
  [undefined, 'Write "words:" and under it a dash and a word on each line.', undefined],
  [undefined, 'Write words: and under it a dash and a word on each line, or size: 24 pt.', undefined],
])('says of %s: %s', (layout, text, page = text) => {
  expect(said(text, layout)).toBe(page)
})

it('says otherwise only what the engine says: no sentence of which it knows is gone', () => {
  const files = globSync(['src/**/*.ts', 'layouts/**/*.ts'], { ignore: ['src/desk/**'] })
  const engine = files.map(file => readFileSync(file, 'utf8')).join('\n')
  expect(phrases.map(([form]) => form).filter(form => engine.match(form) === null)).toEqual([])
})
