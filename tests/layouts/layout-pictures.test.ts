import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { layouts } from '../../layouts/index.js'
import { keepWork } from '../../src/pipeline/kept-work.js'
import { putPlanOnSheets } from '../../src/pipeline.js'
import { formatProblem } from '../../src/problems.js'
import type { Sheet } from '../../src/sheets/sheet.js'
import { folderWith } from '../pipeline/plan-folder.js'
import { pictureOfSheets } from './sheet-picture.js'

/** A sheet as small as shows each layout, and the looks that a layout has beside its plainest. */
const pictured: Readonly<Record<string, string>> = {
  'word-cards': 'layout: word-cards, across: 2, down: 2',
  'word-cards-backs':
    'layout: word-cards, across: 2, down: 2, back: answer, border: double round, sounds: bars, cover: no',
  'word-cards-strip': 'layout: word-cards, across: 2, down: 2, key: strip, syllables: breaks, cover: no',
  'picture-cards': 'layout: word-cards, across: 2, down: 1, picture: above, cover: no',
  'open-sort': 'layout: open-sort, across: 2, down: 2, cover: no',
  'closed-sort': 'layout: closed-sort, sort: how the plural is made, across: 3, down: 2, cover: no',
  'sort-mat': 'layout: sort-mat, sort: how the plural is made, headers: key word, cover: no',
  'blind-sort': 'layout: blind-sort, sort: how the plural is made, cover: off',
  'sort-record': 'layout: sort-record, sort: how the plural is made, cover: off',
  bingo: 'layout: bingo, boards: 1, grid: 2x2, free: no, cover: no',
  'call-cards': 'layout: call-cards, across: 2, down: 2, cover: no',
  'matching-pairs': 'layout: matching-pairs, pair: plural, across: 3, down: 3, cover: no',
  'chain-cards': 'layout: chain-cards, across: 2, down: 2, cover: no',
  'pattern-bingo': 'layout: pattern-bingo, boards: 1, sort: how the plural is made, cover: no',
  'path-board': 'layout: path-board, spaces: 6, cover: no',
  'dice-grid': 'layout: dice-grid, words a number: 2, cover: no',
  'four-in-a-line': 'layout: four-in-a-line, grid: 4x4, cover: no',
  'letter-tiles': 'layout: letter-tiles, words: [reed, marsh], across: 4, down: 2, cover: no',
  'word-ladder': 'layout: word-ladder, from: reed, steps: 2, cover: no',
  'roll-and-build': 'layout: roll-and-build, across: 1, down: 1, cover: no',
  'missing-letters': 'layout: missing-letters, words: [reed, marsh, perch], across: 2, down: 2, cover: no',
  crossword: 'layout: crossword, cover: no',
  'word-search': 'layout: word-search, cover: no',
  'sound-mat': 'layout: sound-mat, cover: no',
  'sound-boxes': 'layout: sound-boxes, across: 1, down: 2, words: [reed, marsh], cover: no',
  dictation: 'layout: dictation, cover: off, children: 1',
  'lesson-notes': 'layout: lesson-notes',
  practice: 'layout: practice, practise: sounds',
  'practice-forms': 'layout: practice, practise: plurals, add words: nothing',
  'practice-boxes': 'layout: practice, practise: parts of speech',
  'practice-clues': 'layout: practice, practise: clues',
  'practice-marks': 'layout: practice, practise: marks',
  'practice-copy': 'layout: practice, practise: copy',
  'board-pages': 'layout: board-pages, words: [reed, marsh], each word: none',
  'home-page': 'layout: home-page',
  'word-strips': 'layout: word-strips, across: 1, down: 3, cover: no',
  key: 'layout: key',
  'key-desk': 'layout: key, for: desk',
  'marked-list': 'layout: marked-list',
  'blank-list': 'layout: blank-list',
  'bag-labels': 'layout: bag-labels',
  checklist: 'layout: checklist',
  calibration: 'layout: calibration',
}

/** A pond with a stone in it. */
const pond =
  '<svg xmlns="http://www.w3.org/2000/svg" width="80" height="60"><rect width="80" height="60"/><circle cx="40" cy="30" r="20" fill="#fff"/></svg>'

const card = 'paper: 120 x 90 mm, orientation: landscape, margin: 6 mm'
/** For pages of text. */
const page = 'paper: 148 x 210 mm, margin: 8 mm'

const plan = `title: Pond
class: Room 7, Heron Lane School
seed: 12
words:
  - {word: reed, clue: a tall grass, picture: pond.svg}
  - {word: marsh, clue: wet land, picture: pond.svg}
  - {word: frog, clue: it was a tadpole, picture: pond.svg}
  - {word: perch, clue: a striped fish, picture: pond.svg}
marks:
  - pattern: consonant-digraph
  - pattern: vowel-team
    outline: oval
print:
`

/** What a plan prints for it; lists of sets have a set to tell of. */
const kept = keepWork()

async function sheetsOf(keys: string): Promise<readonly Sheet[]> {
  const sets = /checklist|bag-labels/.test(keys) ? '  - {layout: word-cards, copies: 2}\n' : ''
  const folder = folderWith({
    'pond.yaml': `${plan}${sets}  - {${keys}, ${/cover: no/.test(keys) ? card : page}}\n`,
    'pond.svg': pond,
  })
  const made = await putPlanOnSheets({ planFile: join(folder, 'pond.yaml'), kept })
  if (!made.ok || made.problems.length > 0) throw new Error(made.problems.map(formatProblem).join('\n'))
  return made.value.items.at(-1)!.printed.sheets
}

/** On pages as small as these a few sentences take several. */
function firstOfEachKind(sheets: readonly Sheet[]): readonly Sheet[] {
  const isFirst = ({ kind, side }: Sheet, index: number) =>
    kind === 'pieces' || sheets.findIndex(other => other.kind === kind && other.side === side) === index
  return sheets.filter(isFirst)
}

describe('how a layout looks', () => {
  it('is shown for every layout of the index', () => {
    const shown = new Set(Object.values(pictured).map(keys => /layout: ([\w-]+)/.exec(keys)![1]))
    expect(layouts.map(({ name }) => name).filter(name => !shown.has(name))).toEqual([])
  })

  it.each(Object.entries(pictured))('%s', async (name, keys) => {
    const sheets = firstOfEachKind(await sheetsOf(keys))
    await expect(pictureOfSheets(name, sheets)).toMatchFileSnapshot(`pictures/${name}.svg`)
  })
})
