/** What `week: yes` prints: a set for each of its days, as a teacher would write it under `print:`. */

export interface WeekPart {
  /** What its files are called, and what `without` names. */
  readonly name: string
  /** What it is called where its name would not read well. */
  readonly title?: string
  readonly layout: string
  /** Keys of the layout that make it this part and no other: an item that has them too takes its place. */
  readonly keys?: Readonly<Record<string, string>>
  /** How it is made where she says nothing. */
  readonly settings?: Readonly<Record<string, string>>
  /** It is nothing without marks: a week of which the teacher writes that nothing is marked has none. */
  readonly ofMarks?: true
  /** One lesson is shown to all: where the class has words of its own, none is made for each group. */
  readonly forClass?: true
}

/** One of each thing that a week of lists holds: common practice, no source; the choice among layouts is ours. */
export const weekParts: readonly WeekPart[] = [
  { name: 'board-pages', layout: 'board-pages', forClass: true },
  { name: 'lesson-notes', layout: 'lesson-notes' },
  { name: 'marked-list', layout: 'marked-list' },
  { name: 'blank-list', layout: 'blank-list' },
  { name: 'key', layout: 'key', ofMarks: true },
  {
    name: 'practice-marks',
    title: 'Practice: marks',
    layout: 'practice',
    keys: { practise: 'marks' },
    ofMarks: true,
  },
  { name: 'practice-sounds', title: 'Practice: sounds', layout: 'practice', keys: { practise: 'sounds' } },
  { name: 'practice-plurals', title: 'Practice: plurals', layout: 'practice', keys: { practise: 'plurals' } },
  { name: 'practice-endings', title: 'Practice: endings', layout: 'practice', keys: { practise: 'endings' } },
  { name: 'practice-copy', title: 'Practice: copy', layout: 'practice', keys: { practise: 'copy' } },
  { name: 'word-cards', layout: 'word-cards' },
  { name: 'closed-sort', layout: 'closed-sort' },
  // Ten to twenty words fill boards of nine or sixteen, of which half a sheet holds one in a size to read across a table.
  { name: 'bingo', layout: 'bingo', settings: { down: '2' } },
  { name: 'dictation', layout: 'dictation' },
  { name: 'home-page', layout: 'home-page' },
]
