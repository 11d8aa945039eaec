import { crosswordBoards } from '../../src/sets/games/crossword-boards.js'
import { boardRoom } from '../board-room.js'
import { defineLayout } from '../layout.js'
import { leastCell } from './crossword-art.js'
import { crosswordFaces } from './crossword-faces.js'
import { crosswordOptions, givenLetters } from './crossword-options.js'
import { crosswordPages } from './crossword-pages.js'

const MOST_COLUMNS = 20

/** The words laid across one another, to be found from their clues. */
export const crossword = defineLayout({
  kind: 'pieces',
  name: 'crossword',
  summary:
    'your words laid across one another in a grid, to be found from your clues; answers on a page of their own',
  inWeek: { day: 'practice', given: 'each child' },
  options: crosswordOptions,
  marks: 'none',
  perSheet: { columns: 1, rows: 1 },
  perSheetLarge: { columns: 1, rows: 1 },
  set: request => {
    const { words, item, itemName, plan, type } = request
    const room = boardRoom(request)
    const fitting = (lengthMm: number) =>
      Math.min(MOST_COLUMNS, Math.floor(lengthMm / leastCell(type, givenLetters(request))))
    return crosswordBoards({
      words,
      most: { columns: fitting(room.widthMm), rows: fitting(room.heightMm) },
      // Clues stand below the grid, save in large print.
      shape: type.large && item.orientation !== 'landscape' ? 'tall' : 'wide',
      copies: item.copies,
      seed: plan.seed,
      label: itemName,
      place: item.place,
    })
  },
  faces: crosswordFaces,
  pages: crosswordPages,
})
