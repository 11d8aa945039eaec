/** Studied words as a word list for a spreadsheet, which is read back as `words: week.csv`. */
import { divisionToWrite, type Word } from '../door/words.js'

type Column = readonly [heading: string, cell: (word: Word) => string]

/** Each under its key; what is a guess, or cannot be written as a division, is left empty for her to fill in. */
const columns: readonly Column[] = [
  ['word', word => word.text],
  ['clue', word => word.clue ?? ''],
  ['sentence', word => word.sentence ?? ''],
  ['part of speech', word => (word.partsOfSpeechGuessed === true ? '' : word.partsOfSpeech.join(', '))],
  ['plural', word => (word.partsOfSpeechGuessed === true ? '' : (word.plural?.form ?? ''))],
  ['sounds', word => divisionToWrite(word) ?? ''],
]

/** Comma-separated values, quoted by RFC 4180: a row a word below the names. Lines end as all lines that are printed do. */
export function wordsCsv(words: readonly Word[]): string {
  const rows = [
    columns.map(([heading]) => heading),
    ...words.map(word => columns.map(([, cell]) => cell(word))),
  ]
  return rows.map(row => row.map(quoted).join(',')).join('\n')
}

function quoted(cell: string): string {
  return /[",\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell
}
