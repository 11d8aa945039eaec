/** What the goals are measured on: boards of thirty marked words, and a sheet of call cards. */
export const thirtyWords =
  'reed marsh thread pumpkin knot boat frog pond mud heron shell fish duck nest wing path bridge light night stream spring crane snake mouse rain snail leaf tree bank shore'.split(
    ' ',
  )

export function boardsPlan(boards: number): string {
  return `title: Along the marsh
words: [${thirtyWords.join(', ')}]
marks:
  - pattern: consonant-digraph
  - pattern: silent-letters
  - pattern: vowel-team
print:
  - layout: call-cards
  - layout: bingo
    boards: ${boards}
    grid: 5x5
`
}

const someThings = `print: [marked-list, blank-list, key, word-cards, open-sort, {layout: bingo, boards: 12, grid: 3x3}, call-cards, checklist]
`

/** About thirty sheets of six kinds, one of the marks in colour; or the whole week's set, of more than a hundred. */
export function weekPlan({ word = 'duck', color = '#aa2222', whole = false } = {}): string {
  const words = [
    'marsh',
    'shrub',
    'stream',
    'gnat',
    'wren',
    'leaf',
    'moth',
    'frog',
    'snake',
    word,
    'finch',
    'perch',
  ]
  return `title: Along the marsh
words:
${words.map(each => `  - {word: ${each}, clue: seen by the marsh}\n`).join('')}marks:
  - {pattern: consonant-digraph, color: "${color}"}
  - pattern: silent-letters
  - pattern: vowel-team
${whole ? 'week: yes\n' : someThings}`
}
