/** What values of a plan are called on the page, where the word that the plan writes says too little. */
import type { NamedChoice } from './messages.js'
import { folded } from './plan-values.js'

const values: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  orientation: { portrait: 'upright', landscape: 'on its side' },
  marks: { all: 'with their marks', none: 'without marks' },
  order: {
    rows: 'row by row',
    stack: 'so that a pile cut through once stays in order',
    child: 'a whole set for each child, one after the other',
  },
  back: {
    none: 'nothing',
    name: 'what set it is of',
    answer: 'the answer',
    clue: 'the clue',
    picture: 'the picture',
    pattern: 'the pattern',
  },
  cut: { lines: 'lines across', ticks: 'short ticks at the edges', none: 'not at all' },
  key: { cover: 'on the cover', strip: 'on a strip at the foot of every sheet', none: 'nowhere' },
  syllables: { breaks: 'divided', none: 'not divided' },
  headers: { title: 'their titles', 'key-word': 'one of their words', 'key-picture': 'a picture of one' },
  leftovers: { 'own-header': 'get a column of their own', 'leave-out': 'stay out' },
  caller: { 'for-each': 'each has its own', 'for-all': 'one for all' },
  finish: { over: 'a throw past it ends there', exact: 'only the exact throw' },
  numbers: { top: 'above the columns', side: 'beside the rows' },
  'each-word': { none: 'not at all' },
  accent: { american: 'the r of marsh is heard', 'r-less': 'the r of marsh is not heard' },
  'count-sounds': {
    'as-taught': 'as taught: the ar of marsh is one',
    'every-phoneme': 'each for itself: the a and the r of marsh are two',
  },
  contrast: {
    'black-on-ivory-stock': 'black on card that is ivory itself',
    'black-on-yellow-stock': 'black on card that is yellow itself',
  },
  clues: { own: 'none stands there', drafts: 'our draft stands there' },
}

const corners: Readonly<Record<string, string>> = {
  round: 'round corners',
  cut: 'corners cut off',
  ticket: 'corners curved in',
}

/** `order`, `stack` → what it does. */
export function valueTitle(key: string, value: string): string {
  const own = values[folded(key)]?.[folded(value)]
  if (own !== undefined) return own
  const [line = '', corner] = value.split('-')
  const ends = corner === undefined ? undefined : corners[corner]
  return folded(key) === 'border' && ends !== undefined ? `${line}, ${ends}` : value
}

/** What holds where nothing is said: without what only the command line or the file knows. */
export function usualTitle(key: string, usual: string): string {
  if (usual.includes('oaktag sorts')) return 'the best that your words support'
  return valueTitle(key, usual)
    .replaceAll('"minutes"', 'the time asked for')
    .replaceAll('what suits the layout', 'what suits it')
    .replaceAll('the font', 'the typeface')
}

/** `how many sets are printed` → as a label of its own. */
export function asLabel(clause: string): string {
  const plain = clause
    .replaceAll('"minutes"', 'that time')
    .replace('instead of across and down', 'instead of how many stand on a sheet')
    .replace('columns x rows', 'columns and rows')
  return `${plain.charAt(0).toUpperCase()}${plain.slice(1)}`
}

/** Names as they stand in sentences. */
export function titled({
  name,
  title = name.replaceAll('-', ' '),
}: Pick<NamedChoice, 'name' | 'title'>): string {
  return title
}
