import type { Layout } from '../../layouts/layout.js'

interface Examples {
  /** Keys of items, in the ways that change the layout most; the first is the plainest. */
  readonly keys: readonly string[]
  /** Keys with which it has room for texts as long as a plan takes them. */
  readonly roomForLongTexts?: string
  /** Whether its pages are read by the teacher alone, so that they may have small text in a child's large print. */
  readonly forTeacher?: true
}

/** What tests of every layout print of each; a layout without an entry is printed plain. */
export const examples: Readonly<Record<string, Examples>> = {
  'word-cards': {
    keys: ['', 'back: answer, border: double round, key: strip', 'sounds: yes, syllables: breaks'],
  },
  'open-sort': { keys: ['', 'border: dashed', 'picture: beside'] },
  'closed-sort': { keys: ['sort: how the plural is made, pairs: yes', 'headers: key word'] },
  'sort-mat': { keys: ['', 'headers: key word, marks: all'] },
  'blind-sort': { keys: ['headers: key word, marks: all'] },
  'sort-record': { keys: ['', 'headers: key word, border: dashed, copies: 2'] },
  bingo: { keys: ['boards: 2', 'boards: 3, grid: 4x3, free: no'] },
  'call-cards': { keys: ['', 'border: thick cut, back: name'], roomForLongTexts: 'across: 1, down: 3' },
  'matching-pairs': { keys: ['pair: clue', 'pair: plural, border: dashed', 'pair: same word'] },
  'chain-cards': {
    keys: ['border: double round', 'ask: plural, marks: all'],
    roomForLongTexts: 'across: 1, down: 3',
  },
  'pattern-bingo': { keys: ['boards: 2, marks: all'] },
  'path-board': { keys: ['', 'orientation: landscape, spaces: 11, boards: 2, marks: all'] },
  'dice-grid': {
    keys: ['', 'numbers: side, words a number: 2, boards: 2, marks: all'],
  },
  'four-in-a-line': { keys: ['grid: 5x4, boards: 2, marks: all'] },
  'letter-tiles': { keys: ['border: thick'] },
  'word-ladder': {
    keys: ['', 'level: harder, steps: 3, ladders: 2, marks: all'],
    roomForLongTexts: 'across: 1, down: 1',
  },
  'roll-and-build': { keys: ['', 'sets: 2, border: dashed'] },
  crossword: { keys: ['', 'help: first letters'] },
  'missing-letters': {
    keys: ['marks: all', 'hint: nothing, choices: 2, border: double round'],
    roomForLongTexts: 'across: 1, down: 2',
  },
  'word-search': { keys: ['ways: backwards too, boards: 2'] },
  'sound-mat': { keys: ['border: double'] },
  'sound-boxes': { keys: ['', 'show: word'] },
  dictation: { keys: ['', 'border: dashed, children: 3'] },
  'lesson-notes': { keys: [''], forTeacher: true },
  practice: {
    keys: [
      '',
      'practise: plurals, add words: every rule',
      'practise: endings, sorted: no',
      'practise: parts of speech, words: [reed, spring, stream, leaf]',
      'practise: clues',
      'practise: sounds, prompts: 5',
      'practise: marks',
    ],
  },
  // On paper as small as tests print on, a step of each kind.
  'board-pages': { keys: ['', 'each word: in one step, sounds: bars, plurals: no'] },
  // Small print on it is for a grown-up.
  'home-page': { keys: ['', 'marks: none'], forTeacher: true },
  'word-strips': { keys: ['', 'write: syllables, border: thick cut', 'write: nothing'] },
  key: { keys: ['', 'for: desk'] },
  'marked-list': { keys: [''], forTeacher: true },
  'blank-list': { keys: [''] },
  'bag-labels': { keys: ['', 'for: envelope'] },
  checklist: { keys: [''] },
  calibration: { keys: [''] },
}

/** Items of the layout as a plan has them: `{layout: bingo, boards: 2}`. */
export function exampleItems({ name }: Pick<Layout, 'name'>): readonly string[] {
  return (examples[name]?.keys ?? ['']).map(keys => itemOf(name, keys))
}

/** An item of a layout with these keys; empty ones are left out. */
export function itemOf(layout: string, ...keys: readonly string[]): string {
  return `{${[`layout: ${layout}`, ...keys].filter(part => part !== '').join(', ')}}`
}

/** The item with further keys. */
export function withKeys(item: string, ...keys: readonly string[]): string {
  return item.replace(/\}$/, `, ${keys.join(', ')}}`)
}
