import { defineLayout } from './layout.js'
import { oneCardAWord } from './one-card-a-word.js'
import { missingPictures, wordFace } from './pictured-card.js'
import { pictureOption, shownWithWords, wordOptions } from './word-options.js'

/** Cut-apart cards, a word each, marked as the teacher chose. */
export const wordCards = defineLayout({
  kind: 'pieces',
  name: 'word-cards',
  summary: 'cut-apart cards, one word each, with the marks of the plan',
  inWeek: { day: 'centres', given: 'once' },
  options: { ...wordOptions, ...pictureOption },
  marks: 'all',
  shownWithWords,
  perSheet: { columns: 3, rows: 4 },
  perSheetLarge: { columns: 2, rows: 3 },
  set: request => missingPictures(request, oneCardAWord(request)),
  face: wordFace,
  pages: () => [],
})
